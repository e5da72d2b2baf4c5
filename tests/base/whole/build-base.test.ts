import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';
import { keepCutParts } from '../../../src/base/kept/keep-cut-parts.ts';
import { loadSolidKernel, type SolidKernel } from '../../../src/base/solids/index.ts';
import { standBase } from '../../../src/base/stand/stand-base.ts';
import { addStanding } from '../../../src/base/whole/add-standing.ts';
import { type BuildOptions, type BuiltBase, buildBase } from '../../../src/base/whole/build-base.ts';
import { placeBase } from '../../../src/base/whole/place-base.ts';
import { woodCalled } from '../../../src/materials/index.ts';
import { evaluateForm, readForm, type Sketch } from '../../../src/sketch/index.ts';

const MM = { unit: 'mm', decimals: 1 } as const;
const OPTIONS: BuildOptions = {
  wood: woodCalled('white oak')!,
  woods: {},
  saw: { swing: { left: 0.8, right: 0.8 }, tilt: { left: 0.8, right: 0 } },
  cutter: 12,
  allowance: { edge: 2, end: 25, thickness: 3 },
  lengths: MM,
};
const FORMS = [
  'shallow-v-trestle',
  'raked-table',
  'crossed-base',
  'arched-trestle',
  'bench-base',
  'stool-base',
];

function sketchOf(
  name: string,
  values: Readonly<Record<string, number | string | boolean>> = {},
  thickness = {},
): Sketch {
  const form = readForm(readFileSync(`templates/${name}.yaml`, 'utf8'), name);
  if (!form.ok) throw new Error(form.problems[0]!.message);
  const sketch = evaluateForm(form.value, values, { thickness });
  if (!sketch.ok) throw new Error(sketch.problems[0]!.message);
  return sketch.value;
}

let solids: SolidKernel;
beforeAll(async () => {
  solids = await loadSolidKernel();
});

function built(name: string, values = {}, options: Partial<BuildOptions> = {}): BuiltBase {
  return builtOf(sketchOf(name, values), options);
}

function builtOf(sketch: Sketch, options: Partial<BuildOptions> = {}): BuiltBase {
  const placed = placeBase(sketch, {}, OPTIONS.lengths);
  if (!placed.ok) throw new Error(placed.problems[0]!.message);
  const all = { ...OPTIONS, ...options };
  return addStanding(buildBase(placed.value, all), solids, all);
}

describe.each(FORMS)('%s at its defaults', (name) => {
  test('has no stop, and no caution of how it stands', () => {
    const { findings } = built(name);
    expect(findings.filter(({ severity }) => severity === 'stop')).toEqual([]);
    expect(
      findings.filter(({ code, severity }) => code.startsWith('base.') && severity === 'caution'),
    ).toEqual([]);
  });

  test('glues every joint once, and ends in one piece', () => {
    const { glue, joints, base } = built(name);
    const all = joints.joints.filter(({ kind }) => kind !== 'screwed').map(({ id }) => id);
    expect(glue.flatMap((step) => step.joints).sort()).toEqual([...all].sort());
    expect(glue.at(-1)!.groups).toHaveLength(1);
    expect(glue.at(-1)!.groups[0]!.parts).toHaveLength(base.parts.length);
  });

  test('lists every piece once, and weighs what its volumes and its wood make', () => {
    const { list, base, standing } = built(name);
    expect(list.reduce((sum, { count }) => sum + count, 0)).toBe(base.parts.length);
    const { parts, mass } = standing!.measured;
    const { loose } = standing!.joinery;
    const volume = parts.reduce((sum, part) => sum + part.volume, 0);
    expect(mass).toBeCloseTo(volume * 1e-9 * OPTIONS.wood.density + loose, 9);
  });
});

describe('the settings of the saw', () => {
  test('hold every end cut, the other hand as well', () => {
    const { order, cuts, made } = built('shallow-v-trestle');
    const ids = order.groups.flatMap((group) => group.ids);
    for (const { part, cuts: own } of cuts) {
      const handed = made.find(({ name }) => name === part)!.sketch.quantity.right > 0;
      for (const { name, cut } of own) {
        if (cut.kind !== 'end') continue;
        expect(ids).toContain(`${part} ${name}`);
        if (handed) expect(ids).toContain(`${part} ${name} right`);
      }
    }
  });

  test('are those of the plan angle for the rails of a shallow V', () => {
    const { cuts } = built('shallow-v-trestle', { plan_angle: (5 * Math.PI) / 180 });
    for (const { cut } of cuts.find(({ part }) => part === 'rail')!.cuts) {
      if (cut.kind !== 'end') throw new Error('a rail is cut at its ends');
      const turned = Math.max(Math.abs(cut.mitre), Math.abs(cut.bevel));
      expect((turned * 180) / Math.PI).toBeCloseTo(5, 6);
      expect(Math.min(Math.abs(cut.mitre), Math.abs(cut.bevel))).toBeLessThan(1e-9);
    }
  });
});

describe('the order of gluing', () => {
  test('joins pairs first, then the pairs', () => {
    const { glue } = built('raked-table');
    expect(glue.map(({ groups }) => groups.length)).toEqual([2, 1]);
  });

  test('takes wedges as steep as the legs lean', () => {
    const { cauls } = built('raked-table');
    const rake = cauls.map(({ angle }) => (angle * 180) / Math.PI);
    expect(cauls.length).toBeGreaterThan(0);
    for (const angle of rake) expect(angle).toBeLessThan(20);
  });
});

describe('wood measured and cut', () => {
  test('trims what meets a part by the thickness that it came to', () => {
    const as = (thickness: object): BuiltBase => builtOf(sketchOf('shallow-v-trestle', {}, thickness));
    const thin = as({ leg: 34.5 });
    expect(thin.findings.filter(({ severity }) => severity === 'stop')).toEqual([]);
    const lengthOf = ({ list }: BuiltBase) => list.find(({ part }) => part === 'rail')!.finished.length;
    expect(Math.abs(lengthOf(thin) - lengthOf(as({})))).toBeGreaterThan(0.5);
  });

  test('keeps parts that are cut, and says by how much they no longer fit', () => {
    const stand = (values: Readonly<Record<string, number>>) => {
      const base = standBase(sketchOf('shallow-v-trestle', values));
      if (!base.ok) throw new Error(base.problems[0]!.message);
      return base.value;
    };
    const before = stand({ overall_height: 735 });
    const lower = keepCutParts(stand({ overall_height: 732 }), new Map([['leg', before]]), MM);
    const over = lower.findings.find(({ code }) => code === 'base.cut-again');
    expect(over?.measured?.value).toBeCloseTo(3, 1);
    const higher = keepCutParts(stand({ overall_height: 740 }), new Map([['leg', before]]), MM);
    const short = higher.findings.find(({ code }) => code === 'base.cut-too-short');
    expect(short?.severity).toBe('stop');
    expect(short?.measured?.value).toBeCloseTo(5, 1);
    const leg = higher.base.parts.find(({ place }) => place === 'leg')!;
    expect(leg.face).toEqual(before.parts.find(({ place }) => place === 'leg')!.face);
  });

  test('says nothing of parts that still fit', () => {
    const base = standBase(sketchOf('stool-base'));
    if (!base.ok) throw new Error('stands');
    expect(keepCutParts(base.value, new Map([['leg', base.value]]), MM).findings).toEqual([]);
  });
});
