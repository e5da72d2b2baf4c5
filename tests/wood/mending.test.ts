import { expect, it } from 'vitest';
import {
  areaOfRegions,
  circleOutline,
  findFaults,
  offsetRegions,
  type Region,
  subtractRegions,
  symmetricDifference,
  vec,
} from '../../src/geometry/index.ts';
import { checkPatchPlace, type PatchShape, planPatch, plugAt } from '../../src/wood/index.ts';
import { boardOf, polygon, strip } from './to-lay.ts';

const KNOT: Region = { outer: circleOutline(vec(40, 300), 6, { id: 'k', role: 'left' }, 1), holes: [] };
const UP = Math.PI / 2;
/** A 1/8 in cutter, a 5/16 in bushing, and the collar that fits them: 5/16 + 2/8 = 9/16 in. */
const INLAY = { cutter: 3.175, bushing: 7.9375 };

it.each<PatchShape>(['boat', 'diamond'])(
  'a %s holds the flaw, lies along the grain, and is slender',
  (shape) => {
    const patch = planPatch(KNOT, UP, { shape, margin: 2 }, INLAY);
    const grown = offsetRegions([KNOT], 2);
    expect(areaOfRegions(subtractRegions(grown, patch.plug))).toBeLessThan(0.01);
    expect(patch.length / patch.width).toBeGreaterThan(3);
    // Smaller by a little it would not hold the flaw.
    const smaller = offsetRegions(patch.plug, -0.05);
    expect(areaOfRegions(subtractRegions(grown, smaller))).toBeGreaterThan(0.01);
    expect(findFaults(patch.plug)).toEqual([]);
    expect(patch.centre).toMatchObject({ x: expect.closeTo(40, 3), y: expect.closeTo(300, 3) });
  },
);

it('with a collar of bushing and twice the cutter, plug and recess are one outline', () => {
  const patch = planPatch(KNOT, UP, { shape: 'boat' }, { ...INLAY, collar: 14.2875 });
  expect(patch.collarNeeded).toBeCloseTo(14.2875, 9);
  expect(patch.gap).toBeCloseTo(0, 9);
  expect(areaOfRegions(symmetricDifference(patch.plug, patch.recess))).toBeLessThan(1e-4);
  expect(patch.findings.filter(({ severity }) => severity === 'stop')).toEqual([]);
});

it('no corner of the plug is tighter than the cutter, or it would not fit', () => {
  const patch = planPatch(KNOT, 0.3, { shape: 'diamond' }, INLAY);
  const radii = patch.plug[0]!.outer.edges.flatMap((edge) => (edge.kind === 'arc' ? [edge.radius] : []));
  expect(radii.length).toBeGreaterThanOrEqual(2);
  expect(Math.min(...radii)).toBeGreaterThan(INLAY.cutter / 2);
});

it('room for glue is left all round when it is asked for', () => {
  const patch = planPatch(KNOT, UP, { shape: 'boat', clearance: 0.1 }, INLAY);
  const grown = offsetRegions(patch.plug, 0.1);
  expect(areaOfRegions(symmetricDifference(grown, patch.recess))).toBeLessThan(1e-3);
  expect(patch.findings.filter(({ code }) => code.includes('gap'))).toEqual([]);
});

it('says what another collar does to the fit, and which would cure it', () => {
  const loose = planPatch(KNOT, UP, { shape: 'boat' }, { ...INLAY, collar: 13.6 });
  expect(loose.findings).toContainEqual(
    expect.objectContaining({ code: 'mending.gap-shows', severity: 'caution' }),
  );
  const tight = planPatch(KNOT, UP, { shape: 'boat' }, { ...INLAY, collar: 15 });
  const [stop] = tight.findings;
  expect(stop).toMatchObject({ code: 'mending.plug-too-large', severity: 'stop' });
  expect(stop!.cure).toContain('14.29 mm');
  const huge = planPatch(KNOT, UP, { shape: 'boat' }, { ...INLAY, collar: 60 });
  expect(huge.findings).toContainEqual(expect.objectContaining({ code: 'mending.no-recess' }));
  const none = planPatch(KNOT, UP, { shape: 'boat' }, { cutter: 8, bushing: 7.9 });
  expect(none.findings).toContainEqual(expect.objectContaining({ code: 'mending.cutter-too-large' }));
});

it('a long split along the grain makes a long patch, across it a wide one', () => {
  const split = polygon([38, 250], [42, 250], [42, 350], [38, 350]);
  const along = planPatch(split, UP, { shape: 'boat' }, INLAY);
  const across = planPatch(split, 0, { shape: 'boat' }, INLAY);
  expect(along.width).toBeLessThan(0.5 * 100);
  expect(across.length).toBeGreaterThan(100);
});

it('a place for the plug is checked: on the offcut, clear of defects, with the grain, held all round', () => {
  const patch = planPatch(KNOT, UP, { shape: 'boat' }, INLAY);
  const offcut = strip(300, 90);
  const knot = {
    kind: 'knot' as const,
    region: { outer: circleOutline(vec(250, 45), 9, { id: 'k', role: 'left' }, 1), holes: [] },
  };
  const board = boardOf(300, 90, { defects: [knot] });
  const check = (x: number, y: number, turned = 0) =>
    checkPatchPlace(
      patch,
      { at: vec(x, y), turned },
      { board, offcut, cutter: INLAY.cutter, grainWithin: 0.05 },
    ).map(({ kind }) => kind);
  expect(check(100, 45)).toEqual([]);
  expect(check(100, 45, Math.PI)).toEqual([]);
  expect(check(240, 45)).toEqual(['over-a-defect']);
  expect(check(100, 5)).toEqual(['off-the-offcut']);
  expect(check(100, patch.width / 2 + 1)).toEqual(['little-support']);
  expect(check(100, 45, 0.1)).toEqual(['off-the-grain']);
  // It is turned so that its length lies along the board.
  const { minX, maxX } = plugAt(patch, { at: vec(100, 45), turned: 0 })[0]!.outer.edges.reduce(
    (box, { from }) => ({ minX: Math.min(box.minX, from.x), maxX: Math.max(box.maxX, from.x) }),
    { minX: Infinity, maxX: -Infinity },
  );
  expect(maxX - minX).toBeGreaterThan(0.8 * patch.length);
});
