import { isGridPinned, type PatternRequest } from '../../../design/index.ts';
import { type Pattern, type ScreenScene, sceneForScreen } from '../../../drawing/index.ts';
import type { Similarity } from '../../../geometry/index.ts';
import { type SheetPlan, sheetsAsTaped, type TapedSheet, type TapedSheets } from '../../../print/index.ts';
import type { Answering } from './answering.ts';

export interface PatternOptions {
  /** By its name; the first when absent. */
  readonly pattern?: string;
}

/** A pattern among the others, as the design asks for it. */
export interface ListedPattern extends PatternRequest {
  readonly name: string;
  readonly title: string;
  /** How many. */
  readonly sheets: number;
}

/** A pattern with the sheets that it is printed on. */
export interface SheetsInHand {
  readonly pattern: string;
  readonly title: string;
  /** From the pattern's plane to the frame in which the sheets lie upright. */
  readonly toSheets: Similarity;
  readonly sheets: readonly TapedSheet[];
  readonly seams: TapedSheets['seams'];
  readonly plan: SheetPlan;
  /** Put where it lies by hand or by an earlier print, and kept there. */
  readonly pinned: boolean;
  /** The pattern's grids with the one it lies on now, as a design keeps them. */
  readonly grids: Answering['design']['grids'][string] | undefined;
}

/** Which patterns there are, and how many sheets each takes. */
export function patternList({ computed }: Answering, _: undefined): readonly ListedPattern[] | undefined {
  return computed?.patterns.map(({ request, pattern, plan }) => ({
    name: pattern.name,
    title: pattern.title,
    ...request,
    sheets: plan.sheets.length,
  }));
}

/** One pattern on its sheets as they will be taped. */
export function sheets(from: Answering, options: PatternOptions): SheetsInHand | undefined {
  const laid = laidPattern(from, options);
  if (laid === undefined) return undefined;
  const { pattern, plan } = laid;
  const taped = sheetsAsTaped(plan);
  return {
    pattern: pattern.name,
    title: pattern.title,
    toSheets: taped.pattern,
    sheets: taped.sheets,
    seams: taped.seams,
    plan,
    pinned: isGridPinned(from.design, plan),
    grids: from.computed?.grids[pattern.name],
  };
}

const drawn = new WeakMap<Pattern, ScreenScene>();

/** What is drawn of a pattern, in its own plane: the very same as long as the pattern is. */
export function patternScene(from: Answering, options: PatternOptions): ScreenScene | undefined {
  const pattern = laidPattern(from, options)?.pattern;
  if (pattern === undefined) return undefined;
  const known = drawn.get(pattern) ?? sceneForScreen(pattern.scene);
  drawn.set(pattern, known);
  return known;
}

function laidPattern({ computed }: Answering, { pattern: name }: PatternOptions) {
  const patterns = computed?.patterns ?? [];
  return patterns.find(({ pattern }) => pattern.name === name) ?? patterns[0];
}
