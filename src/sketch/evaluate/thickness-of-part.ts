import type { Desk } from './desk.ts';

/** Thickness of a part, mm: as its wood was measured, otherwise as the form says. */
export function thicknessOfPart(part: string, desk: Desk): number | undefined {
  const { thickness, form } = desk.sheet;
  if (Object.hasOwn(thickness, part)) return thickness[part];
  return desk.size(form.data.parts[part]!.thickness, 'a thickness');
}
