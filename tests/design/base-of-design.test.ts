import { beforeAll, describe, expect, it } from 'vitest';
import { loadSolids, type Solids } from '../../src/base/index.ts';
import { compute, type Design, type Memo } from '../../src/design/index.ts';
import { resolveBase } from '../../src/design/resolve-base.ts';
import { sampleDesign } from './sample-design.ts';

const DEGREE = Math.PI / 180;

let solids: Solids;
beforeAll(async () => {
  solids = await loadSolids();
});

const table = sampleDesign('raked-table', ['leg']);

function sound(design: Design, memo?: Memo) {
  const computed = compute(design, {
    solids,
    wanted: { patterns: [] },
    ...(memo === undefined ? {} : { memo }),
  });
  if (!computed.ok) throw new Error(computed.problems.map(({ message }) => message).join('\n'));
  return computed.value;
}

function problemsOf(design: Design) {
  const computed = compute(design, { wanted: { patterns: [] } });
  return computed.ok ? [] : computed.problems;
}

describe('what a design says of its base', () => {
  it('is as usual where it says nothing', () => {
    const read = resolveBase(table);
    if (!read.ok) throw new Error('read');
    expect(read.value.wood.name).toBe('white oak');
    expect(read.value.looseTenons).toBeUndefined();
    expect(read.value.saw.tilt).toEqual({ left: 45 * DEGREE, right: 0 });
  });

  it('is read in the design’s units, angles in degrees where bare', () => {
    const read = resolveBase({
      units: { length: 'in', nearest: '1/32' },
      base: {
        wood: 'Black Walnut',
        woods: { rail: 'white ash' },
        looseTenons: [{ thickness: '3/8', width: '2 in', length: '50 mm' }],
        dowels: [{ diameter: '1/2 in', length: 2 }],
        saw: { swing: { left: 52, right: '60°' }, tilt: { left: '48 deg', right: 45 } },
      },
    });
    if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join('\n'));
    const { wood, woods, looseTenons, dowels, saw } = read.value;
    expect(wood.name).toBe('black walnut');
    expect(woods.rail!.name).toBe('white ash');
    expect(looseTenons).toEqual([
      { thickness: expect.closeTo(9.525, 9), width: expect.closeTo(50.8, 9), length: 50 },
    ]);
    expect(dowels).toEqual([{ diameter: 12.7, length: 50.8 }]);
    expect(saw.swing).toEqual({
      left: expect.closeTo(52 * DEGREE, 12),
      right: expect.closeTo(60 * DEGREE, 12),
    });
    expect(saw.tilt.left).toBeCloseTo(48 * DEGREE, 12);
  });

  it('is refused where it stands, every fault at once', () => {
    const problems = problemsOf({
      ...table,
      base: {
        wood: 'white oat',
        woods: { leg: 'unobtainium' },
        dowels: [{ diameter: '0 mm', length: '30 mm' }],
        saw: { swing: { left: 120, right: 45 }, tilt: { left: -1, right: 0 } },
      },
    });
    expect(problems.map(({ path }) => path).sort()).toEqual([
      'base.dowels.0.diameter',
      'base.saw.swing.left',
      'base.saw.tilt.left',
      'base.wood',
      'base.woods.leg',
    ]);
    expect(problems.find(({ path }) => path === 'base.wood')!.expected).toBe('"white oak"');
  });

  it('names no part that the form does not draw', () => {
    const strangers = problemsOf({
      ...table,
      measured: { thickness: { wing: '20 mm' } },
      base: { woods: { keel: 'white oak' } },
      cut: { fin: { revision: 'A', parameters: table.parameters, measured: {} } },
    });
    expect(strangers.map(({ code, path }) => [code, path])).toEqual([
      ['design.unknown-part', 'measured.thickness.wing'],
      ['design.unknown-part', 'cut.fin'],
      ['design.unknown-part', 'base.woods.keel'],
    ]);
    for (const { expected } of strangers) expect(expected).toContain('leg');
  });
});

describe('the base of a design', () => {
  it('weighs as its woods do', () => {
    const massOf = (base: Design['base']) =>
      sound(base === undefined ? table : { ...table, base }).base!.standing!.measured;
    const oak = massOf(undefined);
    const ash = massOf({ wood: 'white ash' });
    const mixed = massOf({ woods: { leg: 'white ash' } });
    const ofLegs = ({ parts }: typeof oak) =>
      parts.filter(({ part }) => part.startsWith('leg')).reduce((sum, { mass }) => sum + mass, 0);
    expect(mixed.mass).toBeCloseTo(oak.mass - ofLegs(oak) + ofLegs(ash), 9);
    expect(mixed.mass).not.toBeCloseTo(oak.mass, 3);
  });

  it('takes the tenons that the maker has', () => {
    const looseTenons = [{ thickness: '8 mm', width: '40 mm', length: '50 mm' }];
    const { joints } = sound({ ...table, base: { looseTenons } }).base!.joints;
    const sizes = joints.flatMap(({ loose }) => loose?.size ?? []);
    expect(sizes.length).toBeGreaterThan(0);
    for (const size of sizes) expect(size).toEqual({ thickness: 8, width: 40, length: 50 });
  });

  it('says nothing of how it stands where no solids are loaded, and draws the same parts', () => {
    const computed = compute(table, { wanted: { patterns: [] } });
    if (!computed.ok) throw new Error('sound');
    expect(computed.value.base!.standing).toBeUndefined();
    expect(computed.value.parts.map(({ part }) => part)).toEqual(sound(table).parts.map(({ part }) => part));
  });

  it('is trimmed by the face of a part as thick as it was measured', () => {
    const apronOf = (design: Design) =>
      sound(design).base!.list.find(({ part }) => part === 'short_apron')!.finished.length;
    const thin: Design = { ...table, measured: { thickness: { leg: '44 mm' } } };
    // The legs of 48 stand on their middle: 2 mm less on each side where the aprons between them end.
    const longer = apronOf(thin) - apronOf(table);
    expect(longer).toBeGreaterThan(3.9);
    expect(longer).toBeLessThan(4.2);
  });

  it('follows a parameter as measured before one as decided', () => {
    const { list } = sound({ ...table, measured: { parameters: { overall_height: '720 mm' } } }).base!;
    const decided = sound({ ...table, parameters: { ...table.parameters, overall_height: '720 mm' } });
    expect(list).toEqual(decided.base!.list);
  });
});

describe('parts that are cut', () => {
  const cut = (part: string, { parameters, measured }: Design): Design['cut'] => ({
    [part]: { revision: 'A', parameters, measured },
  });

  it('keep their shape, so that nothing changes while nothing is decided anew', () => {
    const kept = sound({ ...table, cut: cut('leg', table)! });
    expect(kept.parts.map(({ part }) => part)).toEqual(sound(table).parts.map(({ part }) => part));
  });

  it('stop the work when they have become too short', () => {
    const higher: Design = {
      ...table,
      cut: cut('leg', table)!,
      parameters: { ...table.parameters, overall_height: '750 mm' },
    };
    const { findings, parts } = sound(higher);
    const short = findings.find(({ code }) => code === 'base.cut-too-short')!;
    expect(short).toMatchObject({ severity: 'stop', part: 'leg' });
    expect(short.measured!.value).toBeCloseTo(10, 0);
    const lengthOf = (each: ReturnType<typeof sound>) =>
      each.base!.list.find(({ part }) => part === 'leg')!.finished.length;
    expect(lengthOf(sound(higher))).toBeCloseTo(lengthOf(sound(table)), 6);
    expect(parts.length).toBeGreaterThan(0);
  });

  it('are as thick as measured, whenever that was', () => {
    const measured: Design = {
      ...table,
      cut: cut('leg', table)!,
      measured: { thickness: { leg: '47 mm' } },
    };
    const legs = sound(measured).base!.base.parts.filter(({ place }) => place === 'leg');
    for (const { drawn } of legs) expect(drawn.thickness).toBe(47);
    expect(sound(measured).findings.filter(({ code }) => code === 'base.cut-thickness')).toEqual([]);
  });

  it('name the place in the design where the figures that they were cut to cannot be used', () => {
    const parameters = { ...table.parameters, overall_height: '20 mm' };
    const problems = problemsOf({ ...table, cut: { leg: { revision: 'A', parameters, measured: {} } } });
    expect(problems.map(({ path }) => path)).toEqual(['cut.leg']);
  });

  it('hold for forms of one part as well', () => {
    const leg = sampleDesign('splayed-leg', ['leg']);
    const longer: Design = {
      ...leg,
      cut: cut('leg', leg)!,
      parameters: { ...leg.parameters, overall_height: '760 mm' },
    };
    expect(sound(longer).parts[0]!.part).toEqual(sound(leg).parts[0]!.part);
    expect(sound({ ...leg, parameters: longer.parameters }).parts[0]!.part).not.toEqual(
      sound(leg).parts[0]!.part,
    );
  });
});

describe('a base from a memo', () => {
  it('equals one from nothing after each change, and is built again only when it must be', () => {
    const memo: Memo = new Map();
    const steps: readonly ((design: Design) => Design)[] = [
      (design) => design,
      (design) => ({ ...design, base: { wood: 'black walnut' } }),
      (design) => ({ ...design, measured: { thickness: { leg: '46.5 mm' } } }),
      (design) => ({ ...design, cut: cutOf(table) }),
      (design) => ({ ...design, parameters: { ...design.parameters, splay: '5°' } }),
      (design) => ({ ...design, tooling: { ...design.tooling, sawAllowance: '3 mm' } }),
    ];
    const cutOf = ({ parameters, measured }: Design): Design['cut'] => ({
      leg: { revision: 'A', parameters, measured },
    });
    let design = table;
    for (const step of steps) {
      design = step(design);
      expect(JSON.stringify(sound(design, memo)) === JSON.stringify(sound(design))).toBe(true);
    }
    const built = () => memo.get('base')!.length;
    expect(built()).toBe(steps.length);
    sound({ ...design, paper: { ...design.paper, size: 'A3' } }, memo);
    expect(built()).toBe(steps.length);
  });
});
