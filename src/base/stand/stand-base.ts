import { fail, ok, type Problem, type Result } from '../../core/index.ts';
import { type Frame, flipPlane, norm, type Plane3 } from '../../geometry/index.ts';
import type { PlacedSketch, Sketch } from '../../sketch/index.ts';
import type { PlacedPart, StandingBase } from '../api.ts';
import { changesHand, type Motion, motionsOf, moveFrame, movePlane } from './copies.ts';
import { marksOfCopies } from './marks-of-places.ts';
import { otherHand } from './other-hand.ts';
import { type FramedPlace, planesOfBase } from './planes-of-base.ts';
import { cutPart, frameOfPlace, middleOf } from './stand-part.ts';

/**
 * The parts of a base form in their places:
 *
 *     drawn part ─▶ frame in the world ─▶ cut by the form's planes ─▶ copies, mirrored or turned, with their hand
 *
 * Copies of one hand are cut once, in their own frame, so that they are alike to the last digit. Fails where a part cannot be
 * placed: no such part, a direction of no length, a plane along a part's faces, a part of which nothing stays.
 */
export function standBase(sketch: Sketch): Result<StandingBase> {
  const { base } = sketch;
  if (base === undefined) throw new RangeError(`${sketch.form} places no parts`);
  const problems: Problem[] = [];
  const framed = new Map<string, FramedPlace>();
  for (const place of base.places) {
    const drawn = sketch.parts.find(({ name }) => name === place.part);
    // A part left out by a condition leaves its place empty.
    if (drawn === undefined) continue;
    const frame = frameOfPlace(place);
    if (frame !== undefined) framed.set(place.name, { frame, drawn });
    else {
      problems.push({
        code: 'base.direction',
        message: `${place.name} cannot be placed: its length and its face look the same way`,
        path: `base.places.${place.name}`,
        expected: 'two directions across each other',
      });
    }
  }
  const planes = planesOfBase(base, framed);
  if (!planes.ok) return fail(...problems, ...planes.problems);
  const parts = base.places.flatMap((place) => {
    const found = framed.get(place.name);
    if (found === undefined) return [];
    const made = standPlace(place, found, planes.value);
    if (made.ok) return made.value;
    problems.push(...made.problems);
    return [];
  });
  if (problems.length > 0) return fail(...problems);
  const { joints, top, levellers, use } = base;
  return ok({ parts, planes: planes.value, joints, top, levellers, use });
}

function standPlace(
  place: PlacedSketch,
  { frame, drawn }: FramedPlace,
  planes: Readonly<Record<string, Plane3>>,
): Result<readonly PlacedPart[]> {
  const path = `base.places.${place.name}`;
  const trims = place.trims.map(({ plane, otherSide }) => ({
    name: plane,
    plane: otherSide ? flipPlane(planes[plane]!) : planes[plane]!,
  }));
  const motions = motionsOf(place.copies);
  const hands = new Map<boolean, CutHand>();
  const handFor = (motion: Motion): CutHand => {
    const mirrored = changesHand(motion);
    const known = hands.get(mirrored);
    if (known !== undefined) return known;
    const own = mirrored ? otherHand(drawn) : drawn;
    const moved = trims.map(({ name, plane }) => ({ name, plane: movePlane(plane, motion) }));
    const made = { drawn: own, ...cutPart(own, moveFrame(frame, motion), moved) };
    hands.set(mirrored, made);
    return made;
  };
  const copies = motions.map((motion, copy) =>
    standCopy(place, { hand: handFor(motion), frame: moveFrame(frame, motion), motion, copy }),
  );
  const [first] = copies;
  const flat = first?.cuts.find(({ plane }) => norm(plane.normal.x, plane.normal.y) < 1e-6);
  if (flat !== undefined) {
    const message = `${flat.name} lies along the faces of ${place.name}: it would plane the part thinner, not cut it`;
    return fail({
      code: 'base.flat-cut',
      message,
      path: `${path}.trims`,
      expected: 'a plane across the part',
    });
  }
  if (first !== undefined && (first.face.length === 0 || first.back.length === 0)) {
    const message = `nothing is left of ${place.name} once it is cut by ${trims.map(({ name }) => name).join(', ')}`;
    return fail({
      code: 'base.all-cut',
      message,
      path,
      expected: 'planes of which the part lies on the inner side',
    });
  }
  const marks = marksOfCopies(copies.map(middleOf));
  return ok(copies.map((each, at) => ({ ...each, mark: marks[at]! })));
}

/** What a place's part is in one hand, in its own frame. */
type CutHand = Pick<PlacedPart, 'drawn' | 'cuts' | 'face' | 'back' | 'silhouette'>;

function standCopy(
  place: PlacedSketch,
  {
    hand,
    frame,
    motion,
    copy,
  }: {
    readonly hand: CutHand;
    readonly frame: Frame;
    readonly motion: Motion;
    readonly copy: number;
  },
): PlacedPart {
  return {
    id: copy === 0 ? place.name : `${place.name}-${copy + 1}`,
    place: place.name,
    copy,
    mark: '',
    label: place.label,
    hand: changesHand(motion) ? 'right' : 'left',
    frame,
    beam: place.beam,
    ...hand,
  };
}
