import type { MadePart, PlacedPart } from '../../base/index.ts';
import { boundsOfRegions, pointAt, pointToFrame } from '../../geometry/index.ts';
import type { Dimension } from '../dimension/api.ts';
import type { View } from '../view/api.ts';
import { camerasOfPart } from '../view/cameras.ts';
import { viewOfParts } from '../view/view-of-parts.ts';
import { endsOnEdge, endsOnFace, widthsOfEnds } from './part-ends.ts';
import { arrisesOfFace, arrisesOnEdge, endOf, placesAlong, placesFromFace } from './part-positions.ts';
import { centresOfWork, woodWithWork } from './part-work.ts';
import type { Picture } from './picture.ts';

const OWN = {
  origin: { x: 0, y: 0, z: 0 },
  x: { x: 1, y: 0, z: 0 },
  y: { x: 0, y: 1, z: 0 },
  z: { x: 0, y: 0, z: 1 },
} as const;

/**
 * One different part, square to its face and from its right, as it is made in the left hand: every corner that cuts make, what joints take
 * and leave (hidden edges dashed) with their middles and where these lie, overall length, width and thickness, long and short points, radii,
 * and the angles of its ends on the face and on its right edge.
 */
export function partPictures(made: MadePart, part: PlacedPart): readonly Picture[] {
  // As the pattern lies: the made part's own plane, whichever way it stands in the base.
  const own = { ...part, frame: OWN, drawn: { ...part.drawn, region: made.sketch.region } };
  const cameras = camerasOfPart(OWN);
  const cut = { ...own, drawn: { ...own.drawn, region: wholeOutline(made, part) }, cuts: made.cuts };
  const wood = woodWithWork(cut, made.work);
  const [face, side] = [cameras.face, cameras.right].map((camera) =>
    viewOfParts(wood, camera, { tolerance: 0.05 }),
  ) as [View, View];
  const box = boundsOfRegions([...made.face, ...made.back]);
  const thick = pointToFrame(cameras.right, { x: 0, y: 0, z: -made.sketch.thickness });
  return [
    {
      name: `${made.label}, face side`,
      view: face,
      lines: centresOfWork(made.work, cameras.face),
      dimensions: [
        ...faceDimensions(made, box),
        ...placesAlong(made, cameras.face, box),
        ...arrisesOfFace(made, box),
      ],
    },
    {
      name: 'From the right',
      view: side,
      lines: centresOfWork(made.work, cameras.right),
      dimensions: [
        {
          kind: 'length',
          name: 'thickness',
          from: { x: Math.min(0, thick.x), y: box.minY },
          to: { x: Math.max(0, thick.x), y: box.minY },
          along: 0,
          side: 'below',
        },
        ...placesFromFace(made, cameras.right, box),
        ...arrisesOnEdge(made, cameras.right, box),
        ...endsOnEdge(made, cameras.right),
      ],
    },
  ];
}

/** The outline as drawn before any cut, in the hand of the pattern. */
function wholeOutline(made: MadePart, part: PlacedPart): PlacedPart['drawn']['region'] {
  return part.hand === 'left' || made.sketch.quantity.right > 0 ? part.drawn.region : made.sketch.region;
}

type Box = ReturnType<typeof boundsOfRegions>;

function faceDimensions(made: MadePart, box: Box): readonly Dimension[] {
  const edges = made.face.flatMap(({ outer, holes }) => [outer, ...holes].flatMap((loop) => loop.edges));
  const overall: readonly Dimension[] = [
    {
      kind: 'length',
      name: 'length',
      from: endOf(made, 'low', 'right'),
      to: endOf(made, 'high', 'right'),
      along: Math.PI / 2,
      side: 'right',
    },
    {
      kind: 'length',
      name: 'width',
      from: { x: box.minX, y: box.maxY },
      to: { x: box.maxX, y: box.maxY },
      along: 0,
      side: 'above',
    },
  ];
  const radii = edges.flatMap((edge, at): readonly Dimension[] => {
    if (edge.kind !== 'arc' || edges.findIndex(({ tag }) => tag.id === edge.tag.id) !== at) return [];
    return [{ kind: 'radius', name: edge.tag.id, centre: edge.centre, at: pointAt(edge, 0.5) }];
  });
  return [...overall, ...widthsOfEnds(made, box), ...radii, ...endsOnFace(made)];
}
