import { expect, test } from 'vitest';
import { compute } from '../../src/design/index.ts';
import type { AskedQuestion } from '../../src/web/engine/protocol.ts';
import { createRehearsal } from '../../src/web/engine/rehearsal.ts';
import { sampleDesign } from '../design/sample-design.ts';

const table = sampleDesign('stool-base', ['leg']);
const questions: readonly AskedQuestion[] = [
  { key: 'findings', question: 'findings', options: undefined },
  { key: 'sheetCount', question: 'sheetCount', options: undefined },
];

test('a rehearsal stops at once where news comes, and has done with it after a while', async () => {
  let pauses = 0;
  const rehearsal = createRehearsal(async () => {
    pauses += 1;
    if (pauses === 9) rehearsal.stop();
  });
  await rehearsal.go(table, questions);
  expect(pauses).toBe(9);
  await rehearsal.go(table, questions);
  const once = pauses;
  expect(once).toBeGreaterThan(40);
  await rehearsal.go(table, questions);
  expect(pauses).toBe(once);
});

test('a rehearsal leaves a design that cannot be used alone', async () => {
  const wrong = { ...table, parameters: { ...table.parameters, overall_height: '9 km' } };
  expect(compute(wrong).ok).toBe(false);
  let pauses = 0;
  await createRehearsal(async () => {
    pauses += 1;
  }).go(wrong, questions);
  expect(pauses).toBe(1);
});
