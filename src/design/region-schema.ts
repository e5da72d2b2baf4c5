import { z } from 'zod';
import type { Edge, Outline, Region, Vec } from '../geometry/index.ts';
import { nameText, strictObject } from './strict-schema.ts';

/** Decimals of a written coordinate, mm: a millionth of what paper shows, and free of the last bit of trigonometry. */
const DECIMALS = 9;

export const pointSchema = z
  .tuple([z.number(), z.number()], { error: 'a point [x, y]' })
  .meta({ id: 'point', description: 'x and y in mm' });

const tagShape = {
  id: nameText.describe('Identity of the edge of the form that this edge comes from'),
  role: z.enum(['routed', 'sawn', 'joint', 'left']),
};

export const edgeSchema = z
  .discriminatedUnion(
    'kind',
    [
      strictObject({ kind: z.literal('line'), ...tagShape, from: pointSchema, to: pointSchema }),
      strictObject({
        kind: z.literal('arc'),
        ...tagShape,
        from: pointSchema,
        to: pointSchema,
        centre: pointSchema,
        radius: z.number().positive().describe('mm'),
        turn: z.union([z.literal(1), z.literal(-1)]).describe('1 anticlockwise, -1 clockwise'),
      }),
    ],
    { error: 'an edge of kind "line" or "arc"' },
  )
  .meta({ id: 'edge', description: 'A line, or part of a circle; y up' });

const loopSchema = z.array(edgeSchema).min(1);

export const regionSchema = strictObject({ outer: loopSchema, holes: z.array(loopSchema) }).meta({
  id: 'region',
  description: 'An outer outline, anticlockwise, with its holes, clockwise; y up',
});

export type WrittenEdge = z.output<typeof edgeSchema>;
export type WrittenPoint = z.output<typeof pointSchema>;
export type WrittenRegion = z.output<typeof regionSchema>;

export function roundNumber(value: number): number {
  // Adding 0 turns −0 into 0.
  return Number(value.toFixed(DECIMALS)) + 0;
}

export function writePoint({ x, y }: Vec): WrittenPoint {
  return [roundNumber(x), roundNumber(y)];
}

export function writeEdge(edge: Edge): WrittenEdge {
  const { id, role } = edge.tag;
  const ends = { from: writePoint(edge.from), to: writePoint(edge.to) };
  if (edge.kind === 'line') return { kind: 'line', id, role, ...ends };
  const { centre, radius, turn } = edge;
  return { kind: 'arc', id, role, ...ends, centre: writePoint(centre), radius: roundNumber(radius), turn };
}

export function writeRegion({ outer, holes }: Region): WrittenRegion {
  return { outer: outer.edges.map(writeEdge), holes: holes.map((hole) => hole.edges.map(writeEdge)) };
}

export function readRegion({ outer, holes }: WrittenRegion): Region {
  return { outer: readLoop(outer), holes: holes.map(readLoop) };
}

function readLoop(edges: readonly WrittenEdge[]): Outline {
  return { edges: edges.map(readEdge) };
}

function readEdge(written: WrittenEdge): Edge {
  const ends = {
    from: readPoint(written.from),
    to: readPoint(written.to),
    tag: { id: written.id, role: written.role },
  };
  if (written.kind === 'line') return { kind: 'line', ...ends };
  return {
    kind: 'arc',
    ...ends,
    centre: readPoint(written.centre),
    radius: written.radius,
    turn: written.turn,
  };
}

function readPoint([x, y]: WrittenPoint): Vec {
  return { x, y };
}
