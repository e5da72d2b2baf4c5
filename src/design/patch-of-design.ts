import { type Finding, fail, ok, type Problem, type Result } from '../core/index.ts';
import { patchPattern } from '../drawing/index.ts';
import { circleOutline, type Region, slotOutline, vec } from '../geometry/index.ts';
import { type PrintFonts, planSheets, renderPatternPdf } from '../print/index.ts';
import { type Guide, guideDiameter } from '../routing/index.ts';
import { PATCH_CAUTIONS, type Patch, type PatchShape, planPatch } from '../wood/index.ts';
import type { Design, TypedLength } from './design-schema.ts';
import { lengthStyleOf } from './length-style.ts';
import { resolvePaper } from './resolve-paper.ts';
import { resolveTooling } from './resolve-tooling.ts';
import { measureReader } from './typed-measures.ts';

/** A patch as the maker asks for it; lengths as typed. */
export interface TypedPatch {
  readonly shape: PatchShape;
  /** Of the flaw, along the grain and across it. */
  readonly along: TypedLength;
  readonly across: TypedLength;
  /** In place of the design's cutter and bushing. */
  readonly cutter?: TypedLength;
  readonly bushing?: TypedLength;
  /** The one in hand; left out: the one that fits. */
  readonly collar?: TypedLength;
  readonly margin?: TypedLength;
  readonly clearance?: TypedLength;
  readonly slenderness?: number;
}

export interface PrintedPatch {
  readonly patch: Patch;
  readonly findings: readonly Finding[];
  readonly sheets: number;
  readonly pdf: Uint8Array;
}

const TOOL = { least: 1, most: 100 };
const FLAW = { least: 1, most: 500 };
const SMALL = { least: 0, most: 20 };

/**
 * Template for a patch, with the tooling of a design, as a PDF of full-size sheets on its paper. Problems when a length cannot be used, or
 * when the design's guide is no bushing and none is named.
 */
export async function printPatch(
  design: Design,
  typed: TypedPatch,
  fonts: PrintFonts,
): Promise<Result<PrintedPatch>> {
  const unit = design.units.length;
  const own = resolveTooling(design.tooling, unit);
  const paper = resolvePaper(design.paper, unit);
  if (!own.ok) return own;
  if (!paper.ok) return paper;
  const reader = measureReader(unit);
  const optional = (length: TypedLength | undefined, name: string, range: typeof TOOL): number | undefined =>
    length === undefined ? undefined : reader.length(length, name, range);
  const along = reader.length(typed.along, 'flaw', FLAW);
  const across = reader.length(typed.across, 'flaw', FLAW);
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
  const patch = planPatch(flawOf(along, across), Math.PI / 2, wish, tooling);
  const lengths = lengthStyleOf(design);
  const pattern = patchPattern(patch, tooling, lengths);
  const plan = planSheets(pattern, paper.value);
  if (!plan.ok) return plan;
  const facts = {
    part: pattern.title,
    quantity: 1,
    keyFacts: [],
    findings: patch.findings.flatMap(({ severity, message, cure }) =>
      severity === 'note' ? [] : [{ severity, words: cure === undefined ? message : `${message} ${cure}` }],
    ),
  };
  const meta = {
    design: design.name,
    revision: design.revision.index,
    date: design.revision.date,
    lengths,
    cautions: PATCH_CAUTIONS,
  };
  const pdf = await renderPatternPdf([{ pattern, plan: plan.value, facts }], meta, fonts);
  return ok({ patch, findings: patch.findings, sheets: plan.value.sheets.length, pdf });
}

const NO_BUSHING: Problem = {
  code: 'mend.no-bushing',
  message:
    'A patch is routed with a guide bushing and a collar on it; the design has a bearing. Name a bushing: --bushing "5/16 in".',
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
