import { describe, expect, it } from 'vitest';
import { compute, type Design, lookAtCell, studyAxes, studyGrid } from '../../../src/design/index.ts';
import { sampleDesign } from '../sample-design.ts';

const leg = sampleDesign('splayed-leg', ['leg']);
const DEGREE = Math.PI / 180;

function gridOf(design: Design, ...axes: Parameters<typeof studyGrid>[1]) {
  const grid = studyGrid(design, axes);
  if (!grid.ok) throw new Error(JSON.stringify(grid.problems));
  return grid.value;
}

describe('a study of proportions', () => {
  it('lays designs across the ranges of two parameters, row by row', () => {
    const { scales, cells } = gridOf(
      leg,
      { parameter: 'splay', from: 2 * DEGREE, to: 10 * DEGREE, count: 3 },
      { parameter: 'head_width', from: 50, to: 80, count: 2 },
    );
    expect(scales.map(({ values }) => values.map(({ typed }) => typed))).toEqual([
      ['2°', '6°', '10°'],
      ['50 mm', '80 mm'],
    ]);
    expect(cells.map(({ at, parameters }) => [at, parameters.splay, parameters.head_width])).toEqual([
      [[0, 0], '2°', '50 mm'],
      [[1, 0], '6°', '50 mm'],
      [[2, 0], '10°', '50 mm'],
      [[0, 1], '2°', '80 mm'],
      [[1, 1], '6°', '80 mm'],
      [[2, 1], '10°', '80 mm'],
    ]);
    expect(cells[5]!.design).toEqual({
      ...leg,
      parameters: { ...leg.parameters, splay: '10°', head_width: '80 mm' },
    });
  });

  it('keeps within ranges, in round figures, each once', () => {
    const { scales } = gridOf(leg, { parameter: 'splay', from: -3, to: 0.2 * DEGREE, count: 9 });
    expect(scales[0]!.values.map(({ typed }) => typed)).toEqual(['0°']);
    const inches = gridOf(sampleDesign('splayed-leg', ['leg'], 'in'), {
      parameter: 'head_width',
      from: 50,
      to: 76.2,
      count: 3,
    });
    expect(inches.scales[0]!.values.map(({ typed }) => typed)).toEqual(['1 15/16 in', '2 1/2 in', '3 in']);
  });

  it('says of each design what computing it says', () => {
    const { cells } = gridOf(leg, { parameter: 'head_width', from: 30, to: 64, count: 2 });
    for (const { design } of cells) {
      const look = lookAtCell(design, 'room');
      const whole = compute(design, { wanted: { patterns: [] } });
      if (!whole.ok) {
        expect(look).toEqual({ kind: 'unusable', why: whole.problems[0]!.message });
        continue;
      }
      const count = (severity: string) =>
        whole.value.findings.filter((finding) => finding.severity === severity).length;
      expect(look).toMatchObject({
        kind: 'made',
        findings: { stop: count('stop'), caution: count('caution'), note: count('note') },
      });
    }
    expect(cells.map(({ design }) => lookAtCell(design, 'room').kind)).toEqual(['unusable', 'made']);
  });

  it('offers every figure with a range round what it is', () => {
    const axes = studyAxes(leg);
    if (!axes.ok) throw new Error('axes');
    const height = axes.value.find(({ parameter }) => parameter === 'overall_height')!;
    // 735 mm, a quarter of 250 to 1250 mm either way.
    expect(height).toMatchObject({ label: 'Overall height', kind: 'length', from: 485, to: 985, count: 5 });
    expect(axes.value.map(({ parameter }) => parameter)).not.toContain('taper');
    const measured = studyAxes({ ...leg, measured: { parameters: { splay: '6°' } } });
    expect(measured.ok && measured.value.map(({ parameter }) => parameter)).not.toContain('splay');
    const bad = studyGrid(leg, [{ parameter: 'taper', from: 0, to: 1, count: 3 }]);
    expect(bad.ok ? [] : bad.problems.map(({ code }) => code)).toEqual(['study.axis']);
  });
});
