import { expect, test } from 'vitest';
import { angleOf, distance, subtract, transformPoint, turnBy, type Vec } from '../../src/geometry/index.ts';
import { DEGREE, edgeCalled, partOf } from '../forms/forms.ts';

const LENGTH = 700;

/** Where the outer corner of the foot stands, seen from that of the head, on a real straight leg 700 mm long at this splay. */
function footFromHead(splay: number): Vec {
  const overall = LENGTH * Math.cos(splay) + 25;
  const leg = partOf('splayed-leg', { splay, overall_height: overall, top_thickness: 25, taper: 'none' });
  const { from: head, to: foot } = edgeCalled(leg, 'outer');
  expect(distance(head, foot)).toBeCloseTo(LENGTH, 9);
  // The head bears flat on the top: the head's own line says how the leg hangs from it.
  const line = edgeCalled(leg, 'head');
  const level = angleOf(subtract(line.from, line.to));
  return transformPoint(subtract(foot, head), turnBy(-level));
}

// Common practice: half a degree on a saw setting moves the foot of a 700 mm leg by 6.1 mm.
test.each([0, 4, 6, 8, 12])(
  'half a degree on a saw set to %i° moves the foot of a 700 mm leg by 6.1 mm',
  (degrees) => {
    const splay = degrees * DEGREE;
    const moved = distance(footFromHead(splay), footFromHead(splay + 0.5 * DEGREE));
    expect(Number(moved.toFixed(1))).toBe(6.1);
  },
);

test('and outwards, when the splay grows', () => {
  expect(footFromHead(6.5 * DEGREE).x).toBeLessThan(footFromHead(6 * DEGREE).x);
});
