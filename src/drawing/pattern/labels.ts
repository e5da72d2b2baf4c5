import { angleOf, distance, type Vec } from '../../geometry/index.ts';
import { grainAt } from '../../sketch/index.ts';
import { type Drawing, letter, textMark } from '../layout/drawing.ts';
import { edgesOf } from '../layout/edges-of.ts';
import {
  cornersOf,
  growBox,
  type OrientedBox,
  toFrame,
  turnedBox,
  turnedOverlap,
} from '../layout/oriented-box.ts';
import { readable } from '../layout/strokes.ts';
import type { Spot } from './inside-grid.ts';
import { boxOfLabel, type LabelBlock, labelArrangements } from './label-block.ts';
import type { PatternSource } from './source.ts';
import type { CentreFrame } from './stations.ts';
import { nameLine } from './words.ts';

/** Heights tried, largest first: ISO 3098, never below what is read at the bench. */
const HEIGHTS = [7, 5, 3.5, 2.5, 1.8] as const;
/** Labels stand no closer together than this, middle to middle, mm: at least one whole one on any sheet or offcut. */
const SPACING = 96;
/** White kept round a label, mm. */
const AIR = 1;
/** Lettering higher than this wants so much room on both sides, mm: on a narrow limb it shouts. */
const MOST_FOR_NARROW = 5;
const BROAD = 40;

/** Where labels may stand: places looked at, the distance between ticks (mm), and the patches of tape among them. */
export interface LabelRoom {
  readonly spots: readonly Spot[];
  readonly pitch: number;
  readonly patches: readonly OrientedBox[];
}

/**
 * Puts the label wherever it fits inside the outline, over and over along the part, in the largest lettering that each
 * place takes, and returns the room taken. A part too small for any label has its name beside it instead.
 */
export function drawLabels(
  drawing: Drawing,
  source: PatternSource,
  frame: CentreFrame,
  { spots, pitch, patches }: LabelRoom,
): readonly OrientedBox[] {
  const taken: OrientedBox[] = [];
  const main = angleOf(frame.direction);
  const ordered = spots
    .map((spot) => ({ spot, preference: preference(spot, pitch) }))
    .sort((a, b) => a.preference - b.preference)
    .map(({ spot }) => spot);
  const arrangementsAt = cachedArrangements(source);
  const isClear = clearOf(patches);
  // First beside patches of tape or whole on them; across their borders only where nothing else is left.
  for (const isAllowed of patches.length === 0 ? [isClear] : [isClear, () => true]) {
    for (const height of HEIGHTS) {
      for (const spot of ordered) {
        // A row of lettering needs at least this much clear of the edge on both sides.
        if (spot.clearance < (height > MOST_FOR_NARROW ? BROAD : height * 0.7)) continue;
        if (taken.some((box) => distance(box.centre, spot.at) < SPACING)) continue;
        const at = { spot, angles: [() => main, spot.edgeAngle], isAllowed };
        const placed = placeAt(drawing, at, (angle) =>
          arrangementsAt(height, angle, grainAt(source.part, spot.at)),
        );
        if (placed !== undefined) taken.push(placed);
      }
    }
  }
  if (taken.length === 0) letter(drawing, namesBeside(source));
  return taken;
}

/** Middles of the cells between ticks first, to within a few millimetres; there the spots farthest from any edge. */
function preference(spot: Spot, pitch: number): number {
  const cell = spot.along / pitch - Math.floor(spot.along / pitch);
  return Math.round(Math.abs(cell - 0.5) * 10) * 1000 - spot.clearance;
}

/** Does a border of a patch run through a box? */
function clearOf(patches: readonly OrientedBox[]): (box: OrientedBox) => boolean {
  const turned = patches.map(turnedBox);
  return (box) => {
    const own = turnedBox(box);
    return turned.every(
      (patch) => !turnedOverlap(own, patch) || cornersOf(box).every((corner) => isInBox(corner, patch)),
    );
  };
}

function isInBox(p: Vec, { centre, angle, halfWidth, halfHeight }: OrientedBox): boolean {
  const { x, y } = toFrame(centre, angle, p);
  return Math.abs(x) <= halfWidth && Math.abs(y) <= halfHeight;
}

function placeAt(
  drawing: Drawing,
  {
    spot,
    angles,
    isAllowed,
  }: {
    readonly spot: Spot;
    readonly angles: readonly (() => number)[];
    readonly isAllowed: (box: OrientedBox) => boolean;
  },
  arrangementsAt: (angle: number) => readonly LabelBlock[],
): OrientedBox | undefined {
  for (const raw of angles) {
    const angle = readable(raw());
    for (const block of arrangementsAt(angle)) {
      if (block.height / 2 > spot.clearance) continue;
      const box = growBox(boxOfLabel(block, spot.at, angle), AIR);
      if (!isAllowed(box) || !drawing.occupancy.isFree(box)) continue;
      drawing.draw(block.draw(spot.at, angle));
      drawing.occupancy.addBox(box);
      return box;
    }
  }
  return undefined;
}

/** Arrangements are the same for equal angles: made once each. */
function cachedArrangements(
  source: PatternSource,
): (height: number, angle: number, grain: number) => readonly LabelBlock[] {
  const made = new Map<number, Map<number, readonly LabelBlock[]>>();
  return (height, angle, grain) => {
    // One number for height and grain: heights are tenths of a millimetre, grain lies within a few turns.
    const key = height * 1000 + grain;
    let ofAngle = made.get(angle);
    if (ofAngle === undefined) {
      ofAngle = new Map();
      made.set(angle, ofAngle);
    }
    let blocks = ofAngle.get(key);
    if (blocks === undefined) {
      blocks = labelArrangements(source, { height, angle, grain });
      ofAngle.set(key, blocks);
    }
    return blocks;
  };
}

function* namesBeside(source: PatternSource) {
  const text = nameLine(source);
  const corners: readonly Vec[] = edgesOf(source.main).map((edge) => edge.from);
  for (const away of [4, 8, 16, 32, 64]) {
    for (const corner of corners) {
      yield textMark(text, { x: corner.x + away, y: corner.y + away }, { weight: 'semibold' });
      yield textMark(
        text,
        { x: corner.x - away, y: corner.y - away },
        { weight: 'semibold', align: 'right' },
      );
    }
  }
}
