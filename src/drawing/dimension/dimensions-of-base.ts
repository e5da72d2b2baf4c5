import type { StandingBase } from '../../base/index.ts';
import { pointToFrame, type Vec, type Vec3 } from '../../geometry/index.ts';
import type { Camera, View } from '../view/api.ts';
import { CAMERAS } from '../view/cameras.ts';
import { leansOfBase, turnsOfBase } from './angles-of-base.ts';
import type { Dimension } from './api.ts';
import { cornersInWorld } from './corners-in-world.ts';
import { railDimensions, spacingDimensions } from './level-parts.ts';

export type BaseSide = 'front' | 'left' | 'right' | 'plan';

/** A foot's corners lie no higher over the lowest than this, mm. */
const AT_FLOOR = 0.05;

/**
 * What a view of the base is dimensioned by: heights, of rails and ties as well, the top and how far it reaches over, the spread of the feet,
 * how far apart parts stand that come in rows, and the lean of legs.
 */
export function dimensionsOfBase(base: StandingBase, side: BaseSide, view: View): readonly Dimension[] {
  const camera = CAMERAS[side];
  if (side === 'plan') return planDimensions(base, camera);
  const { top, levellers } = base;
  const half = (side === 'front' ? top.length : top.width) / 2;
  const upper = top.level + top.thickness;
  const feet = spreadOf(
    base.parts.flatMap(cornersInWorld).filter(({ z }) => z < levellers + AT_FLOOR),
    camera,
  );
  const carriers = spreadOf(
    base.parts.flatMap(cornersInWorld).filter(({ z }) => Math.abs(z - top.level) < AT_FLOOR),
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
  return [...found, ...railDimensions(base, camera), ...leansOfBase(base.parts, camera)];
}

function planDimensions({ top, parts }: StandingBase, camera: Camera): readonly Dimension[] {
  const [x, y] = [top.length / 2, top.width / 2];
  return [
    length('length of the top', { x: -x, y }, { x, y }, 'above', 0),
    length('width of the top', { x, y: -y }, { x, y }, 'right', Math.PI / 2),
    ...spacingDimensions(parts, camera),
    ...turnsOfBase(parts, camera),
  ];
}

const length = (
  name: string,
  from: Vec,
  to: Vec,
  side: NonNullable<Extract<Dimension, { kind: 'length' }>['side']>,
  along: number,
): Dimension => ({ kind: 'length', name, from, to, along, side });

function spreadOf(points: readonly Vec3[], camera: Camera) {
  if (points.length === 0) return undefined;
  const xs = points.map((p) => pointToFrame(camera, p).x);
  return { least: Math.min(...xs), most: Math.max(...xs) };
}
