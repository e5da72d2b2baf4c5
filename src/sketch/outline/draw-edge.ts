import { distance, type Edge, line, POSITION_TOLERANCE } from '../../geometry/index.ts';
import type { Desk } from '../evaluate/desk.ts';
import { showPoint } from '../evaluate/show.ts';
import { cornerName, edgeName } from '../form/outline-names.ts';
import type { EdgeSpec } from '../schema/construction.ts';
import { drawArc } from './draw-arc.ts';
import { drawBatten } from './draw-batten.ts';
import type { DrawnEdge } from './drawn-edge.ts';
import type { Start, Stroke } from './stroke.ts';

/** An edge whose condition holds; nothing when it is impossible, the desk then saying what would be possible. */
export function drawEdge(spec: EdgeSpec, start: Start, desk: Desk): DrawnEdge | undefined {
  const to = desk.point(spec.to);
  if (to === undefined) return undefined;
  const { text: name, place } = edgeName(spec);
  const stroke: Stroke = { ...start, to, tag: { id: name, role: spec.role }, desk };
  const isBatten = 'batten' in spec && (spec.through?.length ?? 0) > 1;
  if (distance(start.from, to) <= POSITION_TOLERANCE && !isBatten) {
    const where = showPoint(to, desk.sheet.style);
    const message = `${name} has no length: it starts and ends at ${where}`;
    return desk.refuse(place, 'form.no-length', message, 'two places apart, or a condition on the edge');
  }
  const pieces = drawPieces(spec, stroke);
  if (pieces === undefined) return undefined;
  return { name, role: spec.role, from: start.from, to, pieces, corner: cornerName(spec) ?? name, place };
}

function drawPieces(spec: EdgeSpec, stroke: Stroke): readonly Edge[] | undefined {
  if ('arc' in spec) {
    const arc = drawArc(spec, stroke);
    return arc && [arc];
  }
  return 'batten' in spec ? drawBatten(spec, stroke) : [line(stroke.from, stroke.to, stroke.tag)];
}
