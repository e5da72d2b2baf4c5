import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { compute, type Design, readDesign, type TypedWood } from '../../src/design/index.ts';
import { type ComputedWood, woodOfDesign } from '../../src/design/wood-of-design.ts';
import { sampleDesign } from './sample-design.ts';

const file = readDesign(readFileSync('demo/long-table.json', 'utf8'), 'long-table.json');
if (!file.ok) throw new Error(file.problems.map(({ message }) => message).join('\n'));
const { design } = file.value;
const computed = compute(design, { wanted: { patterns: [] } });
if (!computed.ok) throw new Error(computed.problems.map(({ message }) => message).join('\n'));
const built = computed.value.base!;

function woodOf(wood: TypedWood, more: Partial<Design> = {}): ComputedWood {
  const found = woodOfDesign({ ...design, ...more, wood }, built);
  if (!found.ok) throw new Error(found.problems.map(({ message }) => message).join('\n'));
  return found.value;
}
const messages = (wood: TypedWood): readonly string[] => {
  const found = woodOfDesign({ ...design, wood }, built);
  return found.ok ? [] : found.problems.map(({ path, message }) => `${path}: ${message}`);
};

describe('the wood of a base', () => {
  it('is as usual where a design says nothing of it', () => {
    const usual = woodOf({});
    expect(usual.top).toMatchObject({ made: 8, sawn: 'flat', thread: 'M6' });
    expect(usual.parts.every(({ sawn }) => sawn === 'flat')).toBe(true);
    expect([usual.stacks, usual.matches, usual.findings]).toEqual([[], [], []]);
  });

  it('takes the thickness of a plan from the board and the part that its bookmatch names', () => {
    const { stacks, matches } = woodOf(design.wood!);
    // Board A is sold as 8/4, legs are 36 mm thick.
    expect(stacks[0]!.plan).toMatchObject({ finished: 36, glued: 1, backing: 31 });
    expect(stacks[0]!.plan.rough).toBeCloseTo(50.8, 9);
    expect(matches[0]!.map.places.map(({ board, leaf }) => `${board}${leaf}`)).toEqual([
      'A1',
      'A2',
      'A3',
      'A4',
    ]);
  });

  it('glues two leaves into a piece that shows them on both faces, and then asks for more boards', () => {
    const both = woodOf({
      ...design.wood!,
      bookmatch: design.wood!.bookmatch!.map((match) => ({
        ...match,
        parts: [{ part: 'leg', faces: ['face', 'back'] as const }],
      })),
    });
    expect(both.stacks[0]!.plan.glued).toBe(2);
    expect(both.findings.map(({ code }) => code)).toContain('wood.too-few-leaves');
  });

  it('reckons movement in the room and from the moisture that a design names', () => {
    const { parts, top } = woodOf(design.wood!);
    expect(top.made).toBeCloseTo(8.5, 9);
    expect(parts.find(({ part }) => part === 'leg')!.sawn).toBe('quarter');
    const air = { temperature: '20 °C', humidity: '50 %' };
    const still = woodOf({ climate: { room: { dry: air, damp: air }, shop: air } });
    for (const { across } of still.parts) expect(across.range).toBeCloseTo(0, 9);
    // 68 °F is 20 °C.
    const same = woodOf({ climate: { shop: { temperature: '68 °F', humidity: 50 } } });
    expect(same.top.made).toBeCloseTo(still.top.made, 9);
  });

  it('names what nothing is called by, with what is', () => {
    const [match] = design.wood!.bookmatch!;
    const [plan] = design.wood!.resaw!;
    const wood = design.wood!;
    expect(messages({ ...wood, bookmatch: [{ ...match!, resaw: 'leg leafs' }] })).toEqual([
      expect.stringContaining('wood.bookmatch.0.resaw: found "leg leafs", expected "leg leaves"'),
    ]);
    expect(messages({ ...wood, bookmatch: [{ ...match!, boards: ['C'] }] })[0]).toContain(
      'found "C", expected "A"',
    );
    expect(
      messages({ ...wood, bookmatch: [{ ...match!, parts: [{ part: 'legs', faces: ['face'] }] }] })[0],
    ).toContain('expected "leg"');
    const leaf = { leaf: 1, piece: 'FX', face: 'face', shows: 'upper', markedEnd: 'up' } as const;
    expect(messages({ ...wood, bookmatch: [{ ...match!, leaves: [leaf] }] })[0]).toMatch(
      /leaves\.0\.piece: .*FX/,
    );
    expect(messages({ resaw: [plan!] })[0]).toContain('wood.resaw.0.rough');
    expect(messages({ resaw: [{ ...plan!, rough: '6/4' }] })[0]).toContain('wood.resaw.0.finished');
  });

  it('refuses figures that no shop has, each where it stands', () => {
    const found = messages({
      climate: {
        shop: { moisture: '80 %' },
        room: { dry: { temperature: '21 K', humidity: 0 }, damp: { temperature: 20, humidity: '65 %' } },
      },
      top: { thread: 'M99', wood: 'tin' },
    });
    expect(found.map((each) => each.split(': ')[0])).toEqual([
      'wood.climate.room.dry.temperature',
      'wood.climate.room.dry.humidity',
      'wood.climate.shop.moisture',
      'wood.top.wood',
      'wood.top.thread',
    ]);
  });

  it('is read of a design of parts alone as well', () => {
    const parts = sampleDesign('splayed-leg', ['leg']);
    const wrong = compute({ ...parts, wood: { top: { thread: 'M99' } } });
    expect(wrong.ok ? [] : wrong.problems.map(({ path }) => path)).toEqual(['wood.top.thread']);
    const right = compute({ ...parts, wood: { top: { thread: 'M8' } } }, { wanted: { patterns: [] } });
    expect(right.ok && right.value.wood).toBe(undefined);
  });
});
