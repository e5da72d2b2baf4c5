import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { headOfForm, readForm } from '../../src/sketch/index.ts';

const FOLDER = new URL('../../templates/', import.meta.url);

test('every form says of itself at its head what it says when it is read whole', () => {
  const files = readdirSync(FOLDER).filter((name) => name.endsWith('.yaml'));
  expect(files.length).toBeGreaterThan(10);
  for (const file of files) {
    const text = readFileSync(new URL(file, FOLDER), 'utf8');
    const read = readForm(text, file);
    if (!read.ok) throw new Error(`${file} cannot be read`);
    const { title, about } = read.value;
    expect(headOfForm(text)).toEqual({ title, about });
  }
});

test('what is no form has no head', () => {
  for (const text of ['', 'title: [', 'title: Leg\nparameters:\n', '- a\n- b\n'])
    expect(headOfForm(text)).toBeUndefined();
});

test('a form read once more is the very same, but for the file that it is called by', () => {
  const text = `${readFileSync(new URL('splayed-leg.yaml', FOLDER), 'utf8')}# not read before\n`;
  const [first, again, other] = ['a.yaml', 'a.yaml', 'b.yaml'].map((file) => readForm(text, file));
  if (!first?.ok || !again?.ok || !other?.ok) throw new Error('the form can be read');
  expect(again.value).toBe(first.value);
  expect(other.value).toEqual({ ...first.value, file: 'b.yaml' });
  const wrong = readForm(`${text}\nmore: 1\n`, 'c.yaml');
  expect(wrong.ok).toBe(false);
});
