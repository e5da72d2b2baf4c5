import { expect, test } from 'vitest';
import { compute, partPictureOf } from '../../src/design/index.ts';
import { fitPicture } from '../../src/drawing/index.ts';
import { sampleDesign } from '../design/sample-design.ts';

const design = sampleDesign('curved-leg', ['leg'], 'in');
const computed = compute(design, { wanted: { patterns: [] } });
if (!computed.ok) throw new Error(computed.problems[0]?.message);
const { lengths } = computed.value;
const picture = partPictureOf(computed.value, 'leg')!;

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
  const first = fitPicture(picture, { room, lengths });
  const a = fitPicture(picture, { room: { width: 175, height: 170 }, lengths, near: first });
  expect(a.scale).toBe(first.scale);
  const b = fitPicture(picture, { room: { width: 85, height: 80 }, lengths, near: first });
  expect(b.scale).toBeLessThan(first.scale);
});

test('where all its figures would leave the wood too small to be seen, the last of them are left out, and told', () => {
  const room = { width: 90, height: 80 };
  const { core, laid, left, shown } = fitPicture(picture, { room, lengths });
  expect(
    Math.max((core.maxX - core.minX) / room.width, (core.maxY - core.minY) / room.height),
  ).toBeGreaterThan(0.5);
  expect(shown).toBeLessThan(picture.dimensions.length);
  expect(laid.length).toBeLessThanOrEqual(shown);
  expect(left.map(({ dimension }) => dimension)).toEqual(
    expect.arrayContaining(picture.dimensions.slice(shown)),
  );
});

test('in a room that is too small for all its figures it is drawn all the same', () => {
  expect(fitPicture(picture, { room: { width: 30, height: 30 }, lengths }).marks.length).toBeGreaterThan(0);
});
