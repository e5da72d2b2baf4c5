import {
  dot3,
  heightOver,
  intersectEdges,
  line,
  POSITION_TOLERANCE,
  type Vec,
  type Vec3,
} from '../../geometry/index.ts';
import type { SolidPart } from '../contact/api.ts';
import { pointsOfBore } from './points-of-bore.ts';
import type { BoreShape } from './wall-of-bore.ts';

/** How far wood reaches from a bore's mouth along its drilled line, and the face at which it ends. */
export interface WoodBehind {
  /** mm, the least over the mouth. */
  readonly reach: number;
  readonly to: string;
}

const RAY = { id: 'drilled', role: 'left' } as const;

/** How far a bore of this mouth could be drilled before it comes out, whatever its depth. */
export function woodBehind(part: SolidPart, bore: Omit<BoreShape, 'depth'>): WoodBehind {
  const { mouth } = pointsOfBore({ ...bore, depth: 0 });
  return mouth
    .flatMap((p) => exitsFrom(part, p, bore.own.z, bore.mouthOn))
    .reduce((least, each) => (each.reach < least.reach ? each : least), { reach: Infinity, to: '' });
}

/** Where a line leaves the part. */
export function exitsFrom(
  { drawn, cuts }: SolidPart,
  p: Vec3,
  along: Vec3,
  mouthOn: readonly string[],
): readonly WoodBehind[] {
  const planes = [
    { name: 'face', plane: { normal: { x: 0, y: 0, z: 1 }, offset: 0 } },
    { name: 'back', plane: { normal: { x: 0, y: 0, z: -1 }, offset: drawn.thickness } },
    ...cuts,
  ].filter(({ name }) => !mouthOn.includes(name));
  const flat = planes.flatMap(({ name, plane }): WoodBehind[] => {
    const speed = dot3(plane.normal, along);
    return speed > 1e-9 ? [{ reach: Math.max(0, -heightOver(plane, p) / speed), to: name }] : [];
  });
  return [...flat, ...exitsByEdges({ drawn }, p, along, mouthOn)];
}

function exitsByEdges(
  { drawn: { region } }: Pick<SolidPart, 'drawn'>,
  p: Vec3,
  along: Vec3,
  mouthOn: readonly string[],
): readonly WoodBehind[] {
  const flat = Math.hypot(along.x, along.y);
  if (flat < 1e-9) return [];
  const edges = [region.outer, ...region.holes].flatMap((loop) => loop.edges);
  const farthest = Math.max(...edges.map(({ from }) => Math.hypot(from.x - p.x, from.y - p.y)));
  const long = 2 * farthest + 1;
  const end: Vec = { x: p.x + (along.x / flat) * long, y: p.y + (along.y / flat) * long };
  const ray = line({ x: p.x, y: p.y }, end, RAY);
  return edges
    .filter(({ tag }) => !mouthOn.includes(tag.id))
    .flatMap((edge) => {
      const met = intersectEdges(ray, edge);
      const points = met.kind === 'none' ? [] : met.kind === 'tangent' ? [] : met.points;
      return points
        .map(({ onA }) => onA * long)
        .filter((reach) => reach > POSITION_TOLERANCE)
        .map((reach) => ({ reach: reach / flat, to: edge.tag.id }));
    });
}
