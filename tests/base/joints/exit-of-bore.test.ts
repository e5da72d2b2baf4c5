import { expect, test } from 'vitest';
import { exitOfBore } from '../../../src/base/joints/exit-of-bore.ts';
import { arc, type Frame, line, slotOutline, vec, vec3 } from '../../../src/geometry/index.ts';
import { partOf } from '../hand-made.ts';

/** A mortise 30 × 8 drilled level into the left edge, its middle 200 up and half way through the thickness. */
const own: Frame = {
  origin: vec3(0, 200, -30),
  x: vec3(0, 1, 0),
  y: vec3(0, 0, 1),
  z: vec3(1, 0, 0),
};
const outline = {
  outer: slotOutline(vec(-11, 0), vec(11, 0), 4, { id: 'mouth', role: 'joint' }),
  holes: [],
};
const bore = {
  kind: 'mortise',
  joint: 'joint',
  face: 'left',
  own,
  outline,
  length: 30,
  width: 8,
  depth: 20,
  measures: [],
} as const;

test('a hollow edge is met at its belly, between the ends of the mortise', () => {
  // Hollowed by a circle of radius 100 whose belly stands at x = 30, 203.7 up.
  const centre = vec(130, 203.7);
  const [low, high] = [vec(70, 123.7), vec(70, 283.7)];
  const drawn = partOf(
    'leg',
    {
      edges: [
        line(vec(0, 0), vec(70, 0), { id: 'bottom', role: 'sawn' }),
        line(vec(70, 0), low, { id: 'lower', role: 'left' }),
        arc(low, high, centre, -1, { id: 'hollow', role: 'routed' }),
        line(high, vec(70, 400), { id: 'upper', role: 'left' }),
        line(vec(70, 400), vec(0, 400), { id: 'top', role: 'sawn' }),
        line(vec(0, 400), vec(0, 0), { id: 'left', role: 'left' }),
      ],
    },
    60,
  );
  const exit = exitOfBore({ drawn, cuts: [] }, bore);
  expect(exit.on).toBe('hollow');
  expect(exit.reach).toBeCloseTo(30, 8);
});

test('a notch is met at its point', () => {
  // A notch comes in from the right to x = 25 at 206.3 up.
  const drawn = partOf(
    'leg',
    {
      edges: [
        line(vec(0, 0), vec(70, 0), { id: 'bottom', role: 'sawn' }),
        line(vec(70, 0), vec(70, 205), { id: 'lower', role: 'left' }),
        line(vec(70, 205), vec(25, 206.3), { id: 'notch', role: 'sawn' }),
        line(vec(25, 206.3), vec(70, 207), { id: 'notch', role: 'sawn' }),
        line(vec(70, 207), vec(70, 400), { id: 'upper', role: 'left' }),
        line(vec(70, 400), vec(0, 400), { id: 'top', role: 'sawn' }),
        line(vec(0, 400), vec(0, 0), { id: 'left', role: 'left' }),
      ],
    },
    60,
  );
  const exit = exitOfBore({ drawn, cuts: [] }, bore);
  expect(exit.on).toBe('notch');
  // The two sides of the notch are asked a ten-thousandth beside its point.
  expect(exit.reach).toBeCloseTo(25, 1);
});
