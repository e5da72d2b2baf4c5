import type { Finding } from '../../core/index.ts';
import { distance3 } from '../../geometry/index.ts';
import type { JointSketch } from '../../sketch/index.ts';
import type { PlacedPart } from '../api.ts';
import type { Gap, PartFace } from '../contact/api.ts';
import { gapBetween, overlaps } from '../contact/gap-between.ts';
import { middleOf } from '../stand/stand-part.ts';
import type { Joint } from './api.ts';
import type { Shop } from './shop.ts';

/**
 * What is to be said of a joint that is not made everywhere. One of its two places must have all its copies joined (four legs may share
 * two rails); of the other way round, the copies that are not are told, with how far they miss the nearest.
 */
export function missedBy(
  sketch: JointSketch,
  pairs: readonly (readonly [PlacedPart, PlacedPart])[],
  made: readonly Joint[],
  shop: Shop,
  faces: (part: PlacedPart) => readonly PartFace[],
): readonly Finding[] {
  const joined = new Set(made.flatMap(({ sides }) => sides.map(({ part }) => part)));
  const left = ([0, 1] as const).map(
    (at) => new Set(pairs.map((pair) => pair[at]).filter(({ id }) => !joined.has(id))),
  );
  const [first, second] = left;
  if (first!.size === 0 || second!.size === 0) return [];
  const [at, lonely] = first!.size <= second!.size ? ([0, first!] as const) : ([1, second!] as const);
  return [...lonely].map((part) => {
    const near = pairs
      .filter((pair) => pair[at] === part)
      .toSorted((p, q) => betweenMiddles(p) - betweenMiddles(q))[0]!;
    return said(sketch, near, shop, faces);
  });
}

const betweenMiddles = ([a, b]: readonly [PlacedPart, PlacedPart]): number =>
  distance3(middleOf(a), middleOf(b));

function said(
  sketch: JointSketch,
  [a, b]: readonly [PlacedPart, PlacedPart],
  shop: Shop,
  faces: (part: PlacedPart) => readonly PartFace[],
): Finding {
  const gap = gapBetween(a, b, faces);
  const found = { severity: 'stop', part: a.drawn.name, edges: [] } as const;
  if (gap === undefined) {
    const message = `${sketch.label}: ${a.label} and ${b.label} have no flat faces that look at each other.`;
    const cure = 'Trim one of them by a plane of the other, so that 0 mm stay between them.';
    return { ...found, code: 'joint.no-contact', message, cure };
  }
  const edges = [gap.a, gap.b].filter((name) => name !== 'face' && name !== 'back');
  const face = faces(a).find(({ name }) => name === gap.a)!;
  const isOverlap = gap.apart < 0 && overlaps(a, b, face, gap.apart);
  return {
    ...found,
    edges,
    code: isOverlap ? 'joint.overlap' : 'joint.no-contact',
    message: `${sketch.label}: ${howFar(a, b, gap, isOverlap, shop)}`,
    measured: gap.turned > 0 ? { value: gap.turned, unit: 'rad' } : { value: gap.apart, unit: 'mm' },
    limit: { value: 0, unit: gap.turned > 0 ? 'rad' : 'mm' },
    cure: cureOf(sketch, a, b, gap, isOverlap, shop),
  };
}

function howFar(a: PlacedPart, b: PlacedPart, gap: Gap, isOverlap: boolean, { say }: Shop): string {
  const names = `${faceName(gap.a)} of ${a.label} and ${faceName(gap.b)} of ${b.label}`;
  if (isOverlap) return `${a.label} and ${b.label} run into each other by ${say(-gap.apart)} (${names}).`;
  if (!gap.opposite)
    return `${names} do not lie opposite each other; along them they are ${say(Math.abs(gap.apart))} apart.`;
  if (gap.turned > 0)
    return `${names} are turned from each other by ${degrees(gap.turned)}, ${say(Math.abs(gap.apart))} apart in the middle.`;
  return `${names} stand ${say(Math.abs(gap.apart))} apart.`;
}

function cureOf(
  { kind }: JointSketch,
  a: PlacedPart,
  b: PlacedPart,
  gap: Gap,
  isOverlap: boolean,
  { say }: Shop,
): string {
  if (kind === 'halved')
    return `To be halved they have to cross with their faces parallel (turned by ${degrees(0)}).`;
  const by = say(Math.abs(gap.apart));
  if (gap.turned > 0)
    return `Cut ${faceName(gap.a)} of ${a.label} to the plane of ${faceName(gap.b)} of ${b.label}: ${degrees(gap.turned)} more or less.`;
  return isOverlap
    ? `Make ${a.label} or ${b.label} ${by} shorter there, or trim it by the other.`
    : `Make ${a.label} or ${b.label} ${by} longer there, or move it by as much.`;
}

/** A face as makers read it. */
const faceName = (name: string): string =>
  name === 'face' ? 'the face side' : name === 'back' ? 'the back' : name.replaceAll('_', ' ');

const degrees = (angle: number): string => `${((angle * 180) / Math.PI).toFixed(2).replace(/\.?0+$/, '')}°`;
