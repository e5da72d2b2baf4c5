import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Box, Edge } from '../../src/geometry/index.ts';
import {
  circleOutline,
  clipEdges,
  distance,
  lengthOf,
  line,
  nearestOnEdges,
  pointAt,
  polygonOutline,
} from '../../src/geometry/index.ts';
import { bulged, outlineArbitrary, TAG, tagged } from './random-outlines.ts';

const box: Box = { minX: 0, minY: 0, maxX: 200, maxY: 150 };
const total = (edges: readonly Edge[]): number => edges.reduce((sum, e) => sum + lengthOf(e), 0);

describe('clipping edges to an upright box', () => {
  it('keeps whole what lies inside, and drops what lies outside', () => {
    const inside = circleOutline({ x: 50, y: 50 }, 20, TAG);
    expect(clipEdges(inside.edges, box)).toEqual([inside.edges]);
    expect(clipEdges(circleOutline({ x: 500, y: 50 }, 20, TAG).edges, box)).toEqual([]);
  });

  it('cuts a line where it crosses the border, and keeps its tag', () => {
    const cut = clipEdges([line({ x: -100, y: 75 }, { x: 300, y: 75 }, tagged('rail'))], box);
    expect(cut).toEqual([[line({ x: 0, y: 75 }, { x: 200, y: 75 }, tagged('rail'))]]);
  });

  it('cuts a circle across a corner into one chain through its start', () => {
    const chains = clipEdges(circleOutline({ x: 180, y: 150 }, 10, TAG).edges, box);
    expect(chains).toHaveLength(1);
    expect(total(chains[0]!)).toBeCloseTo(10 * Math.PI, 9);
    const round = clipEdges(circleOutline({ x: 0, y: 75 }, 10, TAG).edges, box);
    expect(round).toHaveLength(1);
    expect(round[0]!.at(0)!.from).toEqual({ x: 0, y: 65 });
    expect(round[0]!.at(-1)!.to).toEqual({ x: 0, y: 85 });
  });

  it('keeps an edge that runs along the border, and gives nothing for a touch from outside', () => {
    const along = line({ x: 200, y: -20 }, { x: 200, y: 90 }, TAG);
    expect(clipEdges([along], box)).toEqual([[line({ x: 200, y: 0 }, { x: 200, y: 90 }, TAG)]]);
    expect(clipEdges(circleOutline({ x: 220, y: 50 }, 20, TAG).edges, box)).toEqual([]);
    expect(clipEdges([line({ x: -10, y: 10 }, { x: 10, y: -10 }, TAG)], box)).toEqual([]);
  });

  it('leaves whole a circle that touches the border from inside', () => {
    const circle = circleOutline({ x: 180, y: 50 }, 20, TAG);
    expect(clipEdges(circle.edges, box)).toEqual([circle.edges]);
  });

  it('joins the end of a loop to its start', () => {
    const plate = polygonOutline(
      [
        { x: 50, y: 50 },
        { x: 300, y: 50 },
        { x: 300, y: 100 },
        { x: 50, y: 100 },
      ],
      TAG,
    );
    const chains = clipEdges(plate.edges, box);
    expect(chains).toHaveLength(1);
    expect(chains[0]!.map((e) => e.to)).toEqual([
      { x: 50, y: 100 },
      { x: 50, y: 50 },
      { x: 200, y: 50 },
    ]);
  });

  it('breaks the chain where an arc leaves the box and comes back', () => {
    const chains = clipEdges([bulged({ x: 20, y: 10 }, { x: 180, y: 10 }, 0.5)], box);
    expect(chains).toHaveLength(2);
    expect(chains.flat().every((e) => e.kind === 'arc' && e.turn === 1)).toBe(true);
  });

  it('over a grid of boxes loses nothing and doubles nothing', () => {
    fc.assert(
      fc.property(outlineArbitrary(), fc.double({ min: 40, max: 170, noNaN: true }), (outline, size) => {
        const chains: Edge[][] = [];
        for (let i = -12; i < 12; i++) {
          for (let j = -12; j < 12; j++) {
            // A shift keeps random lines off the borders, where both neighbours would keep them.
            const minX = i * size + 0.123;
            const minY = j * size + 0.456;
            const cell = { minX, minY, maxX: minX + size, maxY: minY + size };
            const inCell = clipEdges(outline.edges, cell);
            for (const e of inCell.flat()) {
              for (const t of [0, 0.3, 0.5, 1]) {
                const p = pointAt(e, t);
                expect(p.x).toBeGreaterThan(cell.minX - 2e-7);
                expect(p.x).toBeLessThan(cell.maxX + 2e-7);
                expect(p.y).toBeGreaterThan(cell.minY - 2e-7);
                expect(p.y).toBeLessThan(cell.maxY + 2e-7);
              }
            }
            chains.push(...inCell);
          }
        }
        expect(total(chains.flat())).toBeCloseTo(total(outline.edges), 5);
        for (const chain of chains) {
          for (const [k, e] of chain.entries()) {
            if (k > 0) expect(distance(chain[k - 1]!.to, e.from)).toBeLessThan(2e-7);
            const origin = outline.edges.find(({ tag }) => tag.id === e.tag.id)!;
            expect(nearestOnEdges([origin], pointAt(e, 0.5)).distance).toBeLessThan(1e-7);
          }
        }
      }),
      { numRuns: 20 },
    );
  });
});
