/**
 * One unit in millimetres. The inch is 25.4 mm and the foot 304.8 mm exactly (international yard and pound agreement of
 * 1959), so that all the others are definitions too.
 */
export const MM_PER = { mm: 1, cm: 10, m: 1000, in: 25.4, ft: 304.8 } as const;

export type LengthUnitName = keyof typeof MM_PER;

/** One degree in radians. */
export const RAD_PER_DEGREE = Math.PI / 180;

/** Spellings of each unit of length, longest first, so that the longest that fits is taken. */
const SPELLINGS: readonly (readonly [string, LengthUnitName])[] = (
  [
    ['millimetres', 'mm'],
    ['millimeters', 'mm'],
    ['millimetre', 'mm'],
    ['millimeter', 'mm'],
    ['centimetres', 'cm'],
    ['centimeters', 'cm'],
    ['centimetre', 'cm'],
    ['centimeter', 'cm'],
    ['metres', 'm'],
    ['meters', 'm'],
    ['metre', 'm'],
    ['meter', 'm'],
    ['inches', 'in'],
    ['inch', 'in'],
    ['in.', 'in'],
    ['in', 'in'],
    ['feet', 'ft'],
    ['foot', 'ft'],
    ['ft.', 'ft'],
    ['ft', 'ft'],
    ['mm', 'mm'],
    ['cm', 'cm'],
    ['m', 'm'],
    ['″', 'in'],
    ['”', 'in'],
    ['“', 'in'],
    ['"', 'in'],
    ["''", 'in'],
    ['′′', 'in'],
    ['′', 'ft'],
    ['’', 'ft'],
    ['‘', 'ft'],
    ["'", 'ft'],
  ] as const
).toSorted((a, b) => b[0].length - a[0].length);

/** The unit spelt at `position`, or nothing. A spelling of letters must end where the letters end. */
export function unitAt(
  text: string,
  position: number,
): { readonly unit: LengthUnitName; readonly end: number } | undefined {
  const rest = text.slice(position, position + 12).toLowerCase();
  for (const [spelling, unit] of SPELLINGS) {
    if (!rest.startsWith(spelling)) continue;
    if (/[a-z]$/.test(spelling) && /^[a-z]/.test(rest.slice(spelling.length))) continue;
    return { unit, end: position + spelling.length };
  }
  return undefined;
}
