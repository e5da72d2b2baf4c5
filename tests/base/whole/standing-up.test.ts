import { beforeAll, describe, expect, test } from 'vitest';
import { type StandingBase, standBase } from '../../../src/base/index.ts';
import { joinBase } from '../../../src/base/joints/join-base.ts';
import { loadSolidKernel, type SolidKernel } from '../../../src/base/solids/index.ts';
import type { StandingUp } from '../../../src/base/whole/standing.ts';
import { standingUp } from '../../../src/base/whole/standing-up.ts';
import { vec, vec3 } from '../../../src/geometry/index.ts';
import { woodCalled } from '../../../src/materials/index.ts';
import { sketchOf } from '../../forms/forms.ts';
import { fourLegs, under } from '../four-legs.ts';
import { board, joint, place, stand } from '../hand-made.ts';

const OAK = woodCalled('white oak')!;
const PINE = woodCalled('eastern white pine')!;

let kernel: SolidKernel;
beforeAll(async () => {
  kernel = await loadSolidKernel();
});

function standing(base: StandingBase, wood = OAK, topWood = OAK): StandingUp {
  return standingUp(kernel, base, joinBase(base).joints, {
    woodOf: () => wood,
    topWood,
    lengths: { unit: 'mm', decimals: 1 },
  });
}

const codes = ({ findings }: StandingUp): readonly string[] => findings.map(({ code }) => code);

/** m³ of the wood of four legs, two long and two end rails. */
const WOOD = 4 * 0.05 * 0.05 * 0.7 + 2 * 0.08 * 0.8 * 0.02 + 2 * 0.08 * 0.4 * 0.02;

describe('a table of boards', () => {
  const table = under(fourLegs(), { length: 1200, width: 800, thickness: 20 });

  test('weighs what its wood does, its centre in the middle', () => {
    const { measured, topMass } = standing(table, OAK, PINE);
    expect(measured.mass).toBeCloseTo(WOOD * OAK.density, 6);
    expect(topMass).toBeCloseTo(1.2 * 0.8 * 0.02 * PINE.density, 9);
    expect([measured.centre.x, measured.centre.y]).toEqual([expect.closeTo(0, 6), expect.closeTo(0, 6)]);
  });

  test('tips over its front at W b / a: 250 inside, and 800 / 2 − 50 − 250 outside', () => {
    const { tipping, topMass, measured } = standing(table);
    const mass = measured.mass + topMass;
    expect(tipping!.stands).toBe(true);
    expect(tipping!.worst!.inside).toBeCloseTo(250, 6);
    expect(tipping!.worst!.outside).toBeCloseTo(100, 6);
    expect(tipping!.worst!.load!.kilograms).toBeCloseTo((mass * 250) / 100, 6);
    // Over an end: 450 inside, 600 − 50 − 450 outside.
    const ends = tipping!.lines.filter(({ inside }) => Math.abs(inside - 450) < 1e-6);
    expect(ends.map(({ load }) => load!.kilograms)).toEqual(
      [1, 1].map(() => expect.closeTo((mass * 450) / 100, 6)),
    );
  });

  test('does not rock, and all its parts find room', () => {
    const { rocking, collisions } = standing(table);
    expect(rocking!.rock).toBe(0);
    expect(collisions).toEqual([]);
  });

  test('is told what is out of the usual, and by how much to change what', () => {
    const { findings } = standing(table);
    const cures = new Map(findings.map(({ code, cure }) => [code, cure]));
    // Feet 500 apart under a top of 800: 62.5 % of the two thirds that are usual.
    expect(cures.get('base.feet.across')).toBe('Spread the feet by 5 % of the top.');
    expect(cures.get('base.knees.thighs')).toMatch(/2\.3 mm shallower/);
    for (const { cure } of findings) expect(cure).toMatch(/\d/);
  });

  test('leaves knees the room under its rail and between its legs', () => {
    const { knees } = standing(table);
    const measure = (name: string) => knees.find((each) => each.name === name)!.value;
    expect(measure('knees.height')).toBeCloseTo(620, 6);
    expect(measure('knees.width')).toBeCloseTo(800, 6);
  });

  test('measures no room for knees under a bench', () => {
    expect(standing({ ...table, use: 'bench' }).knees).toEqual([]);
  });

  test('a round top of the same size weighs π/4 of it', () => {
    const square = standing(under(table, { length: 800, width: 800 }));
    const round = standing(under(table, { length: 800, width: 800, shape: 'round' }));
    expect(round.topMass / square.topMass).toBeCloseTo(Math.PI / 4, 9);
  });
});

describe('a wide top', () => {
  const wide = under(fourLegs(), { length: 1200, width: 1200, thickness: 20 });

  test('tips too early, and the cure, applied, cures it', () => {
    const { tipping, findings } = standing(wide);
    const mass = (WOOD + 1.2 * 1.2 * 0.02) * OAK.density;
    expect(tipping!.worst!.load!.kilograms).toBeCloseTo((mass * 250) / 300, 6);
    const tips = findings.find(({ code }) => code === 'base.tips')!;
    expect(tips.severity).toBe('caution');
    const further = Number(/([\d.]+) mm further/.exec(tips.cure!)![1]);
    // Feet so much further out, the wood of the rails hardly more.
    expect((mass * (250 + further)) / (300 - further)).toBeGreaterThanOrEqual(tips.limit!.value - 0.01);
  });
});

describe('what cannot stand', () => {
  test('falls when its centre lies beyond the feet', () => {
    const whole = fourLegs();
    const front = { ...whole, parts: whole.parts.filter(({ mark }) => !mark.startsWith('B')) };
    const { tipping, findings } = standing(front);
    expect(tipping!.stands).toBe(false);
    const falls = findings.find(({ code }) => code === 'base.falls')!;
    expect(falls.severity).toBe('stop');
    expect(falls.cure).toMatch(/\d mm/);
  });

  test('hangs when nothing reaches the floor', () => {
    const base = stand([board('leg', 50, 600, 50)], [place('leg', 'leg', { at: vec3(0, 0, 100) })]);
    expect(codes(standing(base))).toContain('base.no-feet');
  });

  test('wants the same place twice: how deep one goes into the other', () => {
    const base = stand(
      [board('leg', 50, 700, 50)],
      [place('leg', 'leg'), place('other', 'leg', { at: vec3(44, 0, 0) })],
    );
    const found = standing(base).findings.find(({ code }) => code === 'base.collision')!;
    expect(found.severity).toBe('stop');
    expect(found.measured!.value).toBeCloseTo(6, 6);
  });
});

describe('a frame with a stretcher half way in', () => {
  test('keeps the width between its legs: a chair does not go so far', () => {
    const legs = { kind: 'mirror', across: 'front-back' } as const;
    const base = stand(
      [board('leg', 50, 700, 50), board('stretcher', 80, 800, 20)],
      [
        place('leg', 'leg', {
          at: vec3(-450, -250, 0),
          copies: [{ kind: 'mirror', across: 'left-right' }, legs],
        }),
        place('stretcher', 'stretcher', { at: vec3(-400, 0, 300), along: vec3(1, 0, 0) }),
      ],
    );
    const { knees } = standing(under(base, { width: 800 }));
    expect(knees.find(({ name }) => name === 'knees.width')!.value).toBeCloseTo(800, 6);
  });
});

describe('a rail under the top', () => {
  test('sags by 5 w L⁴ / 384 E I under its share of the load', () => {
    const base = under(fourLegs(), { length: 900, width: 600, thickness: 20 });
    const { beams, load, topMass } = standing(base);
    expect(beams.map(({ part }) => part)).toEqual(['long', 'long-2']);
    const rail = (20 * 80 ** 3) / 12;
    const top = (600 * 20 ** 3) / 12;
    // Rails and top bend together: each carries as much as it is stiff (one wood).
    const w = ((load + topMass) * 9.80665 * rail) / (2 * rail + top) / 800;
    const sag = (5 * w * 800 ** 4) / (384 * OAK.modulusOfElasticity * rail);
    for (const { sag: found } of beams) {
      expect(found.spans).toHaveLength(1);
      expect(found.spans[0]!.first).toBeCloseTo(sag, 9);
      expect(found.moment).toBeCloseTo((w * 800 ** 2) / 8, 6);
    }
  });

  test('takes more of the load when it is of stiffer wood than the top', () => {
    const base = under(fourLegs(), { length: 900, width: 600, thickness: 20 });
    const shareOf = (wood: typeof OAK, topWood: typeof OAK): number => {
      const { beams, load, topMass } = standing(base, wood, topWood);
      return beams[0]!.sag.moment / (load + topMass);
    };
    expect(shareOf(OAK, PINE)).toBeGreaterThan(shareOf(OAK, OAK) * 1.05);
  });

  test('lying flat is as deep as it is thick', () => {
    const flat = stand(
      [board('leg', 50, 700, 50), board('rail', 80, 800, 20)],
      [
        place('leg', 'leg', {
          at: vec3(-450, -25, 0),
          copies: [{ kind: 'mirror', across: 'left-right' }],
        }),
        place('rail', 'rail', {
          pin: vec(40, 0),
          at: vec3(-400, 0, 700),
          along: vec3(1, 0, 0),
          face: vec3(0, 0, 1),
          beam: true,
        }),
      ],
      { joints: [joint('rail leg', 'glued', 'rail', 'leg')] },
    );
    const [beam] = standing(under(flat, { length: 900, width: 300, thickness: 1 })).beams;
    const { stress, moment } = beam!.sag;
    expect(moment / stress).toBeCloseTo((80 * 20 ** 2) / 6, 6);
  });

  test('that sags too much or is bent too hard says by how much deeper it must be', () => {
    const base = under(fourLegs(), { length: 900, width: 600, thickness: 20 });
    const soft = { ...PINE, modulusOfElasticity: 400, modulusOfRupture: 4 };
    const { findings, beams } = standing(base, soft, soft);
    const [sag] = beams;
    const said = findings.find(({ code }) => code === 'base.sag')!;
    const deeper = 1 + Number(/(\d+) % deeper/.exec(said.cure!)![1]) / 100;
    const { firstShare } = sag!.sag.spans[0]!;
    // Deflection goes with the cube of the depth.
    expect(firstShare / deeper ** 3).toBeLessThanOrEqual(sag!.sag.limits.design.value);
    const weak = findings.find(({ code }) => code === 'base.beam-weak')!;
    const stronger = 1 + Number(/(\d+) % deeper/.exec(weak.cure!)![1]) / 100;
    expect(sag!.sag.stress / stronger ** 2).toBeLessThanOrEqual(sag!.sag.allowed);
  });
});

describe('the base of a form', () => {
  test('weighs the base without what its halving takes', () => {
    const base = standBase(sketchOf('crossed-base'));
    if (!base.ok) throw new Error('stands');
    const { joints } = joinBase(base.value);
    const options = { woodOf: () => OAK, topWood: OAK, lengths: { unit: 'mm', decimals: 1 } } as const;
    const halved = standingUp(kernel, base.value, joints, options);
    const whole = standingUp(kernel, base.value, [], options);
    expect(halved.collisions).toEqual([]);
    expect(whole.collisions.length).toBeGreaterThan(0);
    expect(halved.measured.mass).toBeLessThan(whole.measured.mass);
  });
});
