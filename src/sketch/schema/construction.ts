import { z } from 'zod';
import { isScalar } from '../source/place.ts';
import { byHead } from './by-head.ts';
import { expression, pointOrCoordinates, scalar } from './expression.ts';
import { nameText, oneOf, words } from './names.ts';
import { pick } from './pick.ts';
import { mapOf, namesOf } from './shapes.ts';

const length = expression('length');
const angle = expression('angle');
const number = expression('number');
const point = expression('point');
const when = expression('flag').optional();

const twoPoints = z.tuple([point, point], { error: 'two points in [ ]' });

/** A line without end: two points, a point and a direction, or a plane. */
const lineRef = pick(
  [
    expression('plane'),
    z.tuple([point, expression('point or angle')], {
      error: 'a line: [point, point], [point, direction] or a plane',
    }),
  ],
  (input) => (isScalar(input) ? 0 : 1),
);

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
  at: mapOf({ at: pointOrCoordinates }),
  from: mapOf({ from: point, over: by, up: by, by, toward: angle.optional() }).refine(
    (p) =>
      (p.by === undefined) === (p.toward === undefined) &&
      (p.by === undefined) !== (p.over === undefined && p.up === undefined),
    {
      error: 'from with over and up, or with by and toward',
    },
  ),
  between: mapOf({ between: twoPoints, share, by }).refine(
    (p) => (p.share === undefined) !== (p.by === undefined),
    {
      error: 'between with share or with by',
    },
  ),
  cross: mapOf({ cross: z.tuple([lineRef, lineRef], { error: 'two lines in [ ]' }) }),
  along: mapOf({ along: edgeRef, by, back: by, share }).refine(
    (p) => [p.by, p.back, p.share].filter((each) => each !== undefined).length === 1,
    {
      error: 'along with one of by, back and share',
    },
  ),
  mirror: mapOf({ mirror: point, over: lineRef }),
  turn: mapOf({ turn: point, about: point, by: angle }),
  drop: mapOf({ drop: point, onto: lineRef }),
});

export const pointSpec = pick([pointOrCoordinates, pointMap], (input) => (isScalar(input) ? 0 : 1));
export const planeSpec = mapOf({ through: point, facing: angle });

const role = oneOf('routed', 'sawn', 'joint', 'left');
const edgeCommon = { to: point, corner: nameText.optional(), role, when };
const bows = oneOf('left', 'right');
const yes = oneOf('yes');

const edgeSpec = byHead('an edge', {
  line: mapOf({ line: nameText, ...edgeCommon }),
  arc: mapOf({
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
  batten: mapOf({
    batten: nameText,
    ...edgeCommon,
    through: z.array(point, { error: 'points in [ ]' }).optional(),
    leaving: pick([oneOf('smooth'), angle], (input) =>
      isScalar(input) && input.text === 'smooth' ? 0 : 1,
    ).optional(),
    arriving: angle.optional(),
  }),
});

const cornerSpec = byHead('a corner', {
  round: mapOf({ round: length, role: role.optional(), when }),
  chamfer: mapOf({ chamfer: length, leaving: by, role: role.optional(), when }),
});

export const outlineSpec = mapOf({
  start: point,
  corner: nameText.optional(),
  edges: z.array(edgeSpec, { error: 'a list of edges' }),
  corners: namesOf(cornerSpec, 'a map of corners').optional(),
  mirror: mapOf({ over: lineRef, suffix: nameText }).optional(),
});

const openingCommon = { label: words, plunge: point.optional(), when };

export const openingSpec = byHead('an opening', {
  outline: mapOf({ ...openingCommon, outline: nameText, plunge: point }),
  circle: mapOf({
    ...openingCommon,
    role: role.optional(),
    circle: mapOf({ centre: point, diameter: by, radius: by }).refine(
      (circle) => (circle.diameter === undefined) !== (circle.radius === undefined),
      {
        error: 'a centre with a diameter or a radius',
      },
    ),
  }),
  slot: mapOf({
    ...openingCommon,
    role: role.optional(),
    slot: mapOf({ from: point, to: point, width: length }),
  }),
});

const dimensionSpec = byHead('a dimension', {
  between: mapOf({ label: words, between: twoPoints, along: angle.optional(), when }),
  angle: mapOf({
    label: words,
    angle: z.tuple([point, point, point], { error: 'three points in [ ]' }),
    when,
  }),
  radius: mapOf({ label: words, radius: scalar('the identity of an edge'), when }),
});

export const partSpec = mapOf({
  label: words,
  outline: nameText,
  openings: z.array(nameText, { error: 'a list of openings' }).optional(),
  thickness: length,
  grain: angle,
  up: angle,
  /** May be left out of a part that the base places: its copies are counted. */
  quantity: mapOf({ left: number, right: number }).optional(),
  centre_line: twoPoints,
  pieces: namesOf(
    mapOf({ label: words, left_of: twoPoints, grain: angle, when }),
    'a map of pieces',
  ).optional(),
  joints: namesOf(mapOf({ label: words, from: point, to: point, when }), 'a map of joints').optional(),
  dimensions: namesOf(dimensionSpec, 'a map of dimensions').optional(),
  when,
});

export const checkSpec = mapOf({ needs: expression('flag'), say: words, when });

export type LineRef = z.output<typeof lineRef>;
export type PointSpec = z.output<typeof pointSpec>;
export type EdgeSpec = z.output<typeof edgeSpec>;
export type CornerSpec = z.output<typeof cornerSpec>;
export type OutlineSpec = z.output<typeof outlineSpec>;
export type OpeningSpec = z.output<typeof openingSpec>;
export type DimensionSpec = z.output<typeof dimensionSpec>;
export type PartSpec = z.output<typeof partSpec>;
