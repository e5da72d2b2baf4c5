import type { Region } from '../../geometry/index.ts';
import type { Routing } from '../../routing/index.ts';
import type { SketchedPart } from '../../sketch/index.ts';
import type { PatternOptions } from '../api.ts';

/** What one pattern is drawn from: part and routing as they lie on the paper, mirrored already where asked for. */
export interface PatternSource {
  readonly part: SketchedPart;
  readonly routing: Routing;
  readonly options: PatternOptions;
  /** The outline that the pattern is about: of the part, the template, or what the cutter leaves. */
  readonly main: readonly Region[];
}

/** What each view shows. */
export function showsPart({ options }: PatternSource): boolean {
  return options.view === 'part' || options.view === 'all';
}

export function showsTemplate({ options }: PatternSource): boolean {
  return options.view === 'template' || options.view === 'all';
}

export function showsDifferences({ options }: PatternSource): boolean {
  return options.view === 'as-routed' || options.view === 'all';
}
