import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import {
  compute,
  type Design,
  layoutOfDesign,
  patchesOfDesign,
  readDesign,
  typedPatchPlace,
  usualPatch,
} from '../../src/design/index.ts';

const read = readDesign(readFileSync('demo/long-table.json', 'utf8'), 'long-table.json');
if (!read.ok) throw new Error(read.problems[0]!.message);
const { design } = read.value;

function patchesIn(wood: NonNullable<Design['wood']>) {
  const own = { ...design, wood };
  const computed = compute(own, { wanted: { patterns: [], standing: false } });
  if (!computed.ok) throw new Error(computed.problems[0]!.message);
  const layout = layoutOfDesign(computed.value);
  if (!layout.ok) throw new Error(layout.problems[0]!.message);
  return patchesOfDesign(own, layout.value);
}

const kindsAt = (place: object) =>
  patchesIn({
    ...design.wood,
    patches: [{ ...usualPatch('knot', 'mm', false), ...place }],
  })[0]!.placed!.faults.map(({ kind }) => kind);

it('a patch fits with the collar of the set it is cut with: bushing and twice the bit', () => {
  const [patch] = patchesIn({ ...design.wood, patches: [usualPatch('knot', 'mm', false)] });
  const { collarNeeded, gap } = patch!.resolved!.patch;
  // 5/16 in and twice 1/8 in are 9/16 in, the collar that is sold with them.
  expect(collarNeeded).toBeCloseTo((9 / 16) * 25.4, 9);
  expect(gap).toBeCloseTo(0, 9);
});

it('its plug is held against what is left of the board: parts, knots, edges and the grain', () => {
  expect(kindsAt({ x: '1400 mm', y: '60 mm' })).toEqual([]);
  // The leg lies from 160 mm on; the knot of 38 mm at 1310, 172.
  expect(kindsAt({ x: '400 mm', y: '70 mm' })).toContain('off-the-offcut');
  expect(kindsAt({ x: '1310 mm', y: '172 mm' })).toContain('over-a-defect');
  expect(kindsAt({ x: '1400 mm', y: '7 mm' })).toEqual(['little-support']);
  expect(kindsAt({ x: '1400 mm', y: '60 mm', turned: '30°' })).toEqual(['off-the-grain']);
});

it('a place taken by hand is kept as it was taken', () => {
  const place = { at: { x: 1402.123, y: 61.5 }, turned: 0.02 };
  const [patch] = patchesIn({
    ...design.wood,
    patches: [{ ...usualPatch('knot', 'mm', false), ...typedPatchPlace(place) }],
  });
  expect(patch!.placed!.place).toEqual({
    at: { x: expect.closeTo(1402.123, 3), y: expect.closeTo(61.5, 3) },
    turned: expect.closeTo(0.02, 5),
  });
});

it('says where a length of it cannot be read, and that a bearing makes no patch', () => {
  const { bushing: _, ...bare } = usualPatch('knot', 'mm', false);
  const [wrong, without] = patchesIn({
    ...design.wood,
    patches: [{ ...usualPatch('a', 'mm', false), along: '2 spans' }, bare],
  });
  expect(wrong!.problems.map(({ path }) => path)).toEqual(['wood.patches.0.along']);
  expect(without!.problems.map(({ code }) => code)).toEqual(['mend.no-bushing']);
});
