import { type BuiltBase, buildBase, type KeptBase, partForPattern, type Solids } from '../base/index.ts';
import { type Finding, fail, ok, type Problem, type Result } from '../core/index.ts';
import type { Tooling } from '../routing/index.ts';
import { usualEndAllowance } from '../routing/index.ts';
import type { Sketch, SketchedPart } from '../sketch/index.ts';
import type { Design } from './design-schema.ts';
import { lengthStyleOf } from './length-style.ts';
import { resolveBase } from './resolve-base.ts';

/** The parts of a design as they are made, and the base that they make where its form places them. */
export interface PartsOfDesign {
  readonly parts: readonly SketchedPart[];
  readonly base?: BuiltBase;
  readonly findings: readonly Finding[];
}

/** The parts of a design as its form draws them and, where it places them in space, as they stand. */
export interface PlacedDesign {
  readonly sketch: Sketch;
  /** The form as it was when parts were cut, by the form's name of the part. */
  readonly cut: Readonly<Record<string, Sketch>>;
  readonly placed?: KeptBase;
}

/** Wood on the thickness of a rough board, mm: to be planed off (common practice). */
const PLANING = 3;

/**
 * What is made of a sketch: the parts that the form draws or, where it places them in space, those that its planes and joints leave. Parts
 * cut already are those of `cut`, by the form's name of the part: the sketch as it was when they were cut.
 */
export function partsOfDesign(
  design: Design,
  { sketch, cut, placed }: PlacedDesign,
  tooling: Tooling,
): Result<PartsOfDesign> {
  const strangers = strangeParts(design, sketch);
  if (strangers.length > 0) return fail(...strangers);
  if (placed === undefined) {
    const parts = sketch.parts.map(
      (part) => cut[part.name]?.parts.find(({ name }) => name === part.name) ?? part,
    );
    return ok({ parts, findings: [] });
  }
  const supplies = resolveBase(design);
  if (!supplies.ok) return supplies;
  const built = buildBase(placed, {
    ...supplies.value,
    cutter: tooling.cutter.diameter,
    allowance: {
      edge: tooling.sawAllowance,
      end: tooling.endAllowance ?? usualEndAllowance(tooling),
      thickness: PLANING,
    },
    lengths: lengthStyleOf(design),
  });
  const labels = new Map(built.joints.joints.map(({ id, label }) => [id, label]));
  return ok({
    parts: built.made.map((each) => partForPattern(each, (joint) => labels.get(joint) ?? joint)),
    base: built,
    findings: built.findings,
  });
}

/** The same with how the base weighs and stands. */
export function partsStanding(design: Design, made: PartsOfDesign, solids: Solids): PartsOfDesign {
  const supplies = resolveBase(design);
  if (made.base === undefined || !supplies.ok) return made;
  const base = solids.stand(made.base, { ...supplies.value, lengths: lengthStyleOf(design) });
  return { parts: made.parts, base, findings: base.findings };
}

/** Parts that the design speaks of and the form does not draw. */
function strangeParts({ measured, cut, base }: Design, sketch: Sketch): readonly Problem[] {
  const names = sketch.parts.map(({ name }) => name);
  const asked = [
    ...Object.keys(measured.thickness ?? {}).map((name) => ({ name, path: `measured.thickness.${name}` })),
    ...Object.keys(measured.length ?? {}).map((name) => ({ name, path: `measured.length.${name}` })),
    ...Object.keys(cut ?? {}).map((name) => ({ name, path: `cut.${name}` })),
    ...Object.keys(base?.woods ?? {}).map((name) => ({ name, path: `base.woods.${name}` })),
  ];
  return asked.flatMap(({ name, path }) => {
    if (names.includes(name)) return [];
    const expected = `one of: ${names.join(', ')}`;
    const message = `The form draws no part called "${name}" at these parameters: expected ${expected}.`;
    return [{ code: 'design.unknown-part', message, path, found: name, expected }];
  });
}
