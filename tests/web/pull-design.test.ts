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
    kept: ['Overall height'],
  });
});

test('nothing is pulled of a design whose form does not have the point', () => {
  const { pull } = createPuller();
  const design = sampleDesign('splayed-leg', ['leg']);
  expect(
    pull(design, { handle: 'height_of_nothing', of: { part: 'leg' }, to: { x: 0, y: 0 }, end: true }),
  ).toBeUndefined();
});
