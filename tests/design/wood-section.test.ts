import { describe, expect, it } from 'vitest';
import { type Design, readDesign, type TypedWood, writeDesign } from '../../src/design/index.ts';
import { sampleDesign } from './sample-design.ts';

const WOOD: TypedWood = {
  climate: {
    room: {
      dry: { temperature: '21 °C', humidity: '30 %' },
      damp: { temperature: '75 °F', humidity: 65 },
    },
    shop: { moisture: '8 %' },
  },
  top: { sawn: 'flat', thread: 'M6', insert: { outer: '12 mm', length: 15, pilot: '10.5 mm' } },
  sawn: { leg: 'quarter' },
  resaw: [
    {
      name: 'legs',
      rough: '6/4',
      flattening: '3 mm',
      kerf: '1.2 mm',
      leaves: 2,
      planing: { sawn: '0.8 mm', outer: '0.4 mm' },
      drying: '1 mm',
      backing: '16 mm',
      lastPlaning: { show: '0.5 mm', back: '0.5 mm' },
      drift: '0.5 mm',
    },
  ],
  bookmatch: [
    {
      name: 'trestles',
      arrangement: 'book',
      resaw: 'legs',
      boards: ['A'],
      parts: [{ part: 'leg', faces: ['face'] }],
      centre: 'far',
      leaves: [{ leaf: 1, piece: 'FL', face: 'face', shows: 'lower', markedEnd: 'down' }],
    },
  ],
  boards: [
    {
      name: 'A',
      length: '2100 mm',
      width: '9 in',
      thickness: '6/4',
      price: { amount: 12.5, per: 'board foot', currency: 'EUR' },
      defects: [
        { kind: 'knot', centre: ['420 mm', '85 mm'], diameter: '30 mm' },
        {
          kind: 'split',
          points: [
            [0, 0],
            [140, 0],
            [0, '12 mm'],
          ],
        },
      ],
      grain: '1°',
      photographs: [
        {
          file: 'board-a.jpg',
          face: 'upper',
          points: [
            { pixel: [120, 88.5], on: [0, 0] },
            { pixel: [5900, 90], on: ['2100 mm', 0] },
          ],
        },
      ],
    },
  ],
  placements: [
    {
      board: 'A',
      part: 'leg',
      pieces: ['FL'],
      x: 30,
      y: '20 mm',
      turned: '180°',
      mirrored: true,
      pinned: true,
    },
  ],
  search: { seed: 7, seconds: 5, grainWithin: '2°', between: '4 mm', allowed: ['sapwood'] },
};

const design: Design = { ...sampleDesign('splayed-leg', ['leg']), wood: WOOD };
const text = writeDesign(design);

/** Message of the only problem that a change of the wood raises. */
// biome-ignore lint/suspicious/noExplicitAny: the file is broken on purpose.
function problemAfter(change: (wood: any) => void): string {
  const file = JSON.parse(text);
  change(file.wood);
  const read = readDesign(JSON.stringify(file), 'desk.json');
  if (read.ok) throw new Error('it was read');
  expect(read.problems).toHaveLength(1);
  return read.problems[0]!.message;
}

describe('the wood of a design file', () => {
  it('reads back as it was written, and is written alike again', () => {
    const read = readDesign(text, 'desk.json');
    if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join('\n'));
    expect(read.value.design).toEqual(design);
    expect(writeDesign(read.value.design)).toBe(text);
  });

  it('says what was expected where something else stands', () => {
    expect(
      problemAfter(({ bookmatch: [match] }) => {
        match.arrangement = 'pages';
      }),
    ).toMatch(/arrangement: found "pages", expected "book" or "slip" or "radial"/);
    expect(
      problemAfter(({ resaw: [plan] }) => {
        plan.kerv = plan.kerf;
        delete plan.kerf;
      }),
    ).toMatch(/found "kerv", expected "kerf"/);
    expect(
      problemAfter(({ climate }) => {
        climate.shop = '8 %';
      }),
    ).toMatch(/climate\.shop: .*\{ "moisture": "8 %" \} or/);
    expect(
      problemAfter(({ boards: [board] }) => {
        delete board.defects[0].diameter;
      }),
    ).toMatch(/"centre" and "diameter"/);
    expect(
      problemAfter(({ placements: [placed] }) => {
        placed.x = true;
      }),
    ).toMatch(/x: found true, expected a length/);
  });

  it('takes two or four known points in a photograph, and no three', () => {
    expect(
      problemAfter(({ boards: [board] }) => {
        board.photographs[0].points.push({ pixel: [0, 0], on: [0, 0] });
      }),
    ).toMatch(/expected two or four known points/);
  });
});
