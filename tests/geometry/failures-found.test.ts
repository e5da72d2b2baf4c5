import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import {
  areaOfRegions,
  type FillRule,
  findFaults,
  polygonOutline,
  regionsFromLoops,
} from '../../src/geometry/index.ts';

interface Case {
  readonly title: string;
  readonly operation: 'regionsFromLoops';
  readonly rule: FillRule;
  readonly loops: readonly (readonly (readonly [number, number])[])[];
  readonly expectedArea: number;
}

const folder = new URL('../cases/failures-found/', import.meta.url);
const cases = readdirSync(folder).map(
  (file): Case => JSON.parse(readFileSync(new URL(file, folder), 'utf8')),
);

describe('loops that once came out wrong', () => {
  test.each(cases)('$title', ({ rule, loops, expectedArea }) => {
    const outlines = loops.map((points) =>
      polygonOutline(
        points.map(([x, y]) => ({ x, y })),
        { id: 'edge', role: 'routed' },
      ),
    );
    const regions = regionsFromLoops(outlines, rule);
    expect(findFaults(regions)).toEqual([]);
    expect(areaOfRegions(regions)).toBeCloseTo(expectedArea, 3);
  });
});
