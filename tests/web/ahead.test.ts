import { expect, test } from 'vitest';
import { compute, type Design, lookAtDesign, type Memo } from '../../src/design/index.ts';
import { createAhead } from '../../src/web/engine/ahead.ts';
import { type PictureOptions, picture } from '../../src/web/engine/answers/picture.ts';
import type { AskedQuestion } from '../../src/web/engine/protocol.ts';
import { sampleDesign } from '../design/sample-design.ts';

const stool = sampleDesign('stool-base', ['leg']);
const ofHeight = (height: string): Design => ({
  ...stool,
  parameters: { ...stool.parameters, overall_height: height },
});
const front: PictureOptions = { of: { side: 'front' }, room: { width: 200, height: 150 }, letters: 2.5 };
const questions: readonly AskedQuestion[] = [
  { key: 'front', question: 'picture', options: front },
  { key: 'findings', question: 'findings', options: undefined },
  { key: 'sheetCount', question: 'sheetCount', options: undefined },
];

test('what was gone through ahead is known once it is asked, and is what it would be without', async () => {
  const memo: Memo = new Map();
  const coming = ofHeight('441.7 mm');
  const answers = await createAhead(() => Promise.resolve()).goThrough(coming, questions, memo);
  expect([...(answers?.keys() ?? [])].toSorted()).toEqual(['findings', 'front', 'sheetCount']);
  const before = new Map([...memo].map(([step, kept]) => [step, kept[0]]));
  const asked = structuredClone(coming);
  const looked = lookAtDesign(asked, ['front'], memo);
  const computed = compute(asked, { memo, wanted: { standing: false } });
  // No step found anything new.
  expect([...memo].filter(([step, kept]) => before.get(step) !== kept[0]).map(([step]) => step)).toEqual([]);
  const cold = compute(coming, { wanted: { standing: false } });
  if (!looked.ok || !computed.ok || !cold.ok) throw new Error('the stool cannot be computed');
  expect(computed.value.findings).toEqual(cold.value.findings);
  expect(computed.value.patterns.map(({ plan }) => plan)).toEqual(
    cold.value.patterns.map(({ plan }) => plan),
  );
});

test('it stops where news comes', async () => {
  let pauses = 0;
  const ahead = createAhead(async () => {
    pauses += 1;
    if (pauses === 5) ahead.stop();
  });
  expect(await ahead.goThrough(ofHeight('443.1 mm'), questions, new Map())).toBeUndefined();
  expect(pauses).toBe(5);
});

test('a picture that nobody saw does not change the scale of the next one', () => {
  const scaleAt = (height: string, isAhead: boolean): number | undefined => {
    const looked = lookAtDesign(ofHeight(height), ['front'], new Map());
    if (!looked.ok) throw new Error(looked.problems[0]?.message);
    const from = { design: stool, looked: looked.value, computed: undefined, isAhead };
    return picture(from, front)?.scale;
  };
  const shown = scaleAt('430 mm', false);
  // Far taller: drawn for itself it takes another scale.
  expect(scaleAt('679 mm', true)).not.toBe(shown);
  expect(scaleAt('431 mm', false)).toBe(shown);
});
