import { fail, ok, type Problem, type Result, sha256 } from '../../core/index.ts';

/** The link that parts make, in whatever order they stand in the text; nothing when there is no part in it. */
export function joinParts(text: string): Result<string> | undefined {
  const parts = [
    ...text.matchAll(/part=(\d{1,3})-(\d{1,3})-([0-9a-f]{4})\.(.*?)(?=https?:|legwright:|#part=|$)/g),
  ].map(([, at, count, id, piece]) => ({ at: Number(at), count: Number(count), id: id!, piece: piece! }));
  const [first] = parts;
  if (first === undefined) return undefined;
  const { count, id } = first;
  if (parts.some((part) => part.id !== id || part.count !== count)) {
    return fail(ofParts('These codes belong to different designs: scan those of one sheet.'));
  }
  const byNumber = new Map(parts.map((part) => [part.at, part.piece]));
  const numbers = Array.from({ length: count }, (_, at) => at + 1);
  const missing = numbers.filter((at) => !byNumber.has(at));
  if (missing.length > 0) {
    const which = missing.length === 1 ? `code ${missing[0]} is` : `codes ${missing.join(', ')} are`;
    return fail(
      ofParts(`This design is held in ${count} codes, and ${which} missing: scan every one of them.`),
    );
  }
  const whole = numbers.map((at) => byNumber.get(at)).join('');
  if (sha256(whole).slice(0, 4) === id) return ok(`#design=${whole}`);
  return fail(ofParts('One of these codes was not read rightly: scan them again.'));
}

function ofParts(message: string): Problem {
  return { code: 'link.parts', message, expected: 'every code of one design' };
}
