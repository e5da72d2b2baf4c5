import { describe, expect, test } from 'vitest';
import { compute, lookAtDesign, type Memo } from '../../src/design/index.ts';
import { basePicture } from '../../src/drawing/index.ts';
import { sampleDesign } from './sample-design.ts';

const table = sampleDesign('raked-table', ['leg']);

describe('a look at a design', () => {
  test('shows the base that a computation makes, and is found again by it', () => {
    const memo: Memo = new Map();
    const looked = lookAtDesign(table, ['front', 'plan'], memo);
    const computed = compute(table, { memo, wanted: { patterns: [] } });
    if (!looked.ok || !computed.ok) throw new Error('a sound design');
    expect(looked.value.views.map(({ view }) => view)).toEqual(['front', 'plan']);
    expect(looked.value.views[0]!.picture).toEqual(basePicture(computed.value.base!.base, 'front'));
    const again = lookAtDesign(table, ['front'], memo);
    expect(again.ok && again.value.views[0]!.picture).toBe(looked.value.views[0]!.picture);
    expect(computed.value.sketch).toBe(looked.value.sketch);
  });

  test('is had of a design whose paper is too small for anything', () => {
    const tiny = { ...table, paper: { ...table.paper, size: { width: '30 mm', height: '30 mm' } } };
    expect(compute(tiny).ok).toBe(false);
    expect(lookAtDesign(tiny, ['front']).ok).toBe(true);
  });

  test('has no views of a form that places no parts', () => {
    const looked = lookAtDesign(sampleDesign('splayed-leg', ['leg']), ['front']);
    expect(looked.ok && looked.value.views).toEqual([]);
  });

  test('tells what is wrong with a figure', () => {
    const wrong = { ...table, parameters: { ...table.parameters, overall_height: '9 km' } };
    const looked = lookAtDesign(wrong, ['front']);
    expect(looked.ok ? [] : looked.problems.map(({ path }) => path)).toEqual(['parameters.overall_height']);
  });
});
