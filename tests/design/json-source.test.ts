import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { placeOfValue, readJson } from '../../src/design/json-source.ts';

const read = (text: string) => readJson(text, 'a.json');

function problemOf(text: string) {
  const result = read(text);
  if (result.ok) throw new Error('expected a problem');
  return result.problems[0]!;
}

describe('reading JSON with places', () => {
  it('gives the value that the built-in reader gives', () => {
    fc.assert(
      fc.property(fc.jsonValue(), fc.constantFrom(undefined, 1, '\t'), (value, indent) => {
        const text = JSON.stringify(value, null, indent);
        // The built-in reader makes `__proto__` a name like any other; ours refuses it.
        if (text.includes('__proto__')) return;
        const result = read(text);
        expect(result.ok && result.value.value).toEqual(JSON.parse(text));
      }),
    );
  });

  it('refuses what the built-in reader refuses', () => {
    fc.assert(
      fc.property(
        fc.json({ maxDepth: 3 }),
        fc.nat(),
        fc.constantFrom('{', '}', ',', '"', ':', '\\', 'x', '01', '\n', "'"),
        (text, at, sign) => {
          const place = at % (text.length + 1);
          const damaged = text.slice(0, place) + sign + text.slice(place + 1);
          let sound = true;
          try {
            JSON.parse(damaged);
          } catch {
            sound = false;
          }
          const result = read(damaged);
          const refusedByUsOnly =
            !result.ok && ['json.repeated-name', 'json.refused-name'].includes(result.problems[0]!.code);
          expect(result.ok || refusedByUsOnly).toBe(sound || refusedByUsOnly);
        },
      ),
      { numRuns: 500 },
    );
  });

  it('knows where every value stands', () => {
    const result = read('{\n  "a": [1,\n    {"b": true}]\n}');
    if (!result.ok) throw new Error('expected a value');
    expect(placeOfValue(result.value, ['a'])).toEqual({ line: 2, column: 8 });
    expect(placeOfValue(result.value, ['a', 1, 'b'])).toEqual({ line: 3, column: 11 });
    // One that is missing stands where the value round it stands.
    expect(placeOfValue(result.value, ['a', 1, 'c'])).toEqual({ line: 3, column: 5 });
  });

  it.each([
    ['{"a": 1,}', 1, 9, 'a name in double quotes'],
    ['{"a": 1 "b": 2}', 1, 9, '"," or "}" after the value'],
    ['{\n"a" 1}', 2, 5, '":" after the name'],
    ['[1, 2', 1, 6, '"," or "]" after the value'],
    ['{"a": 01}', 1, 7, 'a value'],
    ["{'a': 1}", 1, 2, 'a name in double quotes'],
    ['["a\nb"]', 1, 2, 'a closing double quote on the same line'],
    ['{} {}', 1, 4, 'the end of the file'],
    ['', 1, 1, 'a value'],
  ])('says of %j where it breaks and what should stand there', (text, line, column, expected) => {
    expect(problemOf(text)).toMatchObject({ code: 'json.unexpected', line, column, expected });
  });

  it('refuses a name that stands twice in one object, at its second place', () => {
    expect(problemOf('{"a": 1,\n "a": 2}')).toMatchObject({ code: 'json.repeated-name', line: 2, column: 2 });
  });

  it('refuses names that could reach into the program', () => {
    expect(problemOf('{"__proto__": {"polluted": true}}').code).toBe('json.refused-name');
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });

  it('refuses endless nesting without exhausting the stack', () => {
    expect(problemOf('['.repeat(1_000_000)).code).toBe('json.too-deep');
  });

  it('looks for the end of each line once, however long the line is', () => {
    const search = vi.spyOn(String.prototype, 'indexOf');
    try {
      expect(read(`[${'1,'.repeat(5000)}\n2]`).ok).toBe(true);
      expect(search.mock.calls.length).toBeLessThan(10);
    } finally {
      search.mockRestore();
    }
  });
});
