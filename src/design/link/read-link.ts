import { fail, type Problem, type Result } from '../../core/index.ts';
import type { DesignFile } from '../read-design.ts';
import { fromBase64url } from './base64url.ts';
import { LINK_VERSION } from './design-link.ts';
import { joinParts } from './join-parts.ts';
import { newer, unpackDesign } from './unpack-design.ts';

/**
 * The design in a link, or in the texts of all codes that one was printed as, in any order: whole addresses, or what stands behind their `#`.
 * Blanks and line ends, as mail puts them in, do no harm. One problem says what is wrong: `link.none`, `link.cut`, `link.damaged`,
 * `link.newer`, `link.parts`; otherwise those of `readDesign`.
 */
export function readLink(text: string): Result<DesignFile> {
  const bare = text.replace(/\s+/g, '');
  const found = /design=(\d{1,6})\.([A-Za-z0-9_-]*)/.exec(bare);
  if (found === null) {
    const joined = joinParts(bare);
    if (joined === undefined) return fail(none());
    return joined.ok ? readLink(joined.value) : joined;
  }
  if (Number(found[1]) > LINK_VERSION) return fail(newer());
  return unpackDesign(fromBase64url(found[2]!));
}

function none(): Problem {
  const message = 'There is no design in this text: a link to one has "#design=1." in it.';
  return { code: 'link.none', message, expected: '#design=1.…' };
}
