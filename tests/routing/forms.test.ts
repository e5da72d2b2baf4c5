import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { checkPart } from '../../src/checks/index.ts';
import { areaOfRegions, findFaults, subtractRegions } from '../../src/geometry/index.ts';
import { routePart } from '../../src/routing/index.ts';
import { evaluateForm, readForm } from '../../src/sketch/index.ts';
import { bearingTooling, bushingTooling } from './support/parts.ts';

const folder = new URL('../../templates/', import.meta.url);
const forms = readdirSync(folder).filter((name) => name.endsWith('.yaml'));
const blades = [6, 10, 13, 19].map((width) => ({ width }));

/** The parts of a form at its defaults. */
function partsOf(file: string) {
  const form = readForm(readFileSync(new URL(file, folder), 'utf8'), file);
  if (!form.ok) throw new Error(form.problems[0]!.message);
  const sketch = evaluateForm(form.value, {});
  if (!sketch.ok) throw new Error(sketch.problems[0]!.message);
  return sketch.value.parts;
}

describe.each(forms)('%s at its defaults', (file) => {
  const tools = [
    [
      'a 12.7 mm pattern cutter',
      bearingTooling(12.7, { cutter: { diameter: 12.7, cuttingLength: 50 }, blades }),
    ],
    [
      'a 10 mm cutter in a 20 mm bushing',
      bushingTooling(10, 20, { cutter: { diameter: 10, cuttingLength: 50 }, blades }),
    ],
  ] as const;

  test.each(tools)('is routed exactly with %s', (_words, tooling) => {
    for (const part of partsOf(file)) {
      const routing = routePart(part, tooling);
      expect(routing.differences).toEqual([]);
      expect(routing.template).toHaveLength(1);
      expect(findFaults([...routing.template]).concat(findFaults(routing.asRouted))).toEqual([]);
      expect(areaOfRegions(routing.asRouted)).toBeCloseTo(areaOfRegions([part.region]), 3);
      expect(areaOfRegions(subtractRegions([part.region], routing.blank))).toBeLessThan(1e-6);
      expect(routing.fixings.length).toBeGreaterThan(0);
      expect(routing.blade).toBeDefined();
    }
  });

  test.each(tools)('has no finding that stops the work with %s', (_words, tooling) => {
    for (const part of partsOf(file)) {
      const stops = checkPart(part, routePart(part, tooling)).filter(({ severity }) => severity === 'stop');
      expect(stops).toEqual([]);
    }
  });
});
