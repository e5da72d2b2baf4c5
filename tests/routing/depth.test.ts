import { describe, expect, test } from 'vitest';
import { type DepthPlan, routePart, type Tooling } from '../../src/routing/index.ts';
import { bearingTooling, bushingTooling, partOf, rectangle } from './support/parts.ts';

const plan = (thickness: number, tooling: Tooling): DepthPlan =>
  routePart(partOf(rectangle(80, 700, { foot: 'sawn', head: 'sawn' }), { thickness }), tooling).depth;
const cutter = (diameter: number, cuttingLength: number, shank?: number) => ({
  cutter: { diameter, cuttingLength, ...(shank === undefined ? {} : { shank }) },
});
const codes = ({ remarks }: DepthPlan) =>
  remarks
    .map(({ code, severity }) => `${severity} ${code}`)
    .filter((code) => !code.endsWith('depth-per-pass'));

describe('a cutter guided by a bearing', () => {
  test('does work thinner than itself in one setting', () => {
    const { possible, passes } = plan(22, bearingTooling(19, cutter(19, 25)));
    expect(possible).toBe(true);
    expect(passes).toMatchObject([{ from: 0, to: 22, guideOn: 'template', turned: false }]);
  });

  test('may leave a fringe when it only just reaches the far face', () => {
    expect(codes(plan(25, bearingTooling(19, cutter(19, 25))))).toContain(
      'caution routing.cutter-barely-long',
    );
  });

  test('stands out where template and work together are thinner than it', () => {
    const { remarks } = plan(20, bearingTooling(19, cutter(19, 38)));
    // 38 mm of cutter less 20 of work; the bearing keeps 3 of the 12 mm template, so the cutter rises 9 beside it.
    expect(remarks[0]).toMatchObject({ code: 'routing.cutter-stands-out', measured: 9 });
  });

  test('does thicker work in two settings that overlap, the second on the face just cut', () => {
    const { possible, passes } = plan(40, bearingTooling(19, cutter(19, 25)));
    expect(possible).toBe(true);
    expect(passes.map(({ guideOn }) => guideOn)).toEqual(['template', 'cut face']);
    const [first, second] = passes;
    expect(first).toMatchObject({ from: 0, to: 25 });
    expect(second!.to).toBe(40);
    // The bearing, 5 mm high above the cutter, lies on the face cut before, and no ridge is left between the two.
    expect(second!.from).toBeGreaterThanOrEqual(5);
    expect(second!.from).toBeLessThanOrEqual(first!.to - 2);
    expect(second!.from + 25).toBeGreaterThanOrEqual(40 + 1);
  });

  test('cannot do work that two settings do not reach, and says what would', () => {
    const { possible, passes, remarks } = plan(60, bearingTooling(19, cutter(19, 25)));
    expect([possible, passes]).toEqual([false, []]);
    const stop = remarks.find(({ severity }) => severity === 'stop')!;
    expect(stop).toMatchObject({ code: 'routing.cutter-too-short', measured: 25, limit: 31.5 });
    expect(stop.cure).toContain('31.5 mm');
  });

  test('cannot follow its own cut with a bearing of another size', () => {
    const tooling = bearingTooling(19, {
      ...cutter(19, 25),
      guide: { kind: 'bearing', diameter: 22, at: 'shank' },
    });
    expect(plan(22, tooling).possible).toBe(true);
    const { possible, remarks } = plan(40, tooling);
    expect(possible).toBe(false);
    expect(remarks.find(({ severity }) => severity === 'stop')!.words).toContain('1.5 mm');
  });

  test('at its tip needs a shank thinner than the wood still standing', () => {
    const tip = (shank?: number) =>
      bearingTooling(19, { ...cutter(19, 25, shank), guide: { kind: 'bearing', diameter: 19, at: 'tip' } });
    expect(plan(40, tip(12)).possible).toBe(true);
    expect(plan(40, tip(16)).possible).toBe(false);
    expect(codes(plan(40, tip()))).toContain('caution routing.shank-unknown');
  });

  test('needs a template that it can run on', () => {
    const thin = (templateThickness: number) => plan(20, bearingTooling(19, { templateThickness }));
    expect(thin(2).possible).toBe(false);
    expect(codes(thin(4))).toContain('caution routing.template-too-thin');
    expect(codes(thin(6)).join()).not.toContain('template-too-thin');
  });
});

describe('a guide bushing', () => {
  const bushing = (barrelLength: number, more: Partial<Tooling> = {}) =>
    bushingTooling(10, 20, {
      templateThickness: 12,
      guide: { kind: 'bushing', outsideDiameter: 20, barrelLength },
      ...more,
    });

  test('has a barrel shorter than the template', () => {
    expect(plan(20, bushing(11)).possible).toBe(true);
    expect(codes(plan(20, bushing(11.8)))).toContain('caution routing.barrel-too-long');
    const { possible, remarks } = plan(20, bushing(12));
    expect(possible).toBe(false);
    expect(remarks[0]).toMatchObject({ code: 'routing.barrel-too-long', measured: 12, limit: 11.5 });
    expect(remarks[0]!.cure).toMatch(/12\.5 mm.*11\.5 mm/);
  });

  test('stays on the template while a short cutter follows its own cut down', () => {
    const { possible, passes } = plan(45, bushing(8, cutter(10, 20, 8)));
    expect(possible).toBe(true);
    expect(passes.every(({ guideOn }) => guideOn === 'template')).toBe(true);
    for (const [at, pass] of passes.slice(1).entries())
      expect(pass.from).toBeLessThanOrEqual(passes[at]!.to - 2);
    expect(passes.at(-1)!.to).toBe(45);
  });

  test('cannot go down where the shank is thicker than the cutter', () => {
    expect(plan(45, bushing(8, cutter(6, 20, 8))).possible).toBe(false);
    expect(codes(plan(45, bushing(8, cutter(6, 20))))).toContain('caution routing.shank-unknown');
  });

  test('does not ask for hundreds of settings', () => {
    expect(plan(400, bushing(8, cutter(10, 2.001, 8))).possible).toBe(false);
  });
});

describe('where the template lies', () => {
  const side = (machine: Tooling['machine'], guide: Tooling['guide']) =>
    routePart(partOf(rectangle(80, 700)), bearingTooling(19, { machine, guide })).templateSide;

  test('follows from machine and guide', () => {
    expect(side('hand-held', { kind: 'bearing', diameter: 19, at: 'shank' })).toBe('above');
    expect(side('hand-held', { kind: 'bearing', diameter: 19, at: 'tip' })).toBe('below');
    expect(side('table', { kind: 'bearing', diameter: 19, at: 'tip' })).toBe('above');
    expect(side('table', { kind: 'bearing', diameter: 19, at: 'shank' })).toBe('below');
    expect(side('hand-held', { kind: 'bushing', outsideDiameter: 24, barrelLength: 8 })).toBe('above');
  });
});
