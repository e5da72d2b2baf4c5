import { fail, ok, type Result } from '../core/index.ts';
import { drawPattern, type LeafLabel, type Pattern, type PatternOptions } from '../drawing/index.ts';
import { type Paper, planSheets, type SheetPlan, sheetDigests } from '../print/index.ts';
import type { Routing } from '../routing/index.ts';
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
  readonly paper: Paper;
  /** Of pieces that carry leaves of a bookmatch. */
  readonly leaves: readonly LeafLabel[];
  readonly memo: Memo;
  readonly announce: (words: string) => void;
}

/** The pattern in one piece. */
export function drawForDesign(stage: PatternStage): Pattern {
  const { part, routing, memo, announce } = stage;
  announce(`drawing of ${part.label}`);
  return remember(memo, { stage: 'drawing', of: slotOf(stage), inputs: drawingInputs(stage) }, () =>
    drawPattern(part, routing, optionsOf(stage)),
  );
}

function drawingInputs(stage: PatternStage): readonly unknown[] {
  return [stage.part, stage.routing, optionsOf(stage)];
}

/** Each pattern of a design keeps drawings of its own. */
const slotOf = ({ request: { part, view, mirrored } }: PatternStage): string =>
  `${part} ${view}${mirrored ? ' mirrored' : ''}`;

function optionsOf({ design, request, leaves }: PatternStage): PatternOptions {
  return {
    view: request.view,
    mirrored: request.mirrored,
    design: design.name,
    revision: design.revision.index,
    date: design.revision.date,
    lengths: lengthStyleOf(design),
    ...(leaves.length === 0 ? {} : { leaves }),
  };
}

/** The pattern on sheets: on the grid pinned in the design, or on the one that needs the fewest. */
export function layForDesign(stage: PatternStage): Result<ComputedPattern> {
  const { design, request, part, paper, memo, announce } = stage;
  const pattern = drawForDesign(stage);
  announce(`sheets of ${part.label}`);
  const pinned = unpinGrid(design.grids[pattern.name] ?? [], paper);
  const of = slotOf(stage);
  const inputs = [pattern, paper, pinned];
  const plan = remember(memo, { stage: 'sheets', of, inputs }, () => planPinned(pattern, paper, pinned));
  if (!plan.ok) {
    return fail(...plan.problems.map((problem) => ({ ...problem, path: problem.path ?? 'paper' })));
  }
  const facts = partFactsOf(part, request.mirrored);
  return ok({
    request,
    pattern,
    plan: plan.value,
    get digests() {
      return remember(memo, { stage: 'digests', of, inputs: [plan.value, pattern, facts] }, () =>
        sheetDigests(plan.value, pattern, facts),
      );
    },
  });
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
