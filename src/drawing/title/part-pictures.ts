import type { MadePart, PlacedPart } from '../../base/index.ts';
import { boundsOfRegions, pointAt, pointToFrame } from '../../geometry/index.ts';
import type { Dimension } from '../dimension/api.ts';
import { camerasOfPart } from '../view/cameras.ts';
import { viewOfParts } from '../view/view-of-parts.ts';
import type { Picture } from './picture.ts';

const OWN = {
  origin: { x: 0, y: 0, z: 0 },
  x: { x: 1, y: 0, z: 0 },
  y: { x: 0, y: 1, z: 0 },
  z: { x: 0, y: 0, z: 1 },
} as const;

/**
 * One different part, square to its face and from its right: every corner of the face and back outlines that cuts make, its overall
 * length, width and thickness, radii, and the angles at its ends, as it is made in the left hand.
 */
export function partPictures(made: MadePart, part: PlacedPart): readonly Picture[] {
  // As the pattern lies: the made part's own plane, whichever way it stands in the base.
  const own = { ...part, frame: OWN, drawn: { ...part.drawn, region: made.sketch.region } };
  const cameras = camerasOfPart(OWN);
  const cut = { ...own, drawn: { ...own.drawn, region: wholeOutline(made, part) }, cuts: made.cuts };
  const face = viewOfParts([cut], cameras.face, { tolerance: 0.05 });
  const side = viewOfParts([cut], cameras.right, { tolerance: 0.05 });
  const box = boundsOfRegions([...made.face, ...made.back]);
  const thick = pointToFrame(cameras.right, { x: 0, y: 0, z: -made.sketch.thickness });
  return [
    { name: `${made.label}, face side`, view: face, lines: [], dimensions: faceDimensions(made, box) },
    {
      name: 'From the right',
      view: side,
      lines: [],
      dimensions: [
        {
          kind: 'length',
          name: 'thickness',
          from: { x: Math.min(0, thick.x), y: box.minY },
          to: { x: Math.max(0, thick.x), y: box.minY },
          along: 0,
          side: 'below',
        },
      ],
    },
  ];
}

/** The outline as drawn before any cut, in the hand of the pattern. */
function wholeOutline(made: MadePart, part: PlacedPart): PlacedPart['drawn']['region'] {
  return part.hand === 'left' || made.sketch.quantity.right > 0 ? part.drawn.region : made.sketch.region;
}

type Box = ReturnType<typeof boundsOfRegions>;

function faceDimensions({ face, cuts }: MadePart, box: Box): readonly Dimension[] {
  const edges = face.flatMap(({ outer }) => outer.edges);
  const names = new Set(cuts.map(({ name }) => name));
  const overall: readonly Dimension[] = [
    {
      kind: 'length',
      name: 'length',
      from: { x: box.maxX, y: box.minY },
      to: { x: box.maxX, y: box.maxY },
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
  const ends = edges.flatMap((edge, at): readonly Dimension[] => {
    if (!names.has(edge.tag.id) || edge.kind !== 'line') return [];
    const before = edges[(at + edges.length - 1) % edges.length]!;
    if (before.kind !== 'line') return [];
    const along = Math.atan2(edge.to.y - edge.from.y, edge.to.x - edge.from.x);
    const back = Math.atan2(before.from.y - before.to.y, before.from.x - before.to.x);
    return [
      { kind: 'angle', name: `${edge.tag.id} angle`, at: edge.from, from: along, to: upTo(back, along) },
    ];
  });
  return [...overall, ...radii, ...ends];
}

/** The angle anticlockwise from another, below a full turn. */
function upTo(angle: number, from: number): number {
  const by = angle - from;
  return from + by - 2 * Math.PI * Math.floor(by / (2 * Math.PI));
}
