import type { PlacedPart, StandingBase } from '../../base/index.ts';
import {
  angleOf,
  distance,
  dot3,
  pointToFrame,
  pointToWorld,
  subtract,
  type Vec,
  type Vec3,
} from '../../geometry/index.ts';
import type { Camera, View } from '../view/api.ts';
import { CAMERAS } from '../view/cameras.ts';
import type { Dimension } from './api.ts';

export type BaseSide = 'front' | 'left' | 'right' | 'plan';

/** A face turned from the picture by less than this (rad) shows its angles true. */
const TRUE_ANGLE = 1e-4;
/** Leans between these (rad) are worth an angle: less is plumb, more is a level part. */
const LEAN = { least: 0.2 * (Math.PI / 180), most: 50 * (Math.PI / 180) } as const;
/** A foot's corners lie no higher over the lowest than this, mm. */
const AT_FLOOR = 0.05;

/**
 * What a view of the base is dimensioned by: heights, the top and how far it reaches over, the spread of the feet, and the lean of legs whose
 * faces show true in it.
 */
export function dimensionsOfBase(base: StandingBase, side: BaseSide, view: View): readonly Dimension[] {
  const camera = CAMERAS[side];
  if (side === 'plan') return planDimensions(base, camera);
  const { top, levellers } = base;
  const half = (side === 'front' ? top.length : top.width) / 2;
  const upper = top.level + top.thickness;
  const feet = spreadOf(
    base.parts.flatMap(cornersOf).filter(({ z }) => z < levellers + AT_FLOOR),
    camera,
  );
  const carriers = spreadOf(
    base.parts.flatMap(cornersOf).filter(({ z }) => Math.abs(z - top.level) < AT_FLOOR),
    camera,
  );
  const right = Math.max(half, view.box.maxX);
  const found: Dimension[] = [
    length('overall height', { x: right, y: 0 }, { x: right, y: upper }, 'right', Math.PI / 2),
    length('underside of the top', { x: right, y: 0 }, { x: right, y: top.level }, 'right', Math.PI / 2),
    length(
      side === 'front' ? 'length of the top' : 'width of the top',
      { x: -half, y: upper },
      { x: half, y: upper },
      'above',
      0,
    ),
  ];
  if (feet !== undefined) {
    found.push(length('spread of the feet', { x: feet.least, y: 0 }, { x: feet.most, y: 0 }, 'below', 0));
  }
  if (carriers !== undefined && half - carriers.most > 1) {
    found.push(length('overhang', { x: carriers.most, y: top.level }, { x: half, y: top.level }, 'above', 0));
  }
  return [...found, ...leans(base.parts, camera)];
}

function planDimensions({ top, parts }: StandingBase, camera: Camera): readonly Dimension[] {
  const [x, y] = [top.length / 2, top.width / 2];
  return [
    length('length of the top', { x: -x, y }, { x, y }, 'above', 0),
    length('width of the top', { x, y: -y }, { x, y }, 'right', Math.PI / 2),
    ...turns(parts, camera),
  ];
}

const length = (
  name: string,
  from: Vec,
  to: Vec,
  side: NonNullable<Extract<Dimension, { kind: 'length' }>['side']>,
  along: number,
): Dimension => ({ kind: 'length', name, from, to, along, side });

/** Lean from plumb of the longest straight edge of each different part whose face shows true. */
function leans(parts: readonly PlacedPart[], camera: Camera): readonly Dimension[] {
  const seen = new Set<string>();
  return parts.flatMap((part): readonly Dimension[] => {
    if (seen.has(part.place) || Math.abs(dot3(part.frame.z, camera.z)) < Math.cos(TRUE_ANGLE)) return [];
    const edge = longestEdge(part, camera);
    if (edge === undefined) return [];
    const [low, high] = edge.from.y < edge.to.y ? [edge.from, edge.to] : [edge.to, edge.from];
    const lean = angleOf(subtract(high, low)) - Math.PI / 2;
    if (Math.abs(lean) < LEAN.least || Math.abs(lean) > LEAN.most) return [];
    seen.add(part.place);
    const [from, to] = lean > 0 ? [Math.PI / 2, Math.PI / 2 + lean] : [Math.PI / 2 + lean, Math.PI / 2];
    return [{ kind: 'angle', name: `${part.label} from plumb`, at: low, from, to }];
  });
}

/** Turn in plan of each different part that stands on edge: of its face from the table's length. */
function turns(parts: readonly PlacedPart[], camera: Camera): readonly Dimension[] {
  const seen = new Set<string>();
  return parts.flatMap((part): readonly Dimension[] => {
    if (seen.has(part.place) || Math.abs(dot3(part.frame.z, camera.z)) > 1e-4) return [];
    const points = part.face
      .flatMap(({ outer }) => outer.edges)
      .map(({ from }) => pointToFrame(camera, pointToWorld(part.frame, { ...from, z: 0 })))
      .toSorted((a, b) => a.x - b.x || a.y - b.y);
    const [first, last] = [points[0], points.at(-1)];
    if (first === undefined || last === undefined || distance(first, last) < 1) return [];
    const turn = angleOf(subtract({ x: last.x, y: last.y }, { x: first.x, y: first.y }));
    const fromAxis = Math.abs(turn) < Math.PI / 4 ? turn : turn - Math.sign(turn) * (Math.PI / 2);
    if (Math.abs(fromAxis) < LEAN.least) return [];
    seen.add(part.place);
    const axis = turn - fromAxis;
    const [from, to] = fromAxis > 0 ? [axis, turn] : [turn, axis];
    return [{ kind: 'angle', name: `${part.label} in plan`, at: { x: first.x, y: first.y }, from, to }];
  });
}

function longestEdge(part: PlacedPart, camera: Camera): { readonly from: Vec; readonly to: Vec } | undefined {
  const cuts = new Set(part.cuts.map(({ name }) => name));
  const lines = part.face
    .flatMap(({ outer }) => outer.edges)
    .filter((edge) => edge.kind === 'line' && !cuts.has(edge.tag.id))
    .map(({ from, to }) => ({ from: onPicture(part, from, camera), to: onPicture(part, to, camera) }));
  return lines.toSorted((a, b) => distance(b.from, b.to) - distance(a.from, a.to))[0];
}

function onPicture({ frame }: PlacedPart, p: Vec, camera: Camera): Vec {
  const { x, y } = pointToFrame(camera, pointToWorld(frame, { ...p, z: 0 }));
  return { x, y };
}

function cornersOf({ frame, face, back, drawn }: PlacedPart): readonly Vec3[] {
  return [
    { regions: face, z: 0 },
    { regions: back, z: -drawn.thickness },
  ].flatMap(({ regions, z }) =>
    regions.flatMap(({ outer }) => outer.edges.map(({ from }) => pointToWorld(frame, { ...from, z }))),
  );
}

function spreadOf(points: readonly Vec3[], camera: Camera) {
  if (points.length === 0) return undefined;
  const xs = points.map((p) => pointToFrame(camera, p).x);
  return { least: Math.min(...xs), most: Math.max(...xs) };
}
