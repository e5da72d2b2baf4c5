import { expect, test } from 'vitest';
import { createPuller } from '../../src/web/engine/pull-design.ts';
import { sampleDesign } from '../design/sample-design.ts';

test('a point of a base let go in a view leaves figures such as a maker types, one step beyond another', () => {
  const { pull } = createPuller();
  const design = sampleDesign('shallow-v-trestle', ['leg']);
  const to = { x: 0, y: 708 };
  const first = pull(design, { handle: 'height', of: { side: 'front' }, to, end: true });
  // The underside of the top is 28 mm below its upper face.
  expect(first?.to).toEqual({ parameters: { overall_height: '736 mm' }, reached: true, kept: [] });
  const next = pull(first!.design, {
    handle: 'height',
    of: { side: 'front' },
    to: { x: 0, y: 709 },
    end: true,
  });
  expect(next?.to.parameters).toEqual({ overall_height: '737 mm' });
});

test('a point goes no farther than its parameter does, and says what keeps it', () => {
  const { pull } = createPuller();
  const design = sampleDesign('shallow-v-trestle', ['leg']);
  const far = pull(design, { handle: 'height', of: { side: 'front' }, to: { x: 0, y: 2000 }, end: true });
  expect(far?.to).toEqual({
    parameters: { overall_height: '780 mm' },
    reached: false,
    kept: ['780 mm is the most'],
  });
});

test('nothing is pulled of a design whose form does not have the point', () => {
  const { pull } = createPuller();
  const design = sampleDesign('splayed-leg', ['leg']);
  expect(
    pull(design, { handle: 'height_of_nothing', of: { part: 'leg' }, to: { x: 0, y: 0 }, end: true }),
  ).toBeUndefined();
});

test('what keeps a belly down is the end of its own range, not a limit that it is far from', () => {
  const { pull } = createPuller();
  const leg = sampleDesign('curved-leg', ['leg']);
  const down = pull(leg, { handle: 'belly', of: { part: 'leg' }, to: { x: 60, y: 100 }, end: true });
  expect(down?.to.kept).toContain('Height of the belly: 0.4 is the least');
  expect(down?.to.kept.filter((each) => each.includes('too near the ankle'))).toEqual([]);
});
