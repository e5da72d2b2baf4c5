/** Are two values of plain data made up alike? What is the very same object is not looked into; maps and sets are alike only then. */
export function sameValue(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) {
    return Number.isNaN(a) && Number.isNaN(b);
  }
  if (Array.isArray(a)) {
    if (!Array.isArray(b) || a.length !== b.length) return false;
    for (let at = 0; at < a.length; at++) if (!sameValue(a[at], b[at])) return false;
    return true;
  }
  if (Array.isArray(b)) return false;
  let count = 0;
  for (const name in a) {
    count++;
    const other = (b as Record<string, unknown>)[name];
    if (!(other !== undefined || name in b)) return false;
    if (!sameValue((a as Record<string, unknown>)[name], other)) return false;
  }
  if (count === 0 && (isCollection(a) || isCollection(b))) return false;
  for (const _ in b) count--;
  return count === 0;
}

/** What holds its values where they are not seen as its own. */
function isCollection(value: object): boolean {
  return value instanceof Map || value instanceof Set;
}
