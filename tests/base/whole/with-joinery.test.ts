import { expect, test } from 'vitest';
import { joinBase } from '../../../src/base/index.ts';
import { withJoinery } from '../../../src/base/whole/with-joinery.ts';
import { woodCalled } from '../../../src/materials/index.ts';
import { standingOf } from '../../forms/standing-bases.ts';

const OAK = woodCalled('white oak')!;
const BEECH = woodCalled('American beech')!;
const base = standingOf('stool-base');
const { joints } = joinBase(base, { cutter: 12, lengths: { unit: 'mm', decimals: 1 } });
/** As though every part were a litre of wood at the origin. */
const bare = {
  parts: base.parts.map(({ id }) => ({
    part: id,
    volume: 1e6,
    mass: OAK.density / 1000,
    centre: { x: 0, y: 0, z: 0 },
    bounds: { min: { x: 0, y: 0, z: 0 }, max: { x: 1, y: 1, z: 1 } },
  })),
  mass: (base.parts.length * OAK.density) / 1000,
  centre: { x: 0, y: 0, z: 0 },
};

test('loose tenons weigh what their closed form says, and mortises are taken off the parts', () => {
  const { measured, joinery } = withJoinery(bare, joints, base.parts, () => OAK);
  // A bar with half-round edges: thickness × (width − thickness) and a circle of the thickness, times the length.
  const loose = joints.reduce((sum, joint) => {
    if (joint.loose?.kind !== 'tenon') return sum;
    const { thickness, width, length } = joint.loose.size;
    return (
      sum + joint.loose.count * length * (thickness * (width - thickness) + (Math.PI * thickness ** 2) / 4)
    );
  }, 0);
  expect(loose).toBeGreaterThan(0);
  expect(joinery.loose).toBeCloseTo(loose * 1e-9 * BEECH.density, 9);
  const mortises = joints.flatMap(({ sides }) =>
    sides.flatMap(({ work }) =>
      work.flatMap((each) =>
        each.kind === 'mortise'
          ? [each.depth * (each.width * (each.length - each.width) + (Math.PI * each.width ** 2) / 4)]
          : [],
      ),
    ),
  );
  const lost = mortises.reduce((sum, each) => sum + each, 0);
  const parts = measured.parts.reduce((sum, { mass }) => sum + mass, 0);
  expect(bare.mass - parts).toBeCloseTo(lost * 1e-9 * OAK.density, 6);
  expect(measured.mass).toBeCloseTo(parts + joinery.loose, 12);
});

test('glue is estimated from the glued faces, and not weighed in', () => {
  const glued = joints.reduce((sum, { glue }) => sum + glue.area, 0) * 1e-6;
  const { joinery, measured } = withJoinery(bare, joints, base.parts, () => OAK);
  // 180 g of wet glue on a square metre, of the 150 to 200 that are usual, half of it water (common practice).
  expect(joinery.glue * 1000).toBeCloseTo(glued * 180 * 0.5, 9);
  expect(withJoinery(bare, [], base.parts, () => OAK).measured.mass).toBeCloseTo(bare.mass, 12);
  expect(measured.mass).not.toBeCloseTo(bare.mass, 4);
});
