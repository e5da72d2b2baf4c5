import { fail, ok, type Result } from '../core/index.ts';
import { drawPattern, type Pattern, type PatternOptions } from '../drawing/index.ts';
import { type Paper, planSheets, type SheetPlan, sheetDigests } from '../print/index.ts';
import type { Routing, Tooling } from '../routing/index.ts';
import type { SketchedPart } from '../sketch/index.ts';
import type { ComputedPattern } from './computed.ts';
import type { Design, PatternRequest } from './design-schema.ts';
import { lengthStyleOf } from './length-style.ts';
import { type Memo, remember } from './memo.ts';
import { compareText, keepGrid, pinGrid, unpinGrid } from './pin-grid.ts';
import { partFactsOf } from './print-of-pattern.ts';

/** What one pattern is made from. */
export interface PatternStage {
  readonly design: Design;
  readonly request: PatternRequest;
  readonly part: SketchedPart;
  readonly routing: Routing;
  readonly tooling: Tooling;
  readonly paper: Paper;
  readonly memo: Memo;
  readonly announce: (words: string) => void;
}

/** The pattern in one piece. */
export function drawForDesign(stage: PatternStage): Pattern {
  const { part, routing, memo, announce } = stage;
  announce(`drawing of ${part.label}`);
  return remember(memo, { stage: 'drawing', inputs: drawingInputs(stage) }, () =>
    drawPattern(part, routing, optionsOf(stage)),
  );
}

/** What a drawing depends on; the routing follows from part and tooling. */
function drawingInputs(stage: PatternStage): readonly unknown[] {
  return [stage.part, stage.tooling, optionsOf(stage)];
}

function optionsOf({ design, request }: PatternStage): PatternOptions {
  return {
    view: request.view,
    mirrored: request.mirrored,
    design: design.name,
    revision: design.revision.index,
    date: design.revision.date,
    lengths: lengthStyleOf(design),
  };
}

/** The pattern on sheets: on the grid pinned in the design, or on the one that needs the fewest. */
export function layForDesign(stage: PatternStage): Result<ComputedPattern> {
  const { design, request, part, paper, memo, announce } = stage;
  const pattern = drawForDesign(stage);
  announce(`sheets of ${part.label}`);
  const pinned = unpinGrid(design.grids[pattern.name] ?? [], paper);
  const inputs = [...drawingInputs(stage), paper, pinned];
  const plan = remember(memo, { stage: 'sheets', inputs }, () => planPinned(pattern, paper, pinned));
  if (!plan.ok) {
    return fail(...plan.problems.map((problem) => ({ ...problem, path: problem.path ?? 'paper' })));
  }
  const digests = remember(memo, { stage: 'digests', inputs }, () =>
    sheetDigests(plan.value, pattern, partFactsOf(part, request.mirrored)),
  );
  return ok({ request, pattern, plan: plan.value, digests });
}

/** Always planned on the grid as a design keeps it, so that the first print and every later one agree to the last bit. */
function planPinned(pattern: Pattern, paper: Paper, pinned: ReturnType<typeof unpinGrid>): Result<SheetPlan> {
  if (pinned) return planSheets(pattern, paper, { pinned });
  const chosen = planSheets(pattern, paper);
  if (!chosen.ok) return chosen;
  const kept = unpinGrid([pinGrid(chosen.value.grid, paper)], paper);
  return kept ? planSheets(pattern, paper, { pinned: kept }) : chosen;
}

/** The grids to keep: those of the design and those of the patterns laid out now, in the order of their names. */
export function gridsAfter(before: Design['grids'], patterns: readonly ComputedPattern[]): Design['grids'] {
  const after = new Map(Object.entries(before));
  for (const { pattern, plan } of patterns) {
    after.set(pattern.name, keepGrid(after.get(pattern.name) ?? [], pinGrid(plan.grid, plan.paper)));
  }
  return Object.fromEntries([...after].sort(([a], [b]) => compareText(a, b)));
}
