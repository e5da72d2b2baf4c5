import { angleOf, distance, type Vec } from '../../geometry/index.ts';
import { type Drawing, letter, textMark } from '../layout/drawing.ts';
import { edgesOf } from '../layout/edges-of.ts';
import { cornersOf, type OrientedBox, shapesOverlap, toFrame, turnedBox } from '../layout/oriented-box.ts';
import type { Spot } from './inside-grid.ts';
import { type IsAllowed, placeLabel, placingOf } from './place-label.ts';
import type { PatternSource } from './source.ts';
import type { CentreFrame } from './stations.ts';
import { nameLine } from './words.ts';

/** Heights tried, largest first: ISO 3098, never below what is read at the bench. */
const HEIGHTS = [7, 5, 3.5, 2.5, 1.8] as const;
/** Labels stand no closer together than this, middle to middle, mm: at least one whole one on any sheet or offcut. */
const SPACING = 96;
/** Lettering higher than this wants so much room on both sides, mm: on a narrow limb it shouts. */
const MOST_FOR_NARROW = 5;
const BROAD = 40;

/** Where labels may stand: places looked at, the distance between ticks (mm), and the patches of tape among them. */
export interface LabelRoom {
  readonly spots: readonly Spot[];
  readonly pitch: number;
  readonly patches: readonly OrientedBox[];
}

/** A place while labels are put: once one stands within SPACING of it, it is out of the question. */
interface Candidate {
  readonly spot: Spot;
  readonly preference: number;
  isOut: boolean;
}

/** Candidates as near to the middles of cells as each other; put in order when they are first come to. */
interface Group {
  candidates: readonly Candidate[];
  isOrdered: boolean;
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
  const groups = groupsOf(spots, pitch);
  const placing = placingOf(drawing, source, angleOf(frame.direction));
  const isClear = clearOf(patches);
  const put = (box: OrientedBox): void => {
    taken.push(box);
    for (const { candidates } of groups) {
      for (const candidate of candidates) candidate.isOut ||= isNear(candidate.spot.at, box.centre);
    }
  };
  // First beside patches of tape or whole on them; across their borders only where nothing else is left.
  const acrossOnly: { readonly height: number; readonly candidate: Candidate }[] = [];
  for (const height of HEIGHTS) {
    // A row of lettering needs at least this much clear of the edge on both sides.
    const least = height > MOST_FOR_NARROW ? BROAD : height * 0.7;
    for (const group of groups) {
      for (const candidate of inOrder(group)) {
        if (candidate.isOut || candidate.spot.clearance < least) continue;
        const placed = placeLabel(placing, candidate.spot, height, isClear);
        if (placed === 'across a border') acrossOnly.push({ height, candidate });
        else if (placed !== undefined) put(placed);
      }
    }
  }
  for (const { height, candidate } of acrossOnly) {
    const placed = candidate.isOut ? undefined : placeLabel(placing, candidate.spot, height, () => true);
    if (placed !== undefined && placed !== 'across a border') put(placed);
  }
  if (taken.length === 0) letter(drawing, namesBeside(source));
  return taken;
}

/** Middles of the cells between ticks first, to within a few millimetres; there the spots farthest from any edge. */
function groupsOf(spots: readonly Spot[], pitch: number): readonly Group[] {
  const groups: Candidate[][] = [[], [], [], [], [], []];
  for (const spot of spots) {
    const cell = spot.along / pitch - Math.floor(spot.along / pitch);
    const off = Math.round(Math.abs(cell - 0.5) * 10);
    groups[off]!.push({ spot, preference: off * 1000 - spot.clearance, isOut: false });
  }
  return groups.map((candidates) => ({ candidates, isOrdered: false }));
}

/** By the time that a group is come to, most of it is near a label that stands already. */
function inOrder(group: Group): readonly Candidate[] {
  if (!group.isOrdered) {
    group.candidates = group.candidates
      .filter(({ isOut }) => !isOut)
      .sort((a, b) => a.preference - b.preference);
    group.isOrdered = true;
  }
  return group.candidates;
}

function isNear(p: Vec, q: Vec): boolean {
  return Math.abs(p.x - q.x) < SPACING && Math.abs(p.y - q.y) < SPACING && distance(p, q) < SPACING;
}

/** Does no border of a patch run through a box? */
function clearOf(patches: readonly OrientedBox[]): IsAllowed {
  const turned = patches.map(turnedBox);
  return (box, shape) =>
    turned.every(
      (patch) =>
        !shapesOverlap(shape, patch, patch.centre.x - box.centre.x, patch.centre.y - box.centre.y) ||
        cornersOf(box).every((corner) => isInBox(corner, patch)),
    );
}

function isInBox(p: Vec, { centre, angle, halfWidth, halfHeight }: OrientedBox): boolean {
  const { x, y } = toFrame(centre, angle, p);
  return Math.abs(x) <= halfWidth && Math.abs(y) <= halfHeight;
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
