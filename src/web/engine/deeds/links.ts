import { ok, type Result } from '../../../core/index.ts';
import { type Design, designLink, readLink } from '../../../design/index.ts';

/** A link that holds the design whole and leads to where this page is. */
export function linkOf({ design, site }: { readonly design: Design; readonly site: string }): string {
  return designLink(design, site);
}

/** The design in a link, or in the texts of all its square codes. */
export function designInLink(text: string): Result<Design> {
  const read = readLink(text);
  return read.ok ? ok(read.value.design) : read;
}
