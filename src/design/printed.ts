import { basePicture, settingOut } from '../drawing/index.ts';
import {
  type Paper,
  type PrintFonts,
  type PrintOptions,
  planSheets,
  renderCalibrationSheet,
  renderPatternPdf,
  renderShopBook,
} from '../print/index.ts';
import { shopBookOf } from './book/shop-book-of.ts';
import type { Computed } from './computed.ts';
import type { Design } from './design-schema.ts';
import { metaOf, printOf } from './print-of-pattern.ts';
import { resolvePaper } from './resolve-paper.ts';

export const SETTING_OUT_VIEWS = ['front', 'left', 'right', 'plan'] as const;
/** A side that a base is set out from at full size. */
export type SettingOutView = (typeof SETTING_OUT_VIEWS)[number];

/** The sheets of one pattern by its name, or only some of them, as PDF. Throws where there is no such pattern. */
export function printPattern(
  computed: Computed,
  name: string,
  fonts: PrintFonts,
  options: PrintOptions = {},
): Promise<Uint8Array> {
  const laid = computed.patterns.find(({ pattern }) => pattern.name === name);
  if (laid === undefined) throw new RangeError(`no pattern ${name}`);
  return renderPatternPdf([printOf(computed, laid)], metaOf(computed), fonts, options);
}

/** The shop book as PDF. Throws for a design of parts alone. */
export function printBook(computed: Computed, fonts: PrintFonts): Promise<Uint8Array> {
  return renderShopBook(shopBookOf(computed), paperOf(computed.design), metaOf(computed), fonts);
}

/** A view of the base at full size on the design's paper, as PDF. Throws for a design of parts alone. */
export async function printSettingOut(
  computed: Computed,
  side: SettingOutView,
  fonts: PrintFonts,
): Promise<Uint8Array> {
  const { design, lengths, base } = computed;
  if (base === undefined) throw new RangeError('only a base is set out');
  const pattern = settingOut(basePicture(base.base, side), `setting-out-${side}`, lengths);
  const plan = planSheets(pattern, paperOf(design));
  if (!plan.ok) throw new Error(plan.problems[0]?.message);
  const facts = { part: pattern.title, quantity: 1, keyFacts: [] };
  const print = { pattern, plan: plan.value, facts };
  return renderPatternPdf([print], { ...metaOf(computed), cautions: [] }, fonts);
}

/** The page with bars to be measured, for the design's paper, as PDF. */
export function printCalibration(design: Design, fonts: PrintFonts): Promise<Uint8Array> {
  return renderCalibrationSheet(paperOf(design), design.revision.date, fonts);
}

/** Designs that were computed have a paper that can be used: another is a programmer's mistake. */
function paperOf({ paper, units }: Design): Paper {
  const resolved = resolvePaper(paper, units.length);
  if (!resolved.ok) throw new Error(resolved.problems[0]?.message);
  return resolved.value;
}
