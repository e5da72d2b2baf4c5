import { keptFor } from '../../core/index.ts';
import type { Vec3 } from '../../geometry/index.ts';
import type { PlacedPart } from '../api.ts';
import type { Joint } from '../joints/api.ts';
import { cornersInWorld } from '../whole/corners-in-world.ts';
import type { GlueStep } from './api.ts';
import { clampsOf } from './clamps-of.ts';

/** Pieces whose reach differs by less, mm, are as handy to glue. */
const SAME_REACH = 1;

/**
 * The order in which a base is glued: small groups first (a leg pair, a frame), then those joined, as many joints at a time as
 * must close together. Of the joints left that kind comes next whose gluing makes the smallest pieces (ends before the long rails that hold
 * them apart); a joint whose two parts would
 * then be in one piece is glued in the same step, for it could not be closed later.
 */
export function glueSteps(parts: readonly PlacedPart[], joints: readonly Joint[]): readonly GlueStep[] {
  const glued = joints.filter(({ kind }) => kind !== 'screwed');
  const groups = new Map(parts.map(({ id }) => [id, id]));
  const rootOf = (id: string): string => {
    const up = groups.get(id)!;
    return up === id ? id : rootOf(up);
  };
  const steps: GlueStep[] = [];
  let left = glued;
  while (left.length > 0) {
    const name = nextName(left, parts, rootOf);
    for (const joint of left) if (joint.name === name) unite(joint, groups, rootOf);
    const now = left.filter(({ sides: [a, b] }) => rootOf(a.part) === rootOf(b.part));
    const roots = [...new Set(now.map(({ sides: [a] }) => rootOf(a.part)))];
    steps.push({
      joints: now.map(({ id }) => id),
      names: [...new Set(now.map((joint) => joint.name))],
      groups: roots.map((root) => {
        const members = parts.filter(({ id }) => rootOf(id) === root);
        const own = now.filter(({ sides: [a] }) => rootOf(a.part) === root);
        return { parts: members.map(({ id }) => id), clamps: clampsOf(members, own) };
      }),
    });
    left = left.filter((joint) => !now.includes(joint));
  }
  return steps;
}

function unite({ sides: [a, b] }: Joint, groups: Map<string, string>, rootOf: (id: string) => string): void {
  groups.set(rootOf(a.part), rootOf(b.part));
}

/** The name of the joints whose gluing makes the smallest pieces, by count and then by reach; the first of the form among equals. */
function nextName(
  left: readonly Joint[],
  parts: readonly PlacedPart[],
  rootOf: (id: string) => string,
): string {
  const names = [...new Set(left.map(({ name }) => name))];
  const sized = names.map((name) => ({
    name,
    ...largestPiece(
      left.filter((joint) => joint.name === name),
      parts,
      rootOf,
    ),
  }));
  const least = sized.reduce((best, each) => {
    if (each.count !== best.count) return each.count < best.count ? each : best;
    return each.reach < best.reach - SAME_REACH ? each : best;
  });
  return least.name;
}

/** The largest piece that gluing these joints would make: of how many parts, and how far it reaches, mm. */
function largestPiece(
  joints: readonly Joint[],
  parts: readonly PlacedPart[],
  rootOf: (id: string) => string,
): { readonly count: number; readonly reach: number } {
  const groups = new Map<string, string>(parts.map(({ id }) => [rootOf(id), rootOf(id)]));
  const root = (id: string): string => {
    const up = groups.get(id)!;
    return up === id ? id : root(up);
  };
  for (const {
    sides: [a, b],
  } of joints)
    groups.set(root(rootOf(a.part)), root(rootOf(b.part)));
  const pieces = [...new Set(joints.map(({ sides: [a] }) => root(rootOf(a.part))))].map((each) =>
    parts.filter(({ id }) => root(rootOf(id)) === each),
  );
  return {
    count: Math.max(...pieces.map((piece) => piece.length)),
    reach: Math.max(...pieces.map(reachOf)),
  };
}

/** The longest side of the box round a piece, mm. */
function reachOf(piece: readonly PlacedPart[]): number {
  const boxes = piece.map(boxOf);
  return Math.max(
    ...AXES.map(
      (axis) =>
        Math.max(...boxes.map(({ max }) => max[axis])) - Math.min(...boxes.map(({ min }) => min[axis])),
    ),
  );
}

const AXES = ['x', 'y', 'z'] as const;

const boxOf = keptFor((part: PlacedPart): { readonly min: Vec3; readonly max: Vec3 } => {
  const corners = cornersInWorld(part);
  const along = (pick: (...of: readonly number[]) => number): Vec3 => ({
    x: pick(...corners.map(({ x }) => x)),
    y: pick(...corners.map(({ y }) => y)),
    z: pick(...corners.map(({ z }) => z)),
  });
  return { min: along(Math.min), max: along(Math.max) };
});
