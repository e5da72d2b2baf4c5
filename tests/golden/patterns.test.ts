import { expect, test } from 'vitest';
import { drawPattern, type PatternOptions, sceneToSvg } from '../../src/drawing/index.ts';
import { PATTERN_CASES } from '../cases/pattern-cases.ts';
import { testLettering } from '../drawing/lettering-of-tests.ts';
import { patternOptions } from '../drawing/pattern-options.ts';

/**
 * Whole patterns as SVG, to be looked at when one changes. Numbers are rounded to 0.01 mm, and of each text only its
 * place and its words are kept, so that an engine's last bit or a font's contour changes nothing.
 */
const drawings: readonly (readonly [string, string, Partial<PatternOptions>])[] = [
  ['splayed-leg', 'splayed-leg', {}],
  ['splayed-leg-mirrored', 'splayed-leg', { mirrored: true, lengths: { unit: 'in', denominator: 32 } }],
  ['panel-leg-template', 'panel-leg', { view: 'template' }],
  ['arched-stretcher-part', 'arched-stretcher', { view: 'part' }],
  ['knee-leg', 'knee-leg', {}],
];

const lettering = testLettering();

test.each(drawings)('%s is drawn as it was', async (file, name, options) => {
  const { part, routing } = PATTERN_CASES[name]!();
  const pattern = drawPattern(part, routing, { ...patternOptions(), ...options });
  const svg = sceneToSvg(pattern.withNotes, lettering, { title: pattern.title });
  await expect(rounded(svg)).toMatchFileSnapshot(`patterns/${file}.svg`);
});

function rounded(svg: string): string {
  return svg
    .replace(/(<path aria-label="[^"]*" fill="[^"]*" d="M[^A-Z]*)[^"]*"/g, '$1"')
    .replace(/-?\d+\.\d+/g, (number) => String(Number(Number(number).toFixed(2)) + 0));
}
