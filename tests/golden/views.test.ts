import { expect, test } from 'vitest';
import { joinBase, partsToMake } from '../../src/base/index.ts';
import { basePicture, partPictures, type Picture, pictorialOf, platesOf, sceneToSvg } from '../../src/drawing/index.ts';
import { testLettering } from '../drawing/lettering-of-tests.ts';
import { standingOf } from '../forms/standing-bases.ts';

/**
 * Whole plates as SVG, to be looked at when one changes. Numbers are rounded to 0.01 mm, and of each text only its place and its words are
 * kept.
 */
const lettering = testLettering();
const base = standingOf('raked-table');
const lengths = { unit: 'mm', decimals: 1 } as const;
const made = partsToMake(base, joinBase(base, { cutter: 12, lengths }));

const plates: readonly (readonly [string, () => readonly (readonly Picture[])[]])[] = [
  ['raked-table-front', () => [[basePicture(base, 'front')]]],
  ['raked-table-plan', () => [[basePicture(base, 'plan')]]],
  ['raked-table-pictorial', () => [[pictorialOf(base.parts)]]],
  ['raked-table-leg', () => [partPictures(made[0]!, base.parts.find(({ id }) => id === made[0]!.members[0]!.part)!)]],
];

test.each(plates)('%s is drawn as it was', async (file, rows) => {
  const title = { title: 'Raked table', documentType: 'Drawing', number: '1', revision: 'A', date: '2026-01-01' };
  const [plate] = platesOf([{ plates: [rows()] }], { lengths, page: { width: 210, height: 297 }, title });
  const svg = sceneToSvg(plate!.scene, lettering, { title: file });
  await expect(rounded(svg)).toMatchFileSnapshot(`views/${file}.svg`);
});

function rounded(svg: string): string {
  return svg
    .replace(/(<path aria-label="[^"]*" fill="[^"]*" d="M[^A-Z]*)[^"]*"/g, '$1"')
    .replace(/-?\d+\.\d+/g, (number) => String(Number(Number(number).toFixed(2)) + 0));
}
