import type { Design } from '../design-schema.ts';
import { toBase64url } from './base64url.ts';
import { packDesign } from './pack-design.ts';

/** Raised whenever links of the version before would be read otherwise. */
export const LINK_VERSION = 1;
/** What stands before a link that leads to no site: a scheme of our own, for text that is pasted or scanned. */
export const OWN_SCHEME = 'legwright:';

/**
 * A link that holds a design whole, but for photographs, of which it holds the names. All of it stands behind `#`, which no browser sends anywhere:
 * `https://…/#design=1.AAAA…` with a site (the address of the app), otherwise `legwright:#design=1.AAAA…`. Version and check are in it.
 */
export function designLink(design: Design, site: string = OWN_SCHEME): string {
  return `${site.replace(/#.*$/s, '')}#design=${LINK_VERSION}.${toBase64url(packDesign(design))}`;
}
