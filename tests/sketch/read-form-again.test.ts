import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readForm } from '../../src/sketch/index.ts';

test('a form read once more is the very same, but for the file that it is called by', () => {
  const text = `${readFileSync('templates/splayed-leg.yaml', 'utf8')}# not read before\n`;
  const [first, again, other] = ['a.yaml', 'a.yaml', 'b.yaml'].map((file) => readForm(text, file));
  if (!first?.ok || !again?.ok || !other?.ok) throw new Error('the form can be read');
  expect(again.value).toBe(first.value);
  expect(other.value).toEqual({ ...first.value, file: 'b.yaml' });
  const wrong = readForm(`${text}\nmore: 1\n`, 'c.yaml');
  expect(wrong.ok).toBe(false);
});
