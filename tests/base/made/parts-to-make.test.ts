import { describe, expect, test } from 'vitest';
import { partsToMake } from '../../../src/base/made/parts-to-make.ts';
import { areaOfRegions, polygonOutline, vec, vec3 } from '../../../src/geometry/index.ts';
import { board, partOf, place, shaped, stand } from '../hand-made.ts';

const FOUR = [
  { kind: 'mirror', across: 'left-right' },
  { kind: 'mirror', across: 'front-back' },
] as const;

const none = { joints: [] };

describe('pieces that are made alike', () => {
  test('leaning legs come in two hands on one pattern', () => {
    const leg = shaped('leg', [vec(0, 0), vec(60, 0), vec(100, 700), vec(40, 700)], 40);
    const base = stand([leg], [place('leg', 'leg', { at: vec3(-300, -200, 0), copies: FOUR })]);
    const [made, ...more] = partsToMake(base, none);
    expect(more).toHaveLength(0);
    // The right one of the front pair and the left one of the back pair are its mirror images.
    expect(made!.sketch.quantity).toEqual({ left: 2, right: 2 });
    expect(made!.members.map(({ hand }) => hand)).toEqual(base.parts.map(({ hand }) => hand));
  });

  test('straight posts have no hands', () => {
    const base = stand(
      [board('post', 60, 700, 40)],
      [place('post', 'post', { at: vec3(-300, -200, 0), copies: FOUR })],
    );
    expect(partsToMake(base, none).map(({ sketch }) => sketch.quantity)).toEqual([{ left: 4, right: 0 }]);
  });

  test('a rail mitred alike at both ends is its own mirror image turned round', () => {
    const rail = shaped('rail', [vec(0, 0), vec(90, 20), vec(90, 480), vec(0, 500)], 24);
    const lying = { along: vec3(1, 0, 0), at: vec3(0, -200, 400) };
    const base = stand(
      [rail],
      [place('rail', 'rail', { ...lying, copies: [{ kind: 'mirror', across: 'front-back' }] })],
    );
    const [made] = partsToMake(base, none);
    expect(made!.sketch.quantity).toEqual({ left: 2, right: 0 });
  });

  test('the same part cut by other planes is another piece, told apart by its place', () => {
    const base = stand(
      [board('rail', 90, 500, 24)],
      [
        place('front', 'rail', { label: 'Front rail', along: vec3(1, 0, 0) }),
        place('back', 'rail', {
          label: 'Back rail',
          along: vec3(1, 0, 0),
          at: vec3(0, 300, 0),
          trims: [{ plane: 'short', otherSide: false }],
        }),
      ],
      { planes: { short: { kind: 'through', through: vec3(450, 0, 0), facing: vec3(1, 0, 0) } } },
    );
    const made = partsToMake(base, none);
    expect(made.map(({ name, label }) => [name, label])).toEqual([
      ['rail', 'Front rail'],
      ['rail-2', 'Back rail'],
    ]);
    expect(made.map(({ sketch }) => areaOfRegions([sketch.region]))).toEqual([90 * 500, 90 * 450]);
    expect(made[1]!.sketch.centreLine).toMatchObject({ from: { y: 0 }, to: { y: 450 } });
  });

  test('what a cut takes away of the drawing is left out, the rest kept', () => {
    const bar = board('bar', 60, 500, 20);
    const drawn = {
      ...bar,
      corners: [
        { name: 'low', at: vec(0, 0) },
        { name: 'high', at: vec(0, 500) },
      ],
      joints: [
        { name: 'lower', label: 'Lower', from: vec(0, 100), to: vec(60, 100) },
        { name: 'upper', label: 'Upper', from: vec(0, 480), to: vec(60, 480) },
      ],
      dimensions: [
        { kind: 'length', name: 'all', label: 'All', from: vec(0, 0), to: vec(0, 500), value: 500 },
        { kind: 'length', name: 'width', label: 'Width', from: vec(0, 0), to: vec(60, 0), value: 60 },
      ],
    } as const;
    const base = stand([drawn], [place('bar', 'bar', { trims: [{ plane: 'top', otherSide: false }] })], {
      planes: { top: { kind: 'through', through: vec3(0, 0, 450), facing: vec3(0, 0, 1) } },
    });
    const [made] = partsToMake(base, none);
    expect(made!.sketch.corners.map(({ name }) => name)).toEqual(['low']);
    expect(made!.sketch.joints.map(({ name }) => name)).toEqual(['lower']);
    expect(made!.sketch.dimensions.map(({ name }) => name)).toEqual(['width']);
  });

  test('an opening that is left whole keeps its name, one that is cut into does not', () => {
    const hole = (id: string, y: number) =>
      polygonOutline([vec(20, y), vec(20, y + 40), vec(40, y + 40), vec(40, y)], { id, role: 'routed' });
    const part = partOf('panel', board('panel', 60, 500, 20).region.outer, 20, [
      hole('lower', 100),
      hole('upper', 430),
    ]);
    const openings = [
      { name: 'lower', label: 'Lower', hole: 0, plunge: vec(30, 120) },
      { name: 'upper', label: 'Upper', hole: 1, plunge: vec(30, 440) },
    ];
    const base = stand(
      [{ ...part, openings }],
      [place('panel', 'panel', { trims: [{ plane: 'top', otherSide: false }] })],
      { planes: { top: { kind: 'through', through: vec3(0, 0, 450), facing: vec3(0, 0, 1) } } },
    );
    const [made] = partsToMake(base, none);
    expect(made!.sketch.openings.map(({ name, hole }) => [name, hole])).toEqual([['lower', 0]]);
    expect(made!.sketch.region.holes).toHaveLength(1);
  });
});
