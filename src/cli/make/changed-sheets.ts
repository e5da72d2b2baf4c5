import { isDeepStrictEqual } from 'node:util';
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

/**
 * Patterns whose outlines are those of an earlier result, on the same paper at the same places: where a sheet of these has
 * changed, it is by figures and words alone, and a template made by the earlier print is still right.
 */
export function patternsWithSameOutlines(now: WrittenResult, earlier: WrittenResult): readonly string[] {
  // As written and read again, so that both sides have gone the same way.
  const written = JSON.parse(JSON.stringify(now.patterns)) as WrittenResult['patterns'];
  return written
    .filter((pattern) => {
      const before = earlier.patterns.find(({ name }) => name === pattern.name);
      return before !== undefined && isDeepStrictEqual(linesOf(pattern), linesOf(before));
    })
    .map(({ name }) => name);
}

function linesOf({ regions, paper, sheets }: WrittenResult['patterns'][number]): unknown {
  return { regions, paper, sheets: sheets.map(({ row, place, toPattern }) => ({ row, place, toPattern })) };
}
