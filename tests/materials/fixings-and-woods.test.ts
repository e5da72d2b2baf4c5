import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import {
  equilibriumMoisture,
  INSERT_RULES,
  THREADED_INSERTS,
  USUAL_DOWELS,
  USUAL_HEIGHTS,
  USUAL_LOOSE_TENONS,
  WOODS,
  woodCalled,
} from '../../src/materials/index.ts';

describe('woods', () => {
  test('are found by name, whatever the case', () => {
    expect(woodCalled(' White OAK ')!.botanical).toBe('Quercus alba');
    expect(woodCalled('oak')).toBeUndefined();
  });

  test('are at least twenty, each once, and move more along the rings than across them', () => {
    expect(WOODS.length).toBeGreaterThanOrEqual(20);
    expect(new Set(WOODS.map(({ name }) => name)).size).toBe(WOODS.length);
    for (const { change, shrinkage } of WOODS) {
      expect(change.tangential).toBeGreaterThan(change.radial);
      expect(shrinkage.tangential).toBeGreaterThan(shrinkage.radial);
    }
  });

  test('come to more moisture in damper air, and to none in dry air', () => {
    expect(equilibriumMoisture(20, 0)).toBe(0);
    let last = -1;
    for (let percent = 0; percent <= 100; percent++) {
      const found = equilibriumMoisture(20, percent / 100);
      expect(found).toBeGreaterThan(last);
      last = found;
    }
    expect(() => equilibriumMoisture(20, 55)).toThrow(RangeError);
  });
});

describe('fixings', () => {
  test('inserts grow with their threads, and their pilots stay between thread and outside', () => {
    for (const { thread, outer, leastPilot, mostPilot } of THREADED_INSERTS) {
      expect(leastPilot).toBeGreaterThan(Number(thread.slice(1)));
      expect(mostPilot).toBeLessThan(outer);
      expect(leastPilot).toBeLessThan(mostPilot);
    }
    expect(INSERT_RULES.leftAbove.value).toBeCloseTo(25.4 / 4, 9);
  });

  test('loose tenons are five thicknesses long, dowels longer than thick', () => {
    for (const { thickness, length } of USUAL_LOOSE_TENONS) expect(length).toBe(5 * thickness);
    for (const { diameter, length } of USUAL_DOWELS) expect(length).toBeGreaterThan(2 * diameter);
  });
});

test('usual heights are in mm', () => {
  const dining = USUAL_HEIGHTS.find(({ item }) => item === 'dining table')!;
  expect([Math.round(dining.least), Math.round(dining.most)]).toEqual([711, 762]);
});

/** Every figure with a status, and every list of rows, somewhere under a source. */
function unsourced(node: unknown, path: string, hasSource: boolean): string[] {
  if (typeof node !== 'object' || node === null) return [];
  if (Array.isArray(node)) return node.flatMap((item, i) => unsourced(item, `${path}[${i}]`, hasSource));
  const own = node as Record<string, unknown>;
  const sourced = hasSource || ['source', 'sources', 'standard'].some((key) => key in own);
  const fault = 'status' in own && !sourced ? [path] : [];
  return [
    ...fault,
    ...Object.entries(own).flatMap(([key, value]) => unsourced(value, `${path}.${key}`, sourced)),
  ];
}

function statusesIn(node: unknown): string[] {
  if (typeof node !== 'object' || node === null) return [];
  return Object.entries(node).flatMap(([key, value]) =>
    /^(status|[a-z]+Status)$/.test(key) && typeof value === 'string' ? [value] : statusesIn(value),
  );
}

test.each([
  'woods',
  'moisture',
  'dowels',
  'loose-tenons',
  'threaded-inserts',
  'clearance-holes',
  'wood-screws',
  'joinery',
  'furniture',
  'statics',
])('every figure of %s says where it comes from, by a status that the table explains', (name) => {
  const folder = new URL('../../shared/tables/', import.meta.url);
  expect(readdirSync(folder)).toContain(`${name}.json`);
  const table = JSON.parse(readFileSync(new URL(`${name}.json`, folder), 'utf8'));
  expect(unsourced(table, name, false)).toEqual([]);
  const used = [...new Set(statusesIn(table))].sort();
  expect(used.length).toBeGreaterThan(0);
  expect(used).toEqual(Object.keys(table.statuses).sort());
});
