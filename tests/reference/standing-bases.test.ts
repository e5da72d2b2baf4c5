import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { cross3, type Plane3, subtract3, vec, vec3 } from '../../src/geometry/index.ts';
import { board, place, stand } from '../base/hand-made.ts';
import { angleBetween, flatFacesOf, markedAt, pointsOf, standingOf } from '../forms/standing-bases.ts';

const DEGREE = Math.PI / 180;
const UP = vec3(0, 0, 1);

const tableOf = (name: string) =>
  JSON.parse(readFileSync(new URL(`../../shared/tables/${name}.json`, import.meta.url), 'utf8'));

/** Printed or computed to so many degrees: half a step of the last digit, and the print's own slips. */
const WITHIN = 0.0055;

/** Signed mitre and bevel (degrees) of a cut at the end of a part's length: rule 7 of the design, in absolute figures. */
function saw({ normal }: Plane3): readonly [number, number] {
  const s = Math.sign(normal.y);
  return [
    Math.abs(Math.atan2(normal.x * s, normal.y * s)) / DEGREE,
    Math.abs(Math.asin(normal.z * s)) / DEGREE,
  ];
}

interface Raked {
  readonly rake: number;
  readonly splay: number;
}

// shared/tables/rake-splay.json: computed apart from this project's code, at a height of 710 mm.
const RAKED = tableOf('rake-splay');

/** The raked table with a base as high as the table's legs. */
function rakedTable({ rake, splay }: Raked, roll: string) {
  const values = {
    overall_height: RAKED.table.height + 26,
    top_thickness: 26,
    rake: rake * DEGREE,
    splay: splay * DEGREE,
    roll,
  };
  return standingOf('raked-table', values);
}

describe.each(
  (RAKED.table.rows as readonly (Raked & Record<string, number>)[])
    .filter(({ rake, splay }) => rake <= 14 && splay <= 14)
    .map((row) => [`${row.rake}°`, `${row.splay}°`, row] as const),
)('a table raked by %s and splayed by %s', (_, __, row) => {
  test.each(['long', 'short', 'lean'])('leans as the tables say, its legs rolled to: %s', (roll) => {
    const base = rakedTable(row, roll);
    const { frame, drawn } = markedAt(base, 'leg', 'FL');
    expect(Math.abs(angleBetween(frame.y, UP) / DEGREE - row.lean!)).toBeLessThan(WITHIN);
    // From front to back, where the rake is seen, outwards: nothing to tell where a leg stands plumb.
    if (row.lean! > 0) {
      expect(Math.abs(Math.atan2(frame.y.x, frame.y.y) / DEGREE - row.line!)).toBeLessThan(WITHIN);
    }
    const long = drawn.dimensions.find(({ name }) => name === 'length')!.value;
    expect(long).toBeCloseTo(row.length!, 2);
    const run = subtract3(
      { ...frame.origin, z: 0 },
      {
        x: frame.origin.x + frame.y.x * long,
        y: frame.origin.y + frame.y.y * long,
        z: 0,
      },
    );
    expect(Math.abs(Math.abs(run.x) - row.runBySplay!)).toBeLessThan(WITHIN);
    expect(Math.abs(Math.abs(run.y) - row.runByRake!)).toBeLessThan(WITHIN);
  });
});

describe.each(
  (RAKED.sections.rows as readonly (Raked & { readonly offSquare: number })[])
    .filter(({ rake }) => rake <= 14)
    .map((row) => [row.rake, row] as const),
)('faces of a leg at %s° both ways', (_, row) => {
  const faceOf = (base: ReturnType<typeof rakedTable>, at: string, mark: string, face: string) =>
    flatFacesOf(markedAt(base, at, mark)).find(({ id }) => id === face)!.plane.normal;

  test('follow one pair of aprons and are off square to the other by what the tables say', () => {
    for (const [roll, followed, other] of [
      ['long', 'long', 'short'],
      ['short', 'short', 'long'],
    ] as const) {
      const base = rakedTable(row, roll);
      const aprons = {
        long: faceOf(base, 'long_apron', 'F', 'face'),
        short: faceOf(base, 'short_apron', 'L', 'face'),
      };
      const leg = { long: faceOf(base, 'leg', 'FL', 'face'), short: faceOf(base, 'leg', 'FL', 'outer') };
      expect(angleBetween(leg[followed], aprons[followed])).toBeCloseTo(0, 9);
      expect(Math.abs(angleBetween(leg[other], aprons[other]) / DEGREE - row.offSquare)).toBeLessThan(WITHIN);
      expect(Math.abs(angleBetween(aprons.long, aprons.short) / DEGREE - 90)).toBeCloseTo(row.offSquare, 2);
    }
  });

  test('square about the line of lean are off both pairs alike', () => {
    const base = rakedTable(row, 'lean');
    const long = angleBetween(faceOf(base, 'leg', 'FL', 'face'), faceOf(base, 'long_apron', 'F', 'face'));
    const short = angleBetween(faceOf(base, 'leg', 'FL', 'outer'), faceOf(base, 'short_apron', 'L', 'face'));
    expect(long).toBeCloseTo(short, 9);
    expect((2 * long) / DEGREE).toBeCloseTo(row.offSquare, 1);
  });
});

test.each(
  (RAKED.levelCuts.rows as readonly (Raked & { readonly face: number; readonly tilt: number })[])
    .filter(({ rake }) => rake <= 14)
    .map((row) => [row.rake, row] as const),
)('level cuts of a leg at %s° both ways are sawn as the tables say', (_, row) => {
  const leg = markedAt(rakedTable(row, 'long'), 'leg', 'FL');
  for (const cut of leg.cuts) {
    const [mitre, bevel] = saw(cut.plane);
    expect(Math.abs(mitre - row.face)).toBeLessThan(WITHIN);
    expect(Math.abs(bevel - row.tilt)).toBeLessThan(WITHIN);
  }
});

// shared/tables/compound-mitre.json: a chart printed in owner's manuals of compound mitre saws.
const CHART = tableOf('compound-mitre').chart;

interface ChartRow {
  readonly sides: number;
  readonly pitch: number;
  readonly mitre: number | null;
  readonly bevel: number | null;
}

test.each(
  (CHART.rows as readonly ChartRow[])
    // Sides that lie flat have no planes that cross.
    .filter(({ pitch, mitre, bevel }) => pitch > 0 && mitre !== null && bevel !== null)
    .map((row) => [row.sides, row.pitch, row] as const),
)('%i sides that slope by %i° meet in mitres as printed', (sides, pitch, row) => {
  const turn = (2 * Math.PI) / sides;
  const face = vec3(0, -Math.sin(pitch * DEGREE), Math.cos(pitch * DEGREE));
  const side = place('side', 'side', {
    at: vec3(0, -400, 0),
    pin: vec(40, 600),
    along: vec3(1, 0, 0),
    face,
    trims: [{ plane: 'mitre', otherSide: false }],
  });
  const around = vec3(400 * Math.sin(turn), -400 * Math.cos(turn), 0);
  const next = { ...side, name: 'next', at: around, turns: [{ about: 'z', by: turn }] as const, trims: [] };
  const planeOf = (name: string) =>
    ({ kind: 'face', of: { place: name, face: 'face', mirrored: [] }, out: 0 }) as const;
  const base = stand([board('side', 80, 1200, 20)], [side, next], {
    planes: {
      own: planeOf('side'),
      other: planeOf('next'),
      mitre: {
        kind: 'mitre',
        between: ['own', 'other'],
        facing: vec3(Math.cos(turn / 2), Math.sin(turn / 2), 0),
      },
    },
  });
  const [part] = base.parts;
  const [mitre, bevel] = saw(part!.cuts[0]!.plane);
  // The print has two decimals and is off by up to 0.0075° itself.
  expect(Math.abs(mitre - row.mitre!)).toBeLessThan(0.0125);
  expect(Math.abs(bevel - row.bevel!)).toBeLessThan(0.0125);
});

test('what is said of a base comes out, measured where it stands', () => {
  // The diagonal of a rectangle and the shadow of a leaning line: elementary geometry, no code of the project.
  const values = {
    foot_spread: 700,
    plan_angle: 8 * DEGREE,
    splay: 6 * DEGREE,
    overall_height: 750,
    top_thickness: 30,
  };
  const trestle = standingOf('shallow-v-trestle', values);
  const feet = trestle.parts
    .filter(({ place: at }) => at === 'leg')
    .flatMap(pointsOf)
    .filter(({ z }) => Math.abs(z) < 1e-6);
  expect(Math.max(...feet.map(({ y }) => y)) - Math.min(...feet.map(({ y }) => y))).toBeCloseTo(700, 9);
  const leg = markedAt(trestle, 'leg', 'FL');
  // Turned in plan by the plan angle, leaning in its own upright plane by the splay.
  const level = cross3(leg.frame.z, UP);
  expect(leg.frame.z.z).toBeCloseTo(0, 12);
  expect(Math.abs(Math.atan2(level.x, level.y)) / DEGREE).toBeCloseTo(8, 9);
  expect(angleBetween(leg.frame.y, UP) / DEGREE).toBeCloseTo(6, 9);
  // The ends of the long rails are swung by the plan angle and nothing else, as a rail that lies level on edge shows it: a bevel.
  for (const rail of trestle.parts.filter(({ place: at }) => at === 'rail')) {
    for (const cut of rail.cuts) {
      const [mitre, bevel] = saw(cut.plane);
      expect(mitre).toBeCloseTo(0, 9);
      expect(bevel).toBeCloseTo(8, 9);
    }
  }
});
