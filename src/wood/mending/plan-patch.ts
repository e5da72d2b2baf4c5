import {
  boundsOfRegions,
  centroidOfRegions,
  offsetRegions,
  type Region,
  STAY,
  transformRegion,
} from '../../geometry/index.ts';
import type { Patch, PatchTooling, PatchWish } from './api.ts';
import { patchFindings } from './patch-findings.ts';
import { flawWithMargin, patchOutline } from './patch-outline.ts';

/** Length to width where the maker says nothing: sides slant at about 14°, which glue well along the grain (common practice). */
export const USUAL_SLENDERNESS = 4;

/** mm of sound wood round the flaw. */
const USUAL_MARGIN = 2;

/** Corners of the patch are rounder than the cutter by this share: at exactly its radius it would dwell in them. */
const ROUNDER = 1.1;

/**
 * A patch for a flaw, and the one template opening O from which its recess and its plug are cut. With cutter radius c, bushing radius g and
 * collar radius G: recess = (O ⊖ G) ⊕ c, plug = O ⊖ (g + c). They fit when G = g + 2c and no corner of the plug is tighter than c.
 * The opening is drawn from the plug; what the collar in hand makes of the recess is what the cutter will really leave.
 */
export function planPatch(flaw: Region, grain: number, wish: PatchWish, tooling: PatchTooling): Patch {
  const { shape, slenderness = USUAL_SLENDERNESS, margin = USUAL_MARGIN, clearance = 0 } = wish;
  const cutter = tooling.cutter / 2;
  const bushing = tooling.bushing / 2;
  const collarNeeded = tooling.bushing + 2 * tooling.cutter - 2 * clearance;
  const collar = tooling.collar ?? collarNeeded;
  const outline = patchOutline(flawWithMargin(flaw, margin), grain, {
    shape,
    slenderness,
    round: cutter * ROUNDER,
  });
  const [opening] = offsetRegions([outline], bushing + cutter);
  // With the collar on, the cutter reaches what a disc of its radius covers while the collar stays in the opening.
  const recess = offsetRegions(offsetRegions([opening!], -collar / 2), cutter);
  const plug = offsetRegions([opening!], -(bushing + cutter));
  const box = boundsOfRegions([transformRegion(outline, { ...STAY, turn: -grain })]);
  const sizes = {
    shape,
    centre: centroidOfRegions([outline]),
    grain,
    length: box.maxX - box.minX,
    width: box.maxY - box.minY,
    opening: opening!,
    recess,
    plug,
    collarNeeded,
    collar,
    gap: bushing + 2 * cutter - collar / 2,
  };
  return { ...sizes, findings: patchFindings(sizes, tooling, clearance) };
}
