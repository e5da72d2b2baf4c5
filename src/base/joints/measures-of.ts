import {
  type Box,
  boundsOfRegions,
  dot,
  dot3,
  type Edge,
  type Frame,
  nearestOnEdges,
  norm,
  pointToFrame,
  pointToWorld,
  scale3,
  subtract,
  unit,
  type Vec,
  type Vec3,
} from '../../geometry/index.ts';
import type { PlacedPart } from '../api.ts';
import type { PartFace } from '../contact/api.ts';
import type { Measure } from './api.ts';
import { faceEdgeOf } from './face-edge.ts';

/**
 * What to mark out on a face for a mortise or a tenon whose frame is given, mm. On an edge: from the face side, and along it from its end. On
 * an end: from the face side and from the face edge, both along the end itself, as a rule lies on it. On face and back: square from the face edge,
 * and along that from its end. Of two ends a sawn one counts before a corner of the outline, then the nearer.
 */
export function measuresOf(part: PlacedPart, face: PartFace, own: Frame, size: Box): readonly Measure[] {
  const isWide = face.kind === 'face' || face.kind === 'back';
  if (isWide) return onFace(part, face, own, size);
  const depth = fromFaceSide(face, own, size);
  return isEnd(face)
    ? [...depth, ...alongEnd(part, face, own, size)]
    : [...depth, ...fromEndOfWall(part, face, own, size)];
}

/** A wall across the part's length is an end. */
const isEnd = ({ own }: PartFace): boolean => Math.abs(own.z.y) > Math.SQRT1_2;

/** To the middle of the work, and to its near and its far side. */
function three(measure: Omit<Measure, 'to' | 'value'>, value: number, reach: number): readonly Measure[] {
  return [
    { ...measure, to: 'centre', value },
    { ...measure, to: 'near side', value: value - reach },
    { ...measure, to: 'far side', value: value + reach },
  ];
}

/** How far the work reaches from its middle in a direction of the part's frame: as a slot or a disc does. */
function reachOf(own: Frame, size: Box, along: Frame['x']): number {
  const [long, wide] = [size.maxX - size.minX, size.maxY - size.minY];
  const radius = Math.min(long, wide) / 2;
  const aside = norm(dot3(own.x, along), dot3(own.y, along));
  return Math.abs(dot3(own.x, along)) * (long / 2 - radius) + aside * radius;
}

function fromFaceSide(face: PartFace, own: Frame, size: Box): readonly Measure[] {
  // The face's y axis climbs to the face side, at a slant where the end is bevelled.
  const value = -own.origin.z / face.own.y.z;
  return three({ from: 'face side', away: scale3(face.own.y, -1) }, value, reachOf(own, size, face.own.y));
}

function fromFaceEdge(part: PlacedPart, side: 'face' | 'back', own: Frame, size: Box): readonly Measure[] {
  const { edge, from, to } = faceEdgeOf(part, side);
  const along = unit(subtract(to, from));
  const across = { x: along.y, y: -along.x, z: 0 };
  const off = dot(subtract(own.origin, from), across);
  const away = scale3(across, off < 0 ? -1 : 1);
  const named = edge === undefined ? {} : { edge };
  return three({ from: 'face edge', ...named, away }, Math.abs(off), reachOf(own, size, across));
}

/** From the face edge along the end, which need not be square to it: so a slot that lies along the end measures its own length. */
function alongEnd(part: PlacedPart, face: PartFace, own: Frame, size: Box): readonly Measure[] {
  const { edge, from, to } = faceEdgeOf(part, 'face');
  const along = unit(subtract(to, from));
  const across = { x: along.y, y: -along.x, z: 0 };
  const slope = dot3(face.own.x, across);
  const value = dot(subtract(own.origin, from), across) / slope;
  const away = scale3(face.own.x, value < 0 ? -1 : 1);
  const named = edge === undefined ? {} : { edge };
  return three(
    { from: 'face edge', ...named, along: 'end', away },
    Math.abs(value),
    reachOf(own, size, face.own.x),
  );
}

function onFace(part: PlacedPart, face: PartFace, own: Frame, size: Box): readonly Measure[] {
  const side = face.kind === 'back' ? 'back' : 'face';
  const { edge, from, to } = faceEdgeOf(part, side);
  const along = unit(subtract(to, from));
  const edges = part[side].flatMap(({ outer }) => outer.edges).filter(({ tag }) => tag.id !== edge);
  // The blank's edge does not reach the part's own ends everywhere: what lies beyond the work counts.
  const seen = (at: Vec): Vec => (edge === undefined ? { x: own.origin.x, y: at.y } : at);
  const onwards = { ...along, z: 0 };
  const ends = [
    { at: from, value: dot(subtract(own.origin, from), along), away: onwards },
    { at: to, value: dot(subtract(to, own.origin), along), away: scale3(onwards, -1) },
  ].map(({ at, ...end }) => ({ ...end, next: nextTo(edges, seen(at)) }));
  return [...fromFaceEdge(part, side, own, size), ...fromBetterEnd(ends, reachOf(own, size, onwards))];
}

function fromEndOfWall(part: PlacedPart, face: PartFace, own: Frame, size: Box): readonly Measure[] {
  const { minX, maxX } = boundsOfRegions(face.regions);
  const at = pointToFrame(face.own, own.origin);
  const others = part.face
    .flatMap(({ outer }) => outer.edges)
    .filter(({ tag }) => !face.edges.includes(tag.id));
  const place = (x: number): Vec => pointToWorld(face.own, { x, y: 0, z: 0 });
  const ends = [
    { value: at.x - minX, away: face.own.x, next: nextTo(others, place(minX)) },
    { value: maxX - at.x, away: scale3(face.own.x, -1), next: nextTo(others, place(maxX)) },
  ];
  return fromBetterEnd(ends, reachOf(own, size, face.own.x));
}

const nextTo = (edges: readonly Edge[], at: Vec): Edge | undefined =>
  edges.length === 0 ? undefined : edges[nearestOnEdges(edges, at).index];

interface End {
  readonly value: number;
  readonly away: Vec3;
  readonly next: Edge | undefined;
}

function fromBetterEnd(ends: readonly End[], reach: number): readonly Measure[] {
  const isSawn = (end: End): boolean => end.next?.tag.role === 'sawn';
  const [best] = ends.toSorted((p, q) => Number(isSawn(q)) - Number(isSawn(p)) || p.value - q.value);
  const { value, away, next } = best!;
  const edge = next?.tag.id;
  return three({ from: 'end', ...(edge === undefined ? {} : { edge }), away }, value, reach);
}
