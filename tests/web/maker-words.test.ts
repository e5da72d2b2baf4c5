import { expect, test } from 'vitest';
import furniture from '../../shared/tables/furniture.json';
import statics from '../../shared/tables/statics.json';
import { USUAL_YEAR } from '../../src/base/index.ts';
import { usualRoom } from '../../src/design/index.ts';

test('the air of the year that the fields show is the one that movement is reckoned with', () => {
  const { dry, damp } = usualRoom();
  const read = (air: typeof dry) => [
    Number.parseFloat(`${air.temperature}`),
    Number.parseFloat(`${air.humidity}`) / 100,
  ];
  expect(read(dry)).toEqual([USUAL_YEAR.dry.celsius, USUAL_YEAR.dry.humidity]);
  expect(read(damp)).toEqual([USUAL_YEAR.damp.celsius, USUAL_YEAR.damp.humidity]);
});

test('sources that a finding tells a maker hold no notes of how they were found', () => {
  expect(JSON.stringify([furniture.heights, statics])).not.toMatch(/\(read\)|, read\)/);
  expect(JSON.stringify(furniture)).not.toMatch(/\(read\)|, read\)/);
});
