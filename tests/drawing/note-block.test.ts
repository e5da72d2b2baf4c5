import { expect, test } from 'vitest';
import { boxOfText, uprightBounds } from '../../src/drawing/layout/oriented-box.ts';
import { noteBlock, wordRows } from '../../src/drawing/pattern/note-block.ts';

test.each([
  'Leg',
  'Long arched stretcher of the bench',
  'A part whose name runs on until it takes three lines',
])('the notes headed "%s" keep within their block', (heading) => {
  const block = noteBlock(heading, wordRows('What stands below the heading stays below its rule.'));
  const boxes = block
    .draw({ x: 0, y: 0 })
    .flatMap((mark) => (mark.kind === 'text' ? [uprightBounds(boxOfText(mark))] : []));
  expect(boxes.length).toBeGreaterThan(1);
  for (const { minX, maxX, minY, maxY } of boxes) {
    expect(minX).toBeGreaterThanOrEqual(0);
    expect(maxX).toBeLessThanOrEqual(block.width);
    expect(maxY).toBeLessThanOrEqual(0.5);
    expect(minY).toBeGreaterThanOrEqual(-block.height - 0.5);
  }
  for (const [i, box] of boxes.entries()) {
    expect(boxes.slice(i + 1).every(({ maxY }) => maxY <= box.minY + 1e-9)).toBe(true);
  }
});
