import { sha256 } from '../../core/index.ts';

/**
 * A link that is too long for one square code as several texts that are short enough, each with its number, how many there are, and four signs that
 * tell which link it is part of: `…#part=1-3-a1b2.AAAA`. The shortest count that does.
 */
export function linkParts(link: string, most: number): readonly string[] {
  if (link.length <= most) return [link];
  const [before = '', after = ''] = link.split('#design=');
  const id = sha256(after).slice(0, 4);
  const headOf = (at: number, count: number): string => `${before}#part=${at}-${count}-${id}.`;
  for (let count = 2; ; count++) {
    const room = most - headOf(count, count).length;
    if (room < 1) throw new RangeError(`no part of a link fits in ${most} signs`);
    if (room * count < after.length) continue;
    const share = Math.ceil(after.length / count);
    return Array.from(
      { length: count },
      (_, at) => headOf(at + 1, count) + after.slice(at * share, (at + 1) * share),
    );
  }
}
