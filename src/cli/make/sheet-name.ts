import { fail, ok, type Result } from '../../core/index.ts';

/** A sheet by what is printed on it. */
export interface SheetPlace {
  readonly row: number;
  readonly place: number;
}

/** `row 2, sheet 3` as a maker reads it off the paper; `2,3` will do. */
export function readSheetName(text: string): Result<SheetPlace> {
  const [, row, place] = /^\s*(?:row\s*)?(\d{1,4})\s*[,;/ ]\s*(?:sheet\s*)?(\d{1,4})\s*$/i.exec(text) ?? [];
  if (row !== undefined && place !== undefined) return ok({ row: Number(row), place: Number(place) });
  const expected = '"row 2, sheet 3"';
  return fail({
    code: 'command.sheet',
    message: `Found "${text}" for a sheet, expected its name as printed, such as ${expected}.`,
    found: text,
    expected,
  });
}
