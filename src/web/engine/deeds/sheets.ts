import type { Finding, Result } from '../../../core/index.ts';
import {
  type BarReadings,
  calibratePaper,
  type Design,
  type GridChange,
  moveGrid,
  resolvePaper,
  searchGrid,
} from '../../../design/index.ts';
import { formatLength } from '../../../measure/index.ts';
import { calibrationBars, paperNames, type SheetPlan } from '../../../print/index.ts';

/** The names of papers that the program knows. */
export function listPapers(_: undefined): readonly string[] {
  return paperNames();
}

/** The grids of a pattern in the design after it was moved on its sheets by hand, or left to the search (no `change`). */
export function layPattern(asked: {
  readonly design: Design;
  readonly plan: SheetPlan;
  readonly change?: GridChange;
}): Design['grids'][string] | undefined {
  const { design, plan, change } = asked;
  const next = change === undefined ? searchGrid(design, plan) : moveGrid(design, plan, change);
  return next.grids[plan.pattern];
}

/** What a rule should read on the bars of the calibration sheet, in the design's own unit. */
export function readBars({
  paper,
  units,
}: Design): { readonly long: string; readonly short: string } | undefined {
  const resolved = resolvePaper(paper, units.length);
  if (!resolved.ok) return undefined;
  const { long, short } = calibrationBars(resolved.value);
  const said = (mm: number): string =>
    units.length === 'mm'
      ? formatLength(mm, { unit: 'mm', decimals: 0 })
      : formatLength(mm, { unit: 'in', denominator: 64 });
  return { long: said(long), short: said(short) };
}

/** The correction that follows from what was measured on the calibration sheet. */
export function calibrate(asked: {
  readonly design: Design;
  readonly readings: BarReadings;
  readonly date: string;
  readonly printer: string | undefined;
}): Result<{
  readonly calibration: NonNullable<Design['paper']['calibration']>;
  readonly findings: readonly Finding[];
}> {
  const { paper, units } = asked.design;
  const resolved = resolvePaper(paper, units.length);
  if (!resolved.ok) return resolved;
  return calibratePaper({
    paper: resolved.value,
    before: paper.calibration,
    readings: asked.readings,
    unit: units.length,
    date: asked.date,
    printer: asked.printer,
  });
}
