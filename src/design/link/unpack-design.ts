import { Inflate } from 'fflate';
import { fail, type Problem, type Result } from '../../core/index.ts';
import { type DesignFile, readDesign } from '../read-design.ts';
import { DICTIONARIES } from './dictionaries.ts';
import { checkOf, HEAD } from './pack-design.ts';

/** No design of ours comes near it; what unpacks to more is no design. Bytes. */
const MOST_BYTES = 4_000_000;
/** What is unpacked at a time, so that little is unpacked beyond the limit: no byte gives more than a thousand. */
const PORTION = 512;

/**
 * The design in bytes of `packDesign`. Problems: `link.cut` when some are missing, `link.newer` when they need a dictionary that is not known
 * here, `link.damaged` when they are not what was packed; otherwise those of `readDesign`.
 */
export function unpackDesign(bytes: Uint8Array): Result<DesignFile> {
  const start = HEAD.dictionary + HEAD.check + HEAD.length;
  if (bytes.length < start) return fail(cutShort());
  const [number, a, b, c, d, high, middle, low] = bytes as unknown as readonly number[];
  const length = high! * 0x10000 + middle! * 0x100 + low!;
  const packed = bytes.subarray(start);
  if (packed.length < length) return fail(cutShort());
  if (packed.length > length) return fail(damaged());
  const dictionary = DICTIONARIES[number!];
  if (dictionary === undefined) return fail(newer());
  const text = inflate(packed, dictionary);
  const isWhole = text !== undefined && checkOf(text).every((each, i) => each === [a, b, c, d][i]);
  return isWhole ? readDesign(text, 'link') : fail(damaged());
}

function inflate(packed: Uint8Array, dictionary: Uint8Array): string | undefined {
  const parts: Uint8Array[] = [];
  let size = 0;
  try {
    const stream = new Inflate({ dictionary }, (part) => {
      size += part.length;
      parts.push(part);
    });
    for (let at = 0; at < packed.length && size <= MOST_BYTES; at += PORTION) {
      stream.push(packed.subarray(at, at + PORTION), at + PORTION >= packed.length);
    }
    if (size > MOST_BYTES) return undefined;
    const whole = new Uint8Array(size);
    let at = 0;
    for (const part of parts) {
      whole.set(part, at);
      at += part.length;
    }
    return new TextDecoder('utf-8', { fatal: true }).decode(whole);
  } catch {
    // Whatever is wrong with the bytes: they are not what was packed.
    return undefined;
  }
}

function cutShort(): Problem {
  const message =
    'The link is cut short: its end is missing. Copy it whole, to its last sign, or scan every one of its codes.';
  return { code: 'link.cut', message, expected: 'the whole link' };
}

function damaged(): Problem {
  const message = 'The link is damaged: something in it was changed. Copy it again from where it came.';
  return { code: 'link.damaged', message, expected: 'the link as it was made' };
}

/** Of a link made by a later version of this program. */
export function newer(): Problem {
  const message = 'The link was made by a newer Legwright than this one. Update Legwright to open it.';
  return { code: 'link.newer', message };
}
