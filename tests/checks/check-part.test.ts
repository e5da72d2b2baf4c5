import { describe, expect, test } from 'vitest';
import { cautions, checkPart } from '../../src/checks/index.ts';
import type { Finding } from '../../src/core/index.ts';
import { vec } from '../../src/geometry/index.ts';
import { routePart, type Tooling } from '../../src/routing/index.ts';
import type { SketchedPart } from '../../src/sketch/index.ts';
import {
  bearingTooling,
  bushingTooling,
  hollowLeg,
  LEG,
  loopOf,
  openingAt,
  partOf,
  rectangle,
  reversed,
} from '../routing/support/parts.ts';

const check = (part: SketchedPart, tooling: Tooling): Finding[] => checkPart(part, routePart(part, tooling));
const find = (findings: readonly Finding[], code: string) => findings.find((each) => each.code === code);
const ends = { foot: 'sawn', head: 'sawn' } as const;
const cuttersOf = (...diameters: number[]) => diameters.map((diameter) => ({ diameter, cuttingLength: 40 }));
const window = (x: number, y: number, width: number, height: number) =>
  reversed(
    loopOf([
      [x, y, 'sill'],
      [x + width, y, 'jamb-b'],
      [x + width, y + height, 'lintel'],
      [x, y + height, 'jamb-a'],
    ]),
  );
const panel = (plunge: SketchedPart['openings'], hole = window(100, 200, 80, 120)) =>
  partOf(rectangle(300, 700, ends), { holes: [hole], openings: plunge });

describe('a part that its tools suit', () => {
  test('gives no stop and no caution', () => {
    const findings = check(partOf(rectangle(80, 700, ends)), bearingTooling(19, { runOn: 50 }));
    expect(findings.filter(({ severity }) => severity !== 'note')).toEqual([]);
  });

  test('names the part in every finding', () => {
    const findings = check(partOf(hollowLeg(5), { name: 'front-leg' }), bushingTooling(19, 20));
    expect(findings.length).toBeGreaterThan(3);
    expect(new Set(findings.map(({ part }) => part))).toEqual(new Set(['front-leg']));
  });

  test('lists the gravest findings first', () => {
    const order = { stop: 0, caution: 1, note: 2 };
    const ranks = check(partOf(hollowLeg(5)), bushingTooling(19, 30)).map(({ severity }) => order[severity]);
    expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
    expect(new Set(ranks).size).toBe(3);
  });
});

describe('wood left and lost', () => {
  test('a hollow too tight for the cutter names place, depth and the cutter that would reach', () => {
    const findings = check(partOf(hollowLeg(6.2)), bearingTooling(19, { cutters: cuttersOf(6, 12, 16) }));
    expect(find(findings, 'routing.cutter-too-large')).toMatchObject({
      severity: 'caution',
      edges: ['knee'],
      measured: { value: 19, unit: 'mm' },
      limit: { value: expect.closeTo(12.4, 9), unit: 'mm' },
      cure: 'A cutter of 12 mm would reach.',
    });
    const left = find(findings, 'routing.wood-left')!;
    expect(left.severity).toBe('caution');
    expect(left.measured!.value).toBeCloseTo((9.5 - 6.2) * (Math.SQRT2 - 1), 6);
    expect(left.message).toContain('1.37 mm');
    expect(left.cure).toContain('A cutter of 12 mm would reach');
  });

  test('a trifle left is a note only', () => {
    const findings = check(partOf(hollowLeg(9)), bearingTooling(19));
    expect(find(findings, 'routing.wood-left')!.severity).toBe('note');
  });

  test('wood left or lost less than a sheet of paper is no finding', () => {
    // (R − r)(√2 − 1) stands in a right-angled hollow of radius r: 0.083 mm for 9.3 under 9.5.
    const left = check(partOf(hollowLeg(9.3)), bearingTooling(19));
    expect(find(left, 'routing.wood-left')).toBeUndefined();
    expect(find(left, 'routing.cutter-too-large')).toBeDefined();
  });

  test('a cutter that could be larger is told so', () => {
    const cutters = cuttersOf(12.7, 19, 25);
    const findings = check(partOf(hollowLeg(10)), bearingTooling(12.7, { cutters }));
    expect(find(findings, 'routing.larger-cutter')!.message).toContain('19 mm');
  });

  test('no cutter of the list reaching is said with the size that would enter', () => {
    const findings = check(partOf(hollowLeg(2)), bearingTooling(19, { cutters: cuttersOf(6, 12) }));
    expect(find(findings, 'routing.cutter-too-large')!.cure).toContain('4 mm');
  });

  test('a sharp inside corner is noted with the round that would do', () => {
    const sharp = find(
      check(panel([openingAt(0, vec(140, 260))]), bushingTooling(10, 20)),
      'routing.sharp-inside-corner',
    )!;
    expect(sharp).toMatchObject({ severity: 'note', cure: expect.stringContaining('5 mm') });
  });

  test('wood lost at a sharp outer corner stops the work, unless it is a trifle', () => {
    const lost = find(check(partOf(hollowLeg(60)), bushingTooling(10, 20)), 'routing.wood-lost')!;
    expect(lost.severity).toBe('stop');
    expect([...lost.edges].sort()).toEqual(['head', 'outer']);
    expect(lost.cure).toContain('5 mm');
    const little = find(check(partOf(hollowLeg(60)), bushingTooling(10, 13)), 'routing.wood-lost')!;
    expect(little.severity).toBe('caution');
  });
});

describe('guides', () => {
  test('a bushing that the cutter does not pass stops the work', () => {
    const found = find(check(partOf(LEG), bushingTooling(12, 10)), 'routing.guide-smaller-than-cutter')!;
    expect(found).toMatchObject({ severity: 'stop', measured: { value: 10 } });
  });

  test('a bushing with little room round the cutter is a caution', () => {
    expect(find(check(partOf(LEG), bushingTooling(10, 12.5)), 'routing.bushing-close')!.severity).toBe(
      'caution',
    );
    expect(find(check(partOf(LEG), bushingTooling(10, 16)), 'routing.bushing-close')).toBeUndefined();
  });

  test('a bearing smaller than the cutter is a caution with where the template stands', () => {
    const tooling = bearingTooling(19, { guide: { kind: 'bearing', diameter: 12, at: 'shank' } });
    const found = find(check(partOf(LEG), tooling), 'routing.guide-smaller-than-cutter')!;
    expect(found.severity).toBe('caution');
    expect(found.message).toContain('3.5 mm');
  });

  test('what the depth plan says is found too, stops as stops', () => {
    const tooling = bearingTooling(19, { cutter: { diameter: 19, cuttingLength: 8 } });
    expect(find(check(partOf(LEG, { thickness: 40 }), tooling), 'routing.cutter-too-short')!.severity).toBe(
      'stop',
    );
  });
});

describe('the template', () => {
  test('that falls apart in a narrow place stops the work', () => {
    const waist = loopOf([
      [0, 0, 'foot'],
      [80, 0, 'right'],
      [45, 200, 'right-2'],
      [80, 400, 'head'],
      [0, 400, 'left'],
      [35, 200, 'left-2'],
    ]);
    expect(find(check(partOf(waist), bushingTooling(6, 20)), 'routing.template-apart')).toMatchObject({
      severity: 'stop',
      measured: { value: 2 },
    });
  });

  test('of which nothing is left stops the work', () => {
    const found = find(check(partOf(rectangle(12, 400)), bushingTooling(6, 20)), 'routing.template-apart')!;
    expect(found).toMatchObject({ severity: 'stop', measured: { value: 0 } });
  });

  test('whose opening breaks into its edge stops the work', () => {
    const near = panel([openingAt(0, vec(60, 260))], window(8, 200, 80, 120));
    expect(find(check(near, bushingTooling(6, 20)), 'routing.opening-breaks-template')!.severity).toBe(
      'stop',
    );
    expect(find(check(near, bearingTooling(6)), 'routing.opening-breaks-template')).toBeUndefined();
  });

  test('that runs on too little for the wood left at the ends is a caution', () => {
    const found = find(
      check(partOf(LEG), bearingTooling(19, { runOn: 30, endAllowance: 25 })),
      'routing.run-on-short',
    )!;
    expect(found).toMatchObject({
      severity: 'caution',
      measured: { value: 30, unit: 'mm' },
      limit: { value: 34.5, unit: 'mm' },
    });
  });

  test('an unusual run-on is noted', () => {
    expect(
      find(check(partOf(LEG), bearingTooling(19, { runOn: 100 })), 'routing.run-on-unusual')!.severity,
    ).toBe('note');
    expect(
      find(check(partOf(LEG), bearingTooling(19, { runOn: 40 })), 'routing.run-on-unusual'),
    ).toBeUndefined();
  });

  test('without room for screws or tape asks for a sled', () => {
    const slim = partOf(rectangle(30, 700));
    expect(find(check(slim, bearingTooling(12)), 'routing.no-fixing')!.severity).toBe('caution');
  });
});

describe('openings', () => {
  const codes = (part: SketchedPart, tooling = bushingTooling(10, 20)) =>
    check(part, tooling).map(({ severity, code }) => `${severity} ${code}`);

  test('need a plunge in their waste with room for the guide', () => {
    expect(codes(panel([]))).toContain('stop routing.no-plunge');
    expect(codes(panel([openingAt(0, vec(50, 50))]))).toContain('stop routing.plunge-outside-waste');
    expect(codes(panel([openingAt(0, vec(101, 250))]))).toContain('stop routing.plunge-too-near');
    expect(codes(panel([openingAt(0, vec(140, 260))])).join()).not.toContain('plunge');
  });

  test('with a side that is not called routed are routed round all the same, and say so', () => {
    const hole = window(100, 200, 80, 120);
    const mixed = {
      edges: hole.edges.map((edge) =>
        edge.tag.id === 'sill' ? { ...edge, tag: { id: 'sill', role: 'joint' as const } } : edge,
      ),
    };
    const plunge = [openingAt(0, vec(140, 260))];
    expect(find(check(panel(plunge, mixed), bushingTooling(10, 20)), 'routing.mixed-opening')!.edges).toEqual(
      ['sill'],
    );
    expect(codes(panel(plunge)).join()).not.toContain('mixed-opening');
  });

  test('take a start hole for a cutter with a bearing', () => {
    const part = panel([openingAt(0, vec(140, 260))]);
    expect(codes(part, bearingTooling(12))).toContain('note routing.start-hole');
    expect(codes(part).join()).not.toContain('start-hole');
  });
});

describe('the words of findings', () => {
  const INCHES = { unit: 'in', denominator: 32 } as const;
  const inInches = (part: SketchedPart, tooling: Tooling) =>
    checkPart(part, routePart(part, tooling), INCHES);
  const inch = (value: number) => value * 25.4;

  test('have lengths in the maker’s unit throughout, cures and the depth plan too', () => {
    const tooling = bearingTooling(inch(0.75), { cutters: cuttersOf(inch(0.25), inch(0.5)), runOn: 30 });
    const findings = inInches(partOf(hollowLeg(6.2)), tooling);
    expect(findings.length).toBeGreaterThan(5);
    for (const { message, cure } of findings) {
      const words = `${message} ${cure ?? ''}`;
      // Millimetres only beside a fraction that is not exact, and no inches in decimals.
      expect(words.replaceAll(/(?:\d|64) in \(\d+(?:\.\d+)? mm\)/g, '')).not.toMatch(/\bmm\b/);
      expect(words).not.toMatch(/\d\.\d+ in\b(?!²)/);
    }
    const large = find(findings, 'routing.cutter-too-large')!;
    expect(large.message).toContain('The cutter of 3/4 in');
    expect(large.cure).toContain('A cutter of 1/4 in would reach');
    // Less than a step of the rule is not 0 in.
    expect(find(findings, 'routing.wood-left')!.message).toMatch(/: 3\/64 in \(1\.38 mm\) deep, 0\.\d+ in²/);
  });

  test('are in millimetres where nothing else is asked for', () => {
    const findings = check(partOf(hollowLeg(6.2)), bearingTooling(19));
    for (const { message } of findings) expect(message).not.toMatch(/\d in\b/);
  });

  test('call edges and openings as they are printed, while the edges keep their identities', () => {
    const hole = reversed(
      loopOf([
        [100, 200, 'slot_1.low_side'],
        [180, 200, 'slot_1.right'],
        [180, 320, 'slot_1.top'],
        [100, 320, 'slot_1.left'],
      ]),
    );
    const outer = rectangle(300, 700, ends);
    const part = partOf(outer, {
      holes: [hole],
      openings: [{ name: 'slot_1', label: 'Bolt slot', hole: 0, plunge: vec(140, 260) }],
    });
    const findings = check(part, bearingTooling(12));
    expect(find(findings, 'routing.start-hole')!.message).toContain('for "Bolt slot": the bearing');
    const sharp = find(findings, 'routing.sharp-inside-corner')!;
    expect(sharp.edges[0]).toMatch(/^slot_1\./);
    expect(sharp.message).toMatch(/corner at Bolt slot, (low side|right|top|left) is sharp/);
  });
});

describe('grain, splay and saw', () => {
  test('end grain breaks out at an outside corner only: inside an opening nothing is said of it', () => {
    const part = partOf(rectangle(300, 700, ends), {
      holes: [window(100, 200, 80, 120)],
      openings: [openingAt(0, vec(140, 260))],
    });
    expect(find(check(part, bearingTooling(12)), 'routing.end-grain')).toBeUndefined();
    const routed = find(check(partOf(rectangle(300, 700)), bearingTooling(12)), 'routing.end-grain')!;
    expect([...routed.edges].sort()).toEqual(['foot', 'head']);
  });

  test('the length cut against the grain is summed and its longest run pointed at', () => {
    const found = find(check(partOf(LEG), bearingTooling(19)), 'routing.against-grain')!;
    expect(found).toMatchObject({ severity: 'caution', edges: ['outer'] });
    expect(found.measured!.value).toBeCloseTo(Math.hypot(30, 700), 6);
    expect(found.at).toEqual({ x: 75, y: 350 });
  });

  test('a whole leg cut across the grain stops the work from 1:5 on, and is a caution from 1:10', () => {
    const slope = (run: number) => {
      const part = partOf(rectangle(60, 700, ends), { grain: Math.PI / 2 - Math.atan(1 / run) });
      const found = find(check(part, bearingTooling(19)), 'part.short-grain');
      return found && [found.severity, Number(found.measured!.value.toFixed(6))];
    };
    expect(slope(12)).toBeUndefined();
    expect(slope(9)).toEqual(['caution', Number((1 / 9).toFixed(6))]);
    expect(slope(4)).toEqual(['stop', 0.25]);
  });

  test('an arm across the grain of its leg is a stop at the arm; a piece with its own grain leaves only the curve of the knee', () => {
    const leg = partOf(hollowLeg(60));
    const found = find(check(leg, bearingTooling(19)), 'part.short-grain')!;
    expect(found.severity).toBe('stop');
    expect(found.edges).toEqual(expect.arrayContaining(['arm', 'head']));
    expect(found.message).toContain('between arm and head at 90°');
    expect(found.at!.y).toBeCloseTo(510, 6);
    const { from, to } = { from: vec(80, 0), to: vec(80, -1) };
    const pieces = [{ name: 'arm', label: 'Arm piece', leftOf: { from, to }, grain: 0 }];
    const cured = find(check({ ...leg, pieces }, bearingTooling(19)), 'part.short-grain')!;
    expect(cured.severity).toBe('caution');
    expect(cured.edges).toEqual(expect.arrayContaining(['outer', 'knee']));
    expect(cured.measured!.value).toBeLessThan(0.2);
  });

  test('a rail over a window, held at both ends, is a caution where the grain crosses it', () => {
    const found = find(
      check(panel([openingAt(0, vec(140, 600))], window(60, 560, 180, 80)), bearingTooling(19)),
      'part.short-grain',
    )!;
    expect(found.severity).toBe('caution');
  });

  test('a leg that leans more than 15° is a caution, a rail that lies is none', () => {
    const leaning = (degrees: number) => {
      const lean = (degrees * Math.PI) / 180;
      const line = { from: vec(0, 0), to: vec(700 * Math.sin(lean), 700 * Math.cos(lean)) };
      return find(check(partOf(LEG, { centreLine: line }), bearingTooling(19)), 'part.splay-wide');
    };
    expect(leaning(15)).toBeUndefined();
    // Whatever the part is, it is called by its own label.
    expect(leaning(15.2)!.message).toMatch(/^Part leans 15\.2° from plumb/);
    expect(leaning(90)).toBeUndefined();
  });

  test('a saw line that no blade of the list follows is a caution with its radius', () => {
    const blades = [{ width: 13 }];
    const found = find(check(partOf(hollowLeg(40)), bearingTooling(19, { blades })), 'routing.no-blade')!;
    expect(found.measured!.value).toBeCloseTo(38, 9);
    expect(find(check(partOf(hollowLeg(40)), bearingTooling(19)), 'routing.no-blade')).toBeUndefined();
  });

  test('a part shorter than 300 mm is not held by hand', () => {
    expect(
      find(check(partOf(rectangle(80, 250, ends)), bearingTooling(19)), 'routing.small-part')!.severity,
    ).toBe('caution');
  });

  test('a cutter larger than any in the charts of speeds is a caution', () => {
    expect(find(check(partOf(rectangle(300, 700)), bearingTooling(100)), 'routing.speed')!.severity).toBe(
      'caution',
    );
    expect(find(check(partOf(rectangle(300, 700)), bearingTooling(40)), 'routing.speed')!.message).toContain(
      '18000',
    );
  });
});

describe('the cautions for print', () => {
  test('have figures of the maker’s unit', () => {
    const inches = cautions(bearingTooling(12), { unit: 'in', denominator: 32 }).join(' ');
    expect(inches).toContain('Grip at least 3/4 in of shank');
    expect(inches).toContain('within 1/16 in to 1/8 in of the line');
    expect(inches).not.toContain('mm');
    expect(cautions(bearingTooling(12)).join(' ')).toContain('Grip at least 20 mm of shank');
  });

  test('say how to feed on the machine in use and defer to makers and codes', () => {
    const byHand = cautions(bearingTooling(12));
    const onTable = cautions(bushingTooling(12, 20, { machine: 'table' }));
    expect(byHand.join(' ')).toContain('anticlockwise round the outside, clockwise inside');
    expect(onTable.join(' ')).toContain('On the table');
    expect(onTable.join(' ')).toContain('barrel is shorter');
    for (const list of [byHand, onTable]) {
      expect(list.at(-1)).toMatch(/makers.*local codes.*licensed/);
      expect(new Set(list).size).toBe(list.length);
    }
  });
});
