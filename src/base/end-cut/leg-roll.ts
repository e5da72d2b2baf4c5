import { cross3, dot3, unit3, type Vec3, vec3 } from '../../geometry/index.ts';
import { leanOf } from './lean.ts';

/**
 * A leaning leg's own frame, in the world: X along the table, Y along its depth, Z up. The leg's y runs up its length, z out
 * of its face side.
 */
export interface LegFrame {
  readonly x: Vec3;
  readonly y: Vec3;
  readonly z: Vec3;
  /** Normal of a level cut at the head, in the leg's frame; at the foot it is the opposite. */
  readonly level: Vec3;
  /** How far the leg's edges lean from square to its face (rad), as a blank's skew. */
  readonly skew: number;
}

/** Section of a leg both of whose faces follow rails that lean. rad. */
export interface LegSection {
  /** asin(sin rake · sin splay). */
  readonly offSquare: number;
  /** Angle inside the wood at the corners that point the way the leg leans, and away from it. */
  readonly alongLean: number;
  /** Angle inside the wood at the other two corners. */
  readonly acrossLean: number;
}

/**
 * Section, square to its length, of a leg whose faces lie in the planes of rails that lean by rake and splay: not square, by
 * asin(sin rake · sin splay), 1.73° at 10°/10°. Elementary: the dihedral of the two planes, whose common line is the leg.
 */
export function sectionOfLeg(rake: number, splay: number): LegSection {
  const offSquare = Math.asin(Math.sin(rake) * Math.sin(splay));
  return { offSquare, alongLean: Math.PI / 2 + offSquare, acrossLean: Math.PI / 2 - offSquare };
}

/**
 * A leg rolled so that its faces follow the rails: its face side leans by the rake alone, its left edge by the splay alone. Its
 * foot stands towards +Y (rake) and +X (splay) of its head, and face side and left edge look there. On the face a level
 * cut runs at atan(tan splay · cos rake), and its bevel is the rake.
 */
export function rollToRails(rake: number, splay: number): LegFrame {
  const y = axisOf(rake, splay);
  const z = vec3(0, Math.cos(rake), Math.sin(rake));
  return framed(y, z, -sectionOfLeg(rake, splay).offSquare);
}

/**
 * A leg of square section rolled about its length until its line of lean lies square to its face side: level cuts then have
 * a bevel, the lean, and no mitre.
 */
export function rollToLean(rake: number, splay: number): LegFrame {
  const { lean, line } = leanOf(rake, splay);
  const z = vec3(Math.sin(line) * Math.cos(lean), Math.cos(line) * Math.cos(lean), Math.sin(lean));
  return framed(axisOf(rake, splay), z, 0);
}

function axisOf(rake: number, splay: number): Vec3 {
  return unit3(vec3(-Math.tan(splay), -Math.tan(rake), 1));
}

function framed(y: Vec3, z: Vec3, skew: number): LegFrame {
  const x = cross3(y, z);
  const up = vec3(0, 0, 1);
  return { x, y, z, level: vec3(dot3(x, up), dot3(y, up), dot3(z, up)), skew: skew === 0 ? 0 : skew };
}
