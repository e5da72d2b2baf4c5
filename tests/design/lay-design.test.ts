import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  type Computed,
  compute,
  type Design,
  figuresOfDesign,
  layDesign,
  layoutOfDesign,
  readDesign,
} from '../../src/design/index.ts';
import { boundsOfRegions, project, vec } from '../../src/geometry/index.ts';

const READ = readDesign(readFileSync('demo/long-table.json', 'utf8'), 'long-table.json');
if (!READ.ok) throw new Error(JSON.stringify(READ.problems));
const { design: TABLE } = READ.value;

/** The long table with its legs at a place on board A, which has a photograph of 2 pixels a millimetre. */
function tableWith(x: string): Design {
  const wood = TABLE.wood!;
  const photograph = {
    file: 'a.jpg',
    face: 'upper',
    points: [
      { pixel: [100, 600], on: ['0 mm', '0 mm'] },
      { pixel: [4100, 600], on: ['2000 mm', '0 mm'] },
    ],
  } as const;
  const boards = wood.boards!.map((board) =>
    board.name === 'A' ? { ...board, photographs: [photograph] } : board,
  );
  const leg = { board: 'A', part: 'leg', x, y: '40 mm', pinned: true } as const;
  return { ...TABLE, wood: { ...wood, boards, placements: [leg] } };
}

function computed(design: Design): Computed {
  const found = compute(design, { wanted: { patterns: [] } });
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  return found.value;
}

function figuresAt(x: string) {
  const table = computed(tableWith(x));
  const layout = layoutOfDesign(table);
  if (!layout.ok) throw new Error(JSON.stringify(layout.problems));
  return figuresOfDesign(table, layout.value);
}

describe('the figure that the legs of a design will carry', () => {
  const { figures, faults } = figuresAt('160 mm');

  it('is on every leaf, every second one turned over, all from one place of the board', () => {
    expect(faults).toEqual([]);
    expect(figures.map(({ figure }) => figure.mirrored).sort()).toEqual([false, false, true, true]);
    for (const { figure } of figures) {
      const seen = figure.region.outer.edges.map(({ from }) => project(from, figure.toPixels)!);
      const [minX, maxX] = [Math.min(...seen.map(({ x }) => x)), Math.max(...seen.map(({ x }) => x))];
      // Laid 160 mm from the marked end: 420 pixels from the left of the picture.
      expect(minX).toBeCloseTo(420, 4);
      const box = boundsOfRegions([figure.region]);
      expect(maxX - minX).toBeGreaterThan(0.9 * 2 * Math.max(box.maxX - box.minX, box.maxY - box.minY));
    }
  });

  it('moves as the pattern is moved on the board', () => {
    const moved = figuresAt('190 mm').figures;
    const at = vec(10, 10);
    for (const [i, { figure }] of figures.entries()) {
      const [before, after] = [project(at, figure.toPixels)!, project(at, moved[i]!.figure.toPixels)!];
      expect(after.x - before.x).toBeCloseTo(60, 6);
      expect(after.y).toBeCloseTo(before.y, 6);
    }
  });
});

describe('the layout of a design', () => {
  it('gives all leaves of a resawn board one place, and nothing else from that board', () => {
    const laid = layDesign(computed(tableWith('160 mm')), { steps: 20 });
    if (!laid.ok) throw new Error(JSON.stringify(laid.problems));
    const { layout, design } = laid.value;
    const onA = layout.lying.filter(({ board }) => board === 'A');
    expect(onA).toHaveLength(1);
    expect(layout.toLay.find(({ id }) => id === onA[0]!.id)!.pieces).toHaveLength(4);
    expect(layout.faults).toEqual([]);
    expect(design.wood!.placements![0]).toEqual(tableWith('160 mm').wood!.placements![0]);
    expect(layout.lying.length + layout.unlaid.length).toBe(layout.toLay.length);
  });

  it('says what of boards and places cannot be read', () => {
    const boards = [
      {
        ...TABLE.wood!.boards![1]!,
        length: 'long',
        defects: [
          {
            kind: 'knot' as const,
            points: [
              [0, 0],
              [100, 50],
              [100, 0],
              [0, 50],
            ] as [number, number][],
          },
        ],
      },
    ];
    const table = computed(tableWith('160 mm'));
    const layout = layoutOfDesign({ ...table, design: { ...table.design, wood: { boards } } });
    expect(layout.ok ? [] : layout.problems.map(({ path }) => path)).toEqual(
      expect.arrayContaining(['wood.boards.0.length']),
    );
    const crossed = layoutOfDesign({
      ...table,
      design: { ...table.design, wood: { boards: [{ ...boards[0]!, length: '2 m' }] } },
    });
    expect(crossed).toMatchObject({ ok: false, problems: [{ code: 'design.crossing-defect' }] });
  });
});
