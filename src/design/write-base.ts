import type { BuiltBase, CutListLine, Joint, PartCut } from '../base/index.ts';
import type { Frame, Vec3 } from '../geometry/index.ts';
import { roundNumber, writePoint, writeRegion } from './region-schema.ts';
import type { WrittenResult } from './result-schema.ts';

type WrittenBase = NonNullable<WrittenResult['base']>;
type Written3 = WrittenBase['placed'][number]['frame']['origin'];

/** A base as other programs read it. */
export function writeBase({ base, made, cuts, joints, list, standing }: BuiltBase): WrittenBase {
  const { shape, ...top } = base.top;
  return {
    use: base.use,
    top: { shape, ...rounded(top) },
    levellers: roundNumber(base.levellers),
    placed: base.parts.map(({ id, place, label, mark, frame, drawn, face, back }) => {
      const own = made.find(({ members }) => members.some(({ part }) => part === id))!;
      const { hand, turned } = own.members.find(({ part }) => part === id)!;
      return {
        id,
        place,
        label,
        mark,
        part: own.name,
        hand,
        turned,
        frame: frameOf(frame),
        thickness: roundNumber(drawn.thickness),
        face: face.map(writeRegion),
        back: back.map(writeRegion),
      };
    }),
    made: made.map(({ name, members }) => ({
      part: name,
      members: members.map(({ part }) => part),
      cuts: cuts.find(({ part }) => part === name)!.cuts.map(cutOf),
    })),
    joints: joints.joints.map(jointOf),
    cutList: list.map(lineOf),
    ...(standing === undefined ? {} : { standing: standingOf(standing) }),
  };
}

function cutOf({ name, cut, edge }: PartCut): WrittenBase['made'][number]['cuts'][number] {
  const facts = { name, kind: cut.kind, ...(edge === undefined ? {} : { fence: edge }) };
  switch (cut.kind) {
    case 'end':
      return {
        ...facts,
        mitre: roundNumber(cut.mitre),
        bevel: roundNumber(cut.bevel),
        arrises: cut.arrises.all.map(({ name: arris, length, at }) => ({
          name: arris,
          length: roundNumber(length),
          at: vectorOf(at),
        })),
      };
    case 'rip':
      return { ...facts, bevel: roundNumber(cut.bevel) };
    case 'flat':
      return facts;
    default:
      return cut satisfies never;
  }
}

function jointOf(joint: Joint): WrittenBase['joints'][number] {
  const { id, name, label, kind, sides, contact, loose, screw, glue } = joint;
  const [tenon] = sides[0].work.filter((work) => work.kind === 'tenon');
  return {
    id,
    name,
    label,
    kind,
    between: [sides[0].part, sides[1].part],
    ...(contact && { contact: { area: roundNumber(contact.area), frame: frameOf(contact.frame) } }),
    ...(loose?.kind === 'tenon' && { tenons: { count: loose.count, ...rounded(sizeOf(loose.size)) } }),
    ...(loose?.kind === 'dowel' && {
      dowels: {
        count: loose.count,
        ...rounded({ diameter: loose.size.diameter, length: loose.size.length }),
      },
    }),
    ...(tenon && { tenon: rounded(sizeOf(tenon)) }),
    ...(screw && { screw: screw.number }),
    glue: rounded({ area: glue.area, longGrain: glue.longGrain }),
  };
}

interface Size {
  readonly thickness: number;
  readonly width: number;
  readonly length: number;
}

const sizeOf = ({ thickness, width, length }: Size): Size => ({ thickness, width, length });

function lineOf({ finished, rough, ...line }: CutListLine): WrittenBase['cutList'][number] {
  return { ...line, finished: rounded(sizeOf(finished)), rough: rounded(sizeOf(rough)) };
}

type Standing = NonNullable<BuiltBase['standing']>;

function standingOf({ measured, topMass, tipping }: Standing): NonNullable<WrittenBase['standing']> {
  return {
    mass: roundNumber(measured.mass),
    topMass: roundNumber(topMass),
    centre: vectorOf(measured.centre),
    ...(tipping && { tipping: tippingOf(tipping) }),
  };
}

function tippingOf({ stands, fromEdge, lines, worst, assumption }: NonNullable<Standing['tipping']>) {
  return {
    stands,
    fromEdge: roundNumber(fromEdge),
    lines: lines.map(({ from, to, inside, outside, load }) => ({
      from: writePoint(from.at),
      to: writePoint(to.at),
      inside: roundNumber(inside),
      outside: roundNumber(outside),
      ...(load && { kilograms: roundNumber(load.kilograms) }),
    })),
    ...(worst?.load && { kilograms: roundNumber(worst.load.kilograms) }),
    assumption,
  };
}

function frameOf({ origin, x, y, z }: Frame): WrittenBase['placed'][number]['frame'] {
  return { origin: vectorOf(origin), x: vectorOf(x), y: vectorOf(y), z: vectorOf(z) };
}

const vectorOf = ({ x, y, z }: Vec3): Written3 => [roundNumber(x), roundNumber(y), roundNumber(z)];

/** Every figure of a plain record, rounded. */
function rounded<T extends object>(figures: T & Readonly<Record<keyof T, number>>): T {
  return Object.fromEntries(
    Object.entries<number>(figures as Readonly<Record<string, number>>).map(([name, value]) => [
      name,
      roundNumber(value),
    ]),
  ) as T;
}
