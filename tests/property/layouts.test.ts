import { expect, it } from 'vitest';
import {
  areaOfRegions,
  circleOutline,
  findFaults,
  offsetRegions,
  type Region,
  vec,
} from '../../src/geometry/index.ts';
import { type Board, checkLaid, type LayTask, searchLayout, type ToLay } from '../../src/wood/index.ts';
import { FURNITURE } from '../cases/outlines/furniture.ts';
import { type Random, randomFrom } from '../cases/outlines/random.ts';
import { polygon, strip } from '../wood/to-lay.ts';
import { FUZZ_SEED } from './fuzz.ts';

/** All thousand with LEGWRIGHT_FUZZ, a few by default. */
const SETS = Math.min(1000, Number(process.env.LEGWRIGHT_FUZZ ?? 16));

function partOf(r: Random): Region {
  const family = r.pick([...Object.keys(FURNITURE), 'rail', 'wedge']);
  if (family === 'rail') return strip(r.between(20, 120), r.between(150, 1200));
  if (family === 'wedge') {
    const wide = r.between(30, 150);
    return polygon([0, 0], [wide, 0], [wide * r.between(0.1, 0.9), r.between(200, 600)], [0, 180]);
  }
  return FURNITURE[family]!(r)[0]!;
}

function boardsOf(r: Random): Board[] {
  return Array.from({ length: r.whole(1, 3) }, (_, i) => {
    const length = r.between(700, 2600);
    const width = r.between(110, 420);
    const defects = Array.from({ length: r.whole(0, 3) }, () => {
      const at = vec(r.between(0, length), r.between(0, width));
      const round = {
        outer: circleOutline(at, r.between(5, 40), { id: 'knot', role: 'left' }, 1),
        holes: [],
      };
      return { kind: r.pick(['knot', 'split', 'sapwood'] as const), region: round };
    });
    const kind = r.next() < 0.15 ? 'sheet' : 'board';
    return { name: `B${i}`, kind, length, width, thickness: 30, defects, grain: r.between(-0.05, 0.05) };
  });
}

function taskOf(r: Random): LayTask {
  const boards = boardsOf(r);
  const allowance = r.pick([0, 2, 3, 6]);
  const toLay: ToLay[] = [];
  for (let kinds = r.whole(1, 4); kinds > 0; kinds--) {
    const region = partOf(r);
    if (findFaults([region]).length > 0) continue;
    const [blank] = offsetRegions([{ outer: region.outer, holes: [] }], allowance);
    const face = r.pick(['up', 'down', 'either'] as const);
    const names = boards.filter(() => r.next() < 0.8).map(({ name }) => name);
    for (let count = r.whole(1, 4); count > 0; count--) {
      const id = `${kinds}.${count}`;
      toLay.push({
        id,
        part: 'p',
        pieces: [id],
        region,
        blank: blank!,
        grain: Math.PI / 2,
        face,
        boards: names,
      });
    }
  }
  const rules = {
    grainWithin: r.pick([0, 0.02, 0.06]),
    between: r.pick([0, 2, 3.2]),
    allowed: ['sapwood'] as const,
  };
  return { boards, toLay, pinned: [], rules };
}

it('random parts laid on random boards lie free, by the outline kernel, and on no less wood than they cover', () => {
  const failures: string[] = [];
  let laid = 0;
  for (let seed = FUZZ_SEED; seed < FUZZ_SEED + SETS; seed++) {
    const task = taskOf(randomFrom(seed * 104_729));
    const layout = searchLayout(task, { seed, steps: 25 });
    laid += layout.lying.length;
    for (const fault of checkLaid(task.boards, task.toLay, layout.lying, task.rules)) {
      failures.push(`seed ${seed}: ${fault.id} ${fault.kind} ${fault.other ?? ''} by ${fault.measured}`);
    }
    if (layout.lying.length + layout.unlaid.length !== task.toLay.length) failures.push(`seed ${seed}: lost`);
    const covered = areaOfRegions(
      layout.lying.map(({ id }) => task.toLay.find((each) => each.id === id)!.blank),
    );
    if (layout.cost.used < covered * (1 - 1e-9)) failures.push(`seed ${seed}: less used than covered`);
    if (layout.cost.unlaid < layout.least.unlaid * (1 - 1e-9)) failures.push(`seed ${seed}: bound is wrong`);
    if (layout.unlaid.length === 0 && layout.cost.boards < layout.least.boards * (1 - 1e-9))
      failures.push(`seed ${seed}: bound of the boards is wrong`);
  }
  expect(failures).toEqual([]);
  // Two or three of a set on average, though one set may have but one; or nothing much was tested.
  expect(laid).toBeGreaterThan(SETS < 8 ? 0 : SETS);
}, 86_400_000);
