import { expect, test } from 'vitest';
import { compute, pictureOf } from '../../src/design/index.ts';
import { fitPicture } from '../../src/drawing/index.ts';
import { sampleDesign } from '../design/sample-design.ts';

const design = sampleDesign('splayed-leg', ['leg'], 'in');
const computed = compute(design, { wanted: { patterns: [] } });
if (!computed.ok) throw new Error(computed.problems[0]?.message);
const { lengths } = computed.value;
const picture = pictureOf(computed.value, { part: 'leg' })!;

const taken = ({ box }: ReturnType<typeof fitPicture>) => ({
  width: box.maxX - box.minX,
  height: box.maxY - box.minY,
});

test('a picture with its figures fills the room that there is, on a screen as on a phone', () => {
  for (const room of [
    { width: 170, height: 165 },
    { width: 90, height: 110 },
  ]) {
    const { width, height } = taken(fitPicture(picture, { room, lengths }));
    expect(width).toBeLessThanOrEqual(room.width);
    expect(height).toBeLessThanOrEqual(room.height);
    expect(Math.max(width / room.width, height / room.height)).toBeGreaterThan(0.85);
  }
});

test('it stays as large as it was while it still fits well', () => {
  const room = { width: 170, height: 165 };
  const { scale } = fitPicture(picture, { room, lengths });
  const a = fitPicture(picture, { room: { width: 175, height: 170 }, lengths, near: scale });
  expect(a.scale).toBe(scale);
  const b = fitPicture(picture, { room: { width: 85, height: 80 }, lengths, near: scale });
  expect(b.scale).toBeLessThan(scale);
});

test('in a room that is too small for all its figures it is drawn all the same', () => {
  expect(fitPicture(picture, { room: { width: 30, height: 30 }, lengths }).laid.length).toBeGreaterThan(0);
});
