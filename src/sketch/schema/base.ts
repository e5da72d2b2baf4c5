import { z } from 'zod';
import { isScalar } from '../source/place.ts';
import { byHead } from './by-head.ts';
import { complain } from './complaint.ts';
import { expression, pointOrCoordinates, scalar } from './expression.ts';
import { nameText, oneOf, words } from './names.ts';
import { pick } from './pick.ts';
import { mapOf, namesOf } from './shapes.ts';

const length = expression('length');
const when = expression('flag').optional();

/** A place in space: along the length, along the depth, up. */
export const spaceSpec = z.tuple([length, length, length], {
  error: 'a place in space: three lengths in [ ]',
});
const way = expression('number or length');
/** A direction in space, of any length. */
export const directionSpec = z
  .tuple([way, way, way], { error: 'a direction in space: three figures in [ ]' })
  .transform((ways) => ({ kind: 'direction' as const, ways }));

/** `leg.inner`, or `leg.window.side` for an edge of an opening. */
const faceRef = scalar('a face, written place.face').transform((source, context) => {
  const match = /^([a-z][a-z0-9_]*)\.([a-z][a-z0-9_]*(?:\.[a-z][a-z0-9_]*)?)$/.exec(source.text);
  if (match !== null) return { kind: 'face' as const, place: match[1]!, face: match[2]!, source };
  const found = source.text.slice(0, 40);
  const expected = 'place.face, place.back or place.edge';
  const message = `"${found}" names no face of a placed part: write ${expected}`;
  context.issues.push(complain(source, { code: 'form.face', message, found, expected, place: source.place }));
  return z.NEVER;
});

const across = oneOf('left-right', 'front-back');
const mirrored = pick(
  [across.transform((one) => [one]), z.array(across, { error: 'left-right, front-back, or both in [ ]' })],
  (input) => (isScalar(input) ? 0 : 1),
);

const basePlaneSpec = byHead('a plane in space', {
  through: mapOf({ through: spaceSpec, facing: directionSpec, when }),
  face: mapOf({ face: faceRef, mirrored: mirrored.optional(), out: length.optional(), when }),
  between: mapOf({
    between: z.tuple([nameText, nameText], { error: 'two planes in [ ]' }),
    facing: directionSpec,
    when,
  }),
});

const trimSpec = pick(
  [
    nameText.transform((plane) => ({ inside: plane, when: undefined })),
    byHead('a trim', {
      inside: mapOf({ inside: nameText, when }),
      against: mapOf({ against: nameText, when }),
    }),
  ],
  (input) => (isScalar(input) ? 0 : 1),
);

const copySpec = byHead('a copy', {
  mirror: mapOf({ mirror: across, when }),
  repeat: mapOf({ repeat: expression('number'), step: spaceSpec, when }),
  turn: mapOf({ turn: expression('number'), when }),
});

const placeSpec = mapOf({
  label: words,
  part: nameText,
  pin: pointOrCoordinates,
  deep: pick([oneOf('half'), length], (input) =>
    isScalar(input) && input.text === 'half' ? 0 : 1,
  ).optional(),
  at: spaceSpec,
  along: directionSpec.optional(),
  face: directionSpec.optional(),
  turns: z
    .array(mapOf({ about: oneOf('up', 'left-right', 'front-back'), by: expression('angle'), when }), {
      error: 'a list of turns',
    })
    .optional(),
  trims: z.array(trimSpec, { error: 'a list of trims' }).optional(),
  copies: z.array(copySpec, { error: 'a list of copies' }).optional(),
  beam: expression('flag').optional(),
  when,
});

/** Ways to join, as they are written. */
export const JOINT_KINDS = [
  'loose-tenons',
  'dowels',
  'mortise-and-tenon',
  'halved',
  'glued',
  'screwed',
] as const;

const jointSpec = mapOf({
  label: words,
  between: z.tuple([nameText, nameText], { error: 'two places in [ ]' }),
  by: pick([oneOf(...JOINT_KINDS), expression('joint')], (input) =>
    isScalar(input) && /^[a-z][a-z0-9_.]*$/.test(input.text) && !isJointKind(input.text) ? 1 : 0,
  ),
  when,
});

export function isJointKind(word: string): word is (typeof JOINT_KINDS)[number] {
  return (JOINT_KINDS as readonly string[]).includes(word);
}

/** The way to join that an option of a choice stands for: `loose_tenons` for `loose-tenons`. */
export const jointKindOf = (option: string): string => option.replaceAll('_', '-');

/** Where the parts of a form stand, what cuts them and how they are joined. README.md gives it in words. */
export const baseSpec = mapOf({
  use: oneOf('table', 'desk', 'bench', 'stool'),
  levellers: length.optional(),
  top: mapOf({
    round: expression('flag').optional(),
    length,
    width: length.optional(),
    thickness: length,
    level: length,
  }),
  planes: namesOf(basePlaneSpec, 'a map of planes'),
  places: namesOf(placeSpec, 'a map of places'),
  joints: namesOf(jointSpec, 'a map of joints').optional(),
});

export type BaseSpec = z.output<typeof baseSpec>;
export type BasePlaneSpec = z.output<typeof basePlaneSpec>;
export type PlaceSpec = z.output<typeof placeSpec>;
export type TrimSpec = z.output<typeof trimSpec>;
export type CopySpec = z.output<typeof copySpec>;
export type JointSpec = z.output<typeof jointSpec>;
export type SpaceSpec = z.output<typeof spaceSpec>;
export type DirectionSpec = z.output<typeof directionSpec>;
