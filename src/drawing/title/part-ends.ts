import type { MadePart } from '../../base/index.ts';
import { type Box, boundsOfRegions, type Edge, line, pointToFrame, type Vec } from '../../geometry/index.ts';
import type { Dimension } from '../dimension/api.ts';
import type { Camera } from '../view/api.ts';

/** mm: ends less wide than the part by more than this say their width; edges less than this aslant run along the part. */
const WORTH = 0.5;
const ALONG = 1e-3;

/** Angles of sawn ends with the straight edge before them, in the wood, as a bevel reads them on the face side. */
export function endsOnFace(made: MadePart): readonly Dimension[] {
  return sawnEdges(made).flatMap(({ edge, before }): readonly Dimension[] => {
    if (before.kind !== 'line') return [];
    const along = directionOf(edge.from, edge.to);
    const back = directionOf(before.to, before.from);
    return [
      { kind: 'angle', name: `${edge.tag.id} angle`, at: edge.from, from: along, to: upTo(back, along) },
    ];
  });
}

/** How wide sawn ends are across the part, where they are not as wide as all of it. */
export function widthsOfEnds(made: MadePart, box: Box): readonly Dimension[] {
  return sawnEdges(made).flatMap(({ edge: { from, to, tag } }): readonly Dimension[] => {
    const width = Math.abs(to.x - from.x);
    if (width < WORTH || width > box.maxX - box.minX - WORTH) return [];
    const side = (from.y + to.y) / 2 > (box.minY + box.maxY) / 2 ? 'above' : 'below';
    return [{ kind: 'length', name: `width at ${tag.id}`, from, to, along: 0, side }];
  });
}

/**
 * Angles of bevelled ends with the length on the right edge of the part, in its picture from the right: where that edge runs straight along
 * the part, so that the picture shows the angle true.
 */
export function endsOnEdge(made: MadePart, camera: Camera): readonly Dimension[] {
  const backs = made.back.flatMap(({ outer }) => outer.edges);
  return sawnEdges(made).flatMap(({ edge, before, after }): readonly Dimension[] => {
    const isLow = edge.to.x > edge.from.x;
    const [corner, beside] = isLow ? [edge.to, after] : [edge.from, before];
    const other = backs.find(({ kind, tag }) => kind === 'line' && tag.id === edge.tag.id);
    if (other === undefined || !runsAlong(beside)) return [];
    const behind = other.from.x > other.to.x ? other.from : other.to;
    if (Math.abs(behind.y - corner.y) < WORTH / 5 || Math.abs(behind.x - corner.x) > ALONG) return [];
    const at = pointToFrame(camera, { ...corner, z: 0 });
    const end = pointToFrame(camera, { ...behind, z: -made.sketch.thickness });
    const [cut, length] = [directionOf(at, end), isLow ? Math.PI / 2 : -Math.PI / 2];
    const [from, to] = isLow ? [cut, length] : [length, cut];
    return [
      {
        kind: 'angle',
        name: `${edge.tag.id} angle on the edge`,
        at: { x: at.x, y: at.y },
        from,
        to: upTo(to, from),
      },
    ];
  });
}

interface SawnEdge {
  readonly edge: Edge;
  readonly before: Edge;
  readonly after: Edge;
}

/** Edges that cuts across the part make; what is ripped along it ends nothing. */
function sawnEdges({ face, cuts }: MadePart): readonly SawnEdge[] {
  const names = new Set(cuts.map(({ name }) => name));
  const { minY, maxY } = boundsOfRegions(face);
  return face.flatMap(({ outer: { edges } }) =>
    edges.flatMap((edge, at): readonly SawnEdge[] => {
      if (edge.kind !== 'line' || !names.has(edge.tag.id)) return [];
      if (Math.abs(edge.to.y - edge.from.y) > (maxY - minY) / 2) return [];
      const before = edges[(at + edges.length - 1) % edges.length]!;
      return [{ edge, before, after: edges[(at + 1) % edges.length]! }];
    }),
  );
}

function runsAlong(edge: Edge): boolean {
  const { from, to } = edge.kind === 'line' ? edge : line({ x: 0, y: 0 }, { x: 1, y: 0 }, edge.tag);
  return Math.abs(to.x - from.x) < ALONG * Math.abs(to.y - from.y);
}

const directionOf = (from: Vec, to: Vec): number => Math.atan2(to.y - from.y, to.x - from.x);

/** The angle anticlockwise from another, below a full turn. */
function upTo(angle: number, from: number): number {
  const by = angle - from;
  return from + by - 2 * Math.PI * Math.floor(by / (2 * Math.PI));
}
