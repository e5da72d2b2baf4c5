import { meshesOf, type PartMesh, type SolidKernel } from '../solids/index.ts';
import type { BuiltBase } from './build-base.ts';
import { pocketsOf } from './pockets-of.ts';

/** Every part of a base where it stands, with the pockets of its joints, as triangles to be shown. */
export function meshesOfBase(
  kernel: SolidKernel,
  { base, joints }: Pick<BuiltBase, 'base' | 'joints'>,
): readonly PartMesh[] {
  return meshesOf(kernel, base.parts, (part) => pocketsOf(joints.joints, part));
}
