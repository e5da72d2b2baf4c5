import { z } from 'zod';
import { byHead } from './by-head.ts';
import { expression, pointOrCoordinates, scalar } from './expression.ts';
import { nameText, oneOf, words } from './names.ts';

const length = expression('length');
const angle = expression('angle');
const number = expression('number');
const point = expression('point');
const when = expression('flag').optional();

const twoPoints = z.tuple([point, point], { error: 'two points in [ ]' });

/** A line without end: two points, a point and a direction, or a plane. */
const lineRef = z.union([expression('plane'), z.tuple([point, expression('point or angle')])], {
  error: 'a line: [point, point], [point, direction] or a plane',
});

/** `outline.edge`. */
const edgeRef = scalar('an edge, written outline.edge').transform((source, context) => {
  const match = /^([a-z][a-z0-9_]*)\.([a-z][a-z0-9_]*)$/.exec(source.text);
  if (match !== null) return { kind: 'edge' as const, outline: match[1]!, edge: match[2]!, source };
  context.addIssue('an edge, written outline.edge');
  return z.NEVER;
});

const share = number.optional();
const by = length.optional();

const pointMap = byHead('a point', {
  at: z.strictObject({ at: pointOrCoordinates }),
  from: z
    .strictObject({ from: point, over: by, up: by, by, toward: angle.optional() })
    .refine(
      (p) =>
        (p.by === undefined) === (p.toward === undefined) &&
        (p.by === undefined) !== (p.over === undefined && p.up === undefined),
      {
        error: 'from with over and up, or with by and toward',
      },
    ),
  between: z
    .strictObject({ between: twoPoints, share, by })
    .refine((p) => (p.share === undefined) !== (p.by === undefined), {
      error: 'between with share or with by',
    }),
  cross: z.strictObject({ cross: z.tuple([lineRef, lineRef], { error: 'two lines in [ ]' }) }),
  along: z
    .strictObject({ along: edgeRef, by, back: by, share })
    .refine((p) => [p.by, p.back, p.share].filter((each) => each !== undefined).length === 1, {
      error: 'along with one of by, back and share',
    }),
  mirror: z.strictObject({ mirror: point, over: lineRef }),
  turn: z.strictObject({ turn: point, about: point, by: angle }),
  drop: z.strictObject({ drop: point, onto: lineRef }),
});

export const pointSpec = z.union([pointOrCoordinates, pointMap]);
export const planeSpec = z.strictObject({ through: point, facing: angle });

const role = oneOf('routed', 'sawn', 'joint', 'left');
const edgeCommon = { to: point, corner: nameText.optional(), role, when };
const bows = oneOf('left', 'right');
const yes = oneOf('yes');

const edgeSpec = byHead('an edge', {
  line: z.strictObject({ line: nameText, ...edgeCommon }),
  arc: z
    .strictObject({
      arc: nameText,
      ...edgeCommon,
      radius: by,
      rise: by,
      through: point.optional(),
      smooth: yes.optional(),
      bows: bows.optional(),
      long: oneOf('yes', 'no').optional(),
    })
    .refine(
      (arc) =>
        [arc.radius, arc.rise, arc.through, arc.smooth].filter((each) => each !== undefined).length === 1,
      {
        error: 'an arc with one of radius, rise, through and smooth',
      },
    )
    .refine((arc) => (arc.radius === undefined && arc.rise === undefined) === (arc.bows === undefined), {
      error: 'bows: left or right, with radius or rise and with nothing else',
    })
    .refine((arc) => arc.long === undefined || arc.radius !== undefined, { error: 'long only with radius' }),
  batten: z.strictObject({
    batten: nameText,
    ...edgeCommon,
    through: z.array(point, { error: 'points in [ ]' }).optional(),
    leaving: angleOrSmooth(),
    arriving: angle.optional(),
  }),
});

function angleOrSmooth() {
  const smooth = scalar('smooth').refine((source) => source.text === 'smooth');
  return z.union([smooth.transform(() => 'smooth' as const), angle]).optional();
}

const cornerSpec = byHead('a corner', {
  round: z.strictObject({ round: length, role: role.optional(), when }),
  chamfer: z.strictObject({ chamfer: length, leaving: by, role: role.optional(), when }),
});

export const outlineSpec = z.strictObject({
  start: point,
  corner: nameText.optional(),
  edges: z.array(edgeSpec, { error: 'a list of edges' }),
  corners: z.record(z.string(), cornerSpec, { error: 'a map of corners' }).optional(),
  mirror: z.strictObject({ over: lineRef, suffix: nameText }).optional(),
});

const openingCommon = { label: words, plunge: point.optional(), when };

export const openingSpec = byHead('an opening', {
  outline: z.strictObject({ ...openingCommon, outline: nameText, plunge: point }),
  circle: z.strictObject({
    ...openingCommon,
    role: role.optional(),
    circle: z
      .strictObject({ centre: point, diameter: by, radius: by })
      .refine((circle) => (circle.diameter === undefined) !== (circle.radius === undefined), {
        error: 'a centre with a diameter or a radius',
      }),
  }),
  slot: z.strictObject({
    ...openingCommon,
    role: role.optional(),
    slot: z.strictObject({ from: point, to: point, width: length }),
  }),
});

const dimensionSpec = byHead('a dimension', {
  between: z.strictObject({ label: words, between: twoPoints, along: angle.optional(), when }),
  angle: z.strictObject({
    label: words,
    angle: z.tuple([point, point, point], { error: 'three points in [ ]' }),
    when,
  }),
  radius: z.strictObject({ label: words, radius: scalar('the identity of an edge'), when }),
});

export const partSpec = z.strictObject({
  label: words,
  outline: nameText,
  openings: z.array(nameText, { error: 'a list of openings' }).optional(),
  thickness: length,
  grain: angle,
  up: angle,
  quantity: z.strictObject({ left: number, right: number }),
  centre_line: twoPoints,
  joints: z.record(z.string(), z.strictObject({ label: words, from: point, to: point, when })).optional(),
  dimensions: z.record(z.string(), dimensionSpec).optional(),
  when,
});

export const checkSpec = z.strictObject({ needs: expression('flag'), say: words, when });

export type LineRef = z.output<typeof lineRef>;
export type EdgeRef = z.output<typeof edgeRef>;
export type PointSpec = z.output<typeof pointSpec>;
export type EdgeSpec = z.output<typeof edgeSpec>;
export type CornerSpec = z.output<typeof cornerSpec>;
export type OutlineSpec = z.output<typeof outlineSpec>;
export type OpeningSpec = z.output<typeof openingSpec>;
export type DimensionSpec = z.output<typeof dimensionSpec>;
export type PartSpec = z.output<typeof partSpec>;
