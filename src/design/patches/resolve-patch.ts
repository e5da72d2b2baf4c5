import { fail, ok, type Problem, type Result } from '../../core/index.ts';
import { circleOutline, type Region, slotOutline, vec } from '../../geometry/index.ts';
import { type Guide, guideDiameter } from '../../routing/index.ts';
import { type Patch, type PatchShape, type PatchTooling, planPatch } from '../../wood/index.ts';
import type { Design, TypedLength } from '../design-schema.ts';
import { resolveTooling } from '../resolve-tooling.ts';
import { measureReader } from '../typed-measures.ts';

/** A patch as the maker asks for it; lengths as typed. */
export interface TypedPatch {
  readonly shape: PatchShape;
  /** Of the flaw, along the grain and across it. */
  readonly along: TypedLength;
  readonly across: TypedLength;
  /** In place of the design's cutter and bushing. */
  readonly cutter?: TypedLength | undefined;
  readonly bushing?: TypedLength | undefined;
  /** The one in hand; left out: the one that fits. */
  readonly collar?: TypedLength | undefined;
  readonly margin?: TypedLength | undefined;
  readonly clearance?: TypedLength | undefined;
  readonly slenderness?: number | undefined;
}

export interface ResolvedPatch {
  /** Its length runs up: its grain stands at a right angle to x. */
  readonly patch: Patch;
  readonly tooling: PatchTooling;
}

const TOOL = { least: 1, most: 100 };
const FLAW = { least: 1, most: 500 };
const SMALL = { least: 0, most: 20 };

/**
 * A patch with the tooling of a design, its flaw round the origin. Problems when a length cannot be used (their paths begin with `path`), or
 * when the design's guide is no bushing and none is named.
 */
export function resolvePatch(design: Design, typed: TypedPatch, path = ''): Result<ResolvedPatch> {
  const unit = design.units.length;
  const own = resolveTooling(design.tooling, unit);
  if (!own.ok) return own;
  const reader = measureReader(unit);
  const length = (text: TypedLength, name: string, range: typeof TOOL): number =>
    reader.length(text, `${path}${name}`, range);
  const optional = (text: TypedLength | undefined, name: string, range: typeof TOOL): number | undefined =>
    text === undefined ? undefined : length(text, name, range);
  const named = path === '' ? 'flaw' : undefined;
  const along = length(typed.along, named ?? 'along', FLAW);
  const across = length(typed.across, named ?? 'across', FLAW);
  const cutter = optional(typed.cutter, 'cutter', TOOL) ?? own.value.cutter.diameter;
  const bushing = optional(typed.bushing, 'bushing', TOOL) ?? ownBushing(own.value.guide);
  const collar = optional(typed.collar, 'collar', TOOL);
  const margin = optional(typed.margin, 'margin', SMALL);
  const clearance = optional(typed.clearance, 'clearance', SMALL);
  if (reader.problems.length > 0) return fail(...reader.problems);
  if (bushing === undefined) return fail(NO_BUSHING);
  const tooling = { cutter, bushing, ...(collar === undefined ? {} : { collar }) };
  const wish = {
    shape: typed.shape,
    ...(margin === undefined ? {} : { margin }),
    ...(clearance === undefined ? {} : { clearance }),
    ...(typed.slenderness === undefined ? {} : { slenderness: typed.slenderness }),
  };
  return ok({ patch: planPatch(flawOf(along, across), Math.PI / 2, wish, tooling), tooling });
}

const NO_BUSHING: Problem = {
  code: 'mend.no-bushing',
  message:
    'A patch is routed with a guide bushing and a collar on it; the design has a bearing. Name a bushing (on the command line: --bushing "5/16 in").',
};

function ownBushing(guide: Guide): number | undefined {
  return guide.kind === 'bushing' ? guideDiameter(guide) : undefined;
}

/** A flaw round the origin, its length up: a slot with round ends, or a circle. */
function flawOf(along: number, across: number): Region {
  const tag = { id: 'flaw', role: 'left' } as const;
  if (Math.abs(along - across) < 1e-6)
    return { outer: circleOutline(vec(0, 0), along / 2, tag, 1), holes: [] };
  const half = Math.abs(along - across) / 2;
  const end = along > across ? vec(0, half) : vec(half, 0);
  return { outer: slotOutline({ x: -end.x, y: -end.y }, end, Math.min(along, across) / 2, tag), holes: [] };
}
