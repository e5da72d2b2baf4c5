import type { JointWork, PlacedPart } from '../../base/index.ts';
import {
  angleOf,
  boundsOfRegions,
  cross3,
  dot3,
  type Frame,
  pointToFrame,
  scale3,
  subtract3,
  unit,
  unit3,
  type Vec,
  type Vec3,
} from '../../geometry/index.ts';
import type { Dimension } from '../dimension/api.ts';
import type { Camera, View } from '../view/api.ts';
import { viewOfParts } from '../view/view-of-parts.ts';
import type { Piece } from './broken.ts';
import { centresOfWork, woodWithWork } from './part-work.ts';
import type { Picture } from './picture.ts';

type Marked = Exclude<JointWork, { kind: 'pocket' }>;
type Measures = Marked['measures'];

const OWN: Frame = {
  origin: { x: 0, y: 0, z: 0 },
  x: { x: 1, y: 0, z: 0 },
  y: { x: 0, y: 1, z: 0 },
  z: { x: 0, y: 0, z: 1 },
};
/** Kept on paper beside what is marked out, and least that is worth leaving out, mm. */
const BESIDE = 12;
const WORTH = 30;
/** mm: places that differ by less are one. */
const SAME = 0.05;
/** Of the cosine between the drilled line and the part's length: more is work in an end. */
const IN_END = Math.SQRT1_2;

/**
 * What is marked out on a part for one joint: square to each face that is cut into, with what is measured from the face side, the face edge and the
 * end to both sides of a mortise or tenon, or to the middle of a hole; of a halving where its corners lie along the part. Broken between
 * the end and the joint at a scale, where they lie far apart.
 */
export function jointPictures(
  part: PlacedPart,
  { label, faceOf }: { readonly label: string; readonly faceOf: (face: string) => string },
  work: readonly JointWork[],
  scale: number,
): readonly Picture[] {
  const wood = woodWithWork({ ...part, frame: OWN }, work);
  const marked = work.filter((each): each is Marked => each.kind !== 'pocket');
  const faces = [...new Set(marked.map(({ face }) => face))];
  const pictures = faces.map((face): Picture => {
    const own = marked.filter((each) => each.face === face);
    const camera = cameraOnto(own[0]!);
    const view = viewOfParts(wood, camera, { tolerance: 0.05 });
    const dimensions = own.flatMap((each) => dimensionsOf(each, camera));
    return {
      name: `${label}, ${faceOf(face)}`,
      view,
      lines: centresOfWork(own, camera),
      dimensions,
      ...piecesFor(dimensions, view, scale),
    };
  });
  const pockets = work.filter((each) => each.kind === 'pocket');
  return pockets.length === 0 ? pictures : [...pictures, halving(label, wood, pockets, scale)];
}

/** Square to a face from outside, the part's length upright; of an end with the face side at the top. */
function cameraOnto({ kind, own }: Marked): Camera {
  const z = kind === 'tenon' ? own.z : scale3(own.z, -1);
  const up: Vec3 = Math.abs(own.z.y) > IN_END ? { x: 0, y: 0, z: 1 } : { x: 0, y: 1, z: 0 };
  const y = unit3(subtract3(up, scale3(z, dot3(up, z))));
  return { origin: OWN.origin, x: cross3(y, z), y, z };
}

function dimensionsOf(work: Marked, camera: Camera): readonly Dimension[] {
  const centre = pointToFrame(camera, work.own.origin);
  const references = [...new Set(work.measures.map(({ from }) => from))];
  return references.flatMap((from) => {
    const own = work.measures.filter((each) => each.from === from);
    return along(own, centre, camera, work.kind === 'hole');
  });
}

/** From one reference face to the sides of the work, measured the way that its measures are. */
function along(measures: Measures, centre: Vec3, camera: Camera, isHole: boolean): readonly Dimension[] {
  const [{ from, away }] = measures as readonly [Measures[number]];
  const { value: middle } = measures.find(({ to }) => to === 'centre')!;
  const seen: Vec = { x: dot3(away, camera.x), y: dot3(away, camera.y) };
  // Seen at a slant where the face is: the figures stay, only the way counts.
  const way = unit(seen);
  const at = (value: number): Vec => ({
    x: centre.x + way.x * (value - middle),
    y: centre.y + way.y * (value - middle),
  });
  const wanted = measures.filter(({ to }) => (isHole ? to === 'centre' : to !== 'centre'));
  return wanted.map(({ to, value }) => ({
    kind: 'length',
    name: `${to} from the ${from}`,
    from: at(0),
    to: at(value),
    along: angleOf(way),
    side: Math.abs(way.y) > Math.abs(way.x) ? 'left' : 'below',
  }));
}

/** Corners of what is halved away, each from the lower end along its own side of the part. */
function halving(
  label: string,
  wood: ReturnType<typeof woodWithWork>,
  pockets: readonly Extract<JointWork, { kind: 'pocket' }>[],
  scale: number,
): Picture {
  const [first] = pockets;
  const isOnFace = first!.fromZ >= -SAME;
  const camera: Camera = isOnFace ? OWN : { ...OWN, x: scale3(OWN.x, -1), z: scale3(OWN.z, -1) };
  const view = viewOfParts(wood, camera, { tolerance: 0.05 });
  const corners = pockets
    .flatMap(({ region }) => region)
    .flatMap(({ outer }) =>
      outer.edges.map(({ from }) => pointToFrame(camera, { ...from, z: first!.fromZ })),
    );
  const { minX, maxX } = boundsOfRegions(pockets.flatMap(({ region }) => region));
  const middle = pointToFrame(camera, { x: (minX + maxX) / 2, y: 0, z: 0 }).x;
  const foot = view.box.minY;
  const dimensions = corners.map(
    ({ x, y }): Dimension => ({
      kind: 'length',
      name: 'corner of the halving from the end',
      from: { x, y: foot },
      to: { x, y },
      along: Math.PI / 2,
      side: x < middle ? 'left' : 'right',
    }),
  );
  return {
    name: `${label}, ${isOnFace ? 'face side' : 'back'}`,
    view,
    lines: [],
    dimensions,
    ...piecesFor(dimensions, view, scale),
  };
}

/** What of the picture is shown: what dimensions touch and a little beside it; the rest is broken off. */
function piecesFor(
  dimensions: readonly Dimension[],
  { box }: View,
  scale: number,
): { readonly pieces?: readonly Piece[] } {
  const heights = dimensions
    .flatMap((each) => (each.kind === 'length' ? [each.from.y, each.to.y] : []))
    .toSorted((a, b) => a - b);
  const [lowest, highest] = [heights[0], heights.at(-1)];
  if (lowest === undefined || highest === undefined) return {};
  const beside = BESIDE / scale;
  const pieces: { from: number; to: number }[] = [];
  for (const y of heights) {
    const last = pieces.at(-1);
    if (last !== undefined && y - beside - last.to < WORTH / scale) last.to = Math.max(last.to, y + beside);
    else pieces.push({ from: y - beside, to: y + beside });
  }
  // Little beyond is shown whole.
  const [first, last] = [pieces[0]!, pieces.at(-1)!];
  if (first.from - box.minY < beside) first.from = -Infinity;
  if (box.maxY - last.to < beside) last.to = Infinity;
  const isWhole = pieces.length === 1 && first.from === -Infinity && last.to === Infinity;
  return isWhole ? {} : { pieces };
}
