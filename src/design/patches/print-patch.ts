import { type Finding, ok, type Result } from '../../core/index.ts';
import { patchPattern } from '../../drawing/index.ts';
import { type PrintFonts, planSheets, renderPatternPdf } from '../../print/index.ts';
import { PATCH_CAUTIONS, type Patch } from '../../wood/index.ts';
import type { Design } from '../design-schema.ts';
import { lengthStyleOf } from '../length-style.ts';
import { resolvePaper } from '../resolve-paper.ts';
import { resolvePatch, type TypedPatch } from './resolve-patch.ts';

export interface PrintedPatch {
  readonly patch: Patch;
  readonly findings: readonly Finding[];
  readonly sheets: number;
  readonly pdf: Uint8Array;
}

/**
 * Template for a patch, with the tooling of a design, as a PDF of full-size sheets on its paper. Problems: those of resolvePatch, and paper
 * that cannot be used.
 */
export async function printPatch(
  design: Design,
  typed: TypedPatch,
  fonts: PrintFonts,
): Promise<Result<PrintedPatch>> {
  const paper = resolvePaper(design.paper, design.units.length);
  const resolved = resolvePatch(design, typed);
  if (!resolved.ok) return resolved;
  if (!paper.ok) return paper;
  const { patch, tooling } = resolved.value;
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
