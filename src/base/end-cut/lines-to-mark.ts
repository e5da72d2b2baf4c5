import type { Vec3 } from '../../geometry/index.ts';
import type { MarkedLine } from './api.ts';
import { STRIKE } from './facts.ts';

/**
 * Line of a cut on the face (and on the back): the trace of the plane with normal m (frame of the fence line) on z = constant,
 * over a part this wide (mm). Its angle from a square line is the mitre.
 */
export function lineOnFace(m: Vec3, width: number): MarkedLine {
  return marked(Math.atan2(m.x * signOf(m), m.y * signOf(m)), width);
}

/**
 * Line of a cut on the edges: the trace on x = constant over a part this thick (mm). Its angle ε is not the bevel where there
 * is a mitre: tan ε = tan bevel / cos mitre.
 */
export function lineOnEdge(m: Vec3, thickness: number): MarkedLine {
  return marked(Math.atan2(m.z * signOf(m), m.y * signOf(m)), thickness);
}

function marked(signed: number, across: number): MarkedLine {
  const angle = signed === 0 ? 0 : signed;
  const slope = Math.tan(Math.abs(angle));
  return {
    angle,
    set: Math.PI / 2 - Math.abs(angle),
    drop: across * slope,
    over100: STRIKE.metric * slope,
    over4in: STRIKE.inch * slope,
  };
}

function signOf(m: Vec3): number {
  return m.y < 0 ? -1 : 1;
}
