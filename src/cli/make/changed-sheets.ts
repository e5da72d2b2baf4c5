import type { ComputedPattern, WrittenResult } from '../../design/index.ts';
import type { SheetName } from '../../print/index.ts';

/** The sheets of a pattern whose print is not that of the same sheet in an earlier result. */
export function changedSheets(
  { pattern, plan, digests }: ComputedPattern,
  earlier: WrittenResult,
): readonly SheetName[] {
  const before = earlier.patterns.find(({ name }) => name === pattern.name);
  return plan.sheets.flatMap(({ row, place }, at) => {
    const same = before?.sheets.find((sheet) => sheet.row === row && sheet.place === place);
    return same?.digest === digests[at] ? [] : [{ pattern: plan.pattern, row, place }];
  });
}

/** Sheets of an earlier result that are no longer part of the pattern: to be thrown away. */
export function droppedSheets(
  { pattern, plan }: ComputedPattern,
  earlier: WrittenResult,
): readonly SheetName[] {
  const before = earlier.patterns.find(({ name }) => name === pattern.name)?.sheets ?? [];
  return before
    .filter(({ row, place }) => !plan.sheets.some((sheet) => sheet.row === row && sheet.place === place))
    .map(({ row, place }) => ({ pattern: plan.pattern, row, place }));
}
