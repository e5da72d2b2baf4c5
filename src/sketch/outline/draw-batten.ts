import { directionAt, type Edge, fairBatten, type Vec } from '../../geometry/index.ts';
import { headingOf } from '../evaluate/heading.ts';
import type { EdgeSpec } from '../schema/construction.ts';
import type { Stroke } from './stroke.ts';

type BattenSpec = Extract<EdgeSpec, { batten: unknown }>;

/** A batten curve as tangent-continuous arcs; nothing when no batten could be bent so. */
export function drawBatten(spec: BattenSpec, stroke: Stroke): readonly Edge[] | undefined {
  const { from, to, tag, desk } = stroke;
  const through = desk.points(spec.through ?? []) as readonly Vec[] | undefined;
  const leaving = leavingOf(spec, stroke);
  const arriving = spec.arriving === undefined ? 'free' : desk.figure(spec.arriving);
  if (through === undefined || leaving === undefined || arriving === undefined) return undefined;
  const directions = {
    ...(leaving === 'free' ? {} : { leaving }),
    ...(arriving === 'free' ? {} : { arriving: headingOf(arriving) }),
  };
  const batten = fairBatten([from, ...through, to], directions, tag);
  if (batten.ok) return batten.edges;
  const names = ['its start', ...(spec.through ?? []).map((nail) => nail.source.text), spec.to.source.text];
  const { place } = spec.batten;
  switch (batten.reason) {
    case 'too-few-nails':
    case 'coincident-nails': {
      const [a, b] = [names[batten.nail], names[batten.nail + 1]];
      const message = `${tag.id} cannot run through ${a} and ${b}: they are the same place`;
      return desk.refuse(place, 'form.batten', message, 'points apart from each other');
    }
    case 'reversal': {
      const message = `${tag.id} would have to turn back on itself at ${names[batten.nail]}`;
      return desk.refuse(
        place,
        'form.batten',
        message,
        'points that follow each other, or gentler end directions',
      );
    }
    default:
      return batten.reason satisfies never;
  }
}

function leavingOf(spec: BattenSpec, { before, tag, desk }: Stroke): Vec | 'free' | undefined {
  if (spec.leaving === undefined) return 'free';
  if (spec.leaving !== 'smooth') {
    const angle = desk.figure(spec.leaving);
    return angle === undefined ? undefined : headingOf(angle);
  }
  if (before !== undefined) return directionAt(before.pieces.at(-1)!, 1);
  const message = `${tag.id} is the first edge drawn: there is none before it to follow smoothly`;
  return desk.refuse(spec.batten.place, 'form.smooth', message, 'an edge before it');
}
