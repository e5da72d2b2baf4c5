import {
  dot3,
  type Edge,
  type EdgeTag,
  norm,
  pointToWorld,
  type Vec,
  type Vec3,
} from '../../../geometry/index.ts';
import type { EdgePlace } from '../api.ts';
import type { SolidEdge, SolidPiece } from '../solid/edges-of-prism.ts';
import { edgesOfSolid } from '../solid/edges-of-solid.ts';
import type { Solid } from '../solid/solid.ts';

/** An edge in the picture: a run of straight pieces, with what is known of each before anything else is looked at. */
export interface Chain {
  readonly part: string;
  readonly tag: EdgeTag;
  readonly on: EdgePlace;
  /** In the camera's frame: x and y in the picture, z towards the viewer. One more than there are pieces. */
  readonly points: readonly Vec3[];
  readonly pieces: readonly ChainPiece[];
}

export interface ChainPiece {
  /** Of the two surfaces, does one look towards the viewer and the other not? Only there can something begin to be hidden. */
  readonly contour: boolean;
  /** Do both look away? Then the solid itself hides it. */
  readonly away: boolean;
  /** The circle that the piece is a chord of, where it is seen as a circle. */
  readonly round?: { readonly centre: Vec; readonly radius: number; readonly turn: 1 | -1 };
  /** Pieces of one source go on straight or along one arc. */
  readonly source: Edge | undefined;
}

/** Of the cosine between a surface's normal and the line of sight: less is edge-on. */
const EDGE_ON = 1e-9;
/** mm: what is shorter in the picture is seen from its end. */
const END_ON = 1e-6;

/** The edges of a solid in the picture, those seen from their ends left out, and of smooth walls only where they turn away. */
export function chainsOf(solid: Solid): readonly Chain[] {
  const { x, y, z } = solid.frame;
  const sight: Vec3 = { x: x.z, y: y.z, z: z.z };
  return edgesOfSolid(solid, (normals) => isContour(normals, sight)).flatMap((edge) =>
    runsOfPieces(edge.pieces).flatMap((run) => chainOf(solid, sight, edge, run)),
  );
}

function runsOfPieces(pieces: readonly SolidPiece[]): readonly (readonly SolidPiece[])[] {
  const runs: SolidPiece[][] = [];
  for (const piece of pieces) {
    const last = runs.at(-1)?.at(-1)?.to;
    const goesOn = last !== undefined && near(last, piece.from);
    if (goesOn) runs.at(-1)!.push(piece);
    else runs.push([piece]);
  }
  return runs;
}

const near = (a: Vec3, b: Vec3): boolean =>
  Math.abs(a.x - b.x) + Math.abs(a.y - b.y) + Math.abs(a.z - b.z) < 1e-7;

function chainOf(solid: Solid, sight: Vec3, edge: SolidEdge, run: readonly SolidPiece[]): readonly Chain[] {
  const { frame } = solid;
  const points = [run[0]!.from, ...run.map(({ to }) => to)].map((p) => pointToWorld(frame, p));
  const long = points.some((p) => norm(p.x - points[0]!.x, p.y - points[0]!.y) > END_ON);
  if (!long) return [];
  const isSquareOn = Math.abs(Math.abs(frame.z.z) - 1) < 1e-14 && (edge.on === 'face' || edge.on === 'back');
  const pieces = run.map((piece) => pieceOf(piece, sight, isSquareOn ? solid : undefined));
  return [{ part: solid.id, tag: edge.tag, on: edge.on, points, pieces }];
}

function pieceOf(piece: SolidPiece, sight: Vec3, squareOn: Solid | undefined): ChainPiece {
  const { source } = piece;
  const plain = {
    contour: isContour(piece.normals, sight),
    away: piece.normals.every((normal) => dot3(normal, sight) < -EDGE_ON),
    source,
  };
  if (squareOn === undefined || source?.kind !== 'arc') return plain;
  const { x, y } = pointToWorld(squareOn.frame, { ...source.centre, z: piece.from.z });
  const turn = squareOn.frame.z.z > 0 ? source.turn : source.turn === 1 ? -1 : 1;
  return { ...plain, round: { centre: { x, y }, radius: source.radius, turn } };
}

function isContour([a, b]: SolidPiece['normals'], sight: Vec3): boolean {
  const [p, q] = [dot3(a, sight), dot3(b, sight)];
  const bothTowards = p > EDGE_ON && q > EDGE_ON;
  const bothAway = p < -EDGE_ON && q < -EDGE_ON;
  return !bothTowards && !bothAway;
}
