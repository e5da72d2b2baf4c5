import type { Answering } from './answering.ts';

/** How many sheets of paper all patterns take. */
export function sheetCount({ computed }: Answering, _: undefined): number | undefined {
  return computed?.patterns.reduce((sum, { plan }) => sum + plan.sheets.length, 0);
}
