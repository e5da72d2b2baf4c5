import { expect, it } from 'vitest';
import { circleOutline, vec } from '../../src/geometry/index.ts';
import { checkLaid, type LayTask, searchLayout } from '../../src/wood/index.ts';
import { boardOf, CLOSE, layOf, polygon, strip } from './to-lay.ts';

const taskOf = (task: Partial<LayTask>): LayTask => ({
  boards: [boardOf(1000, 200)],
  toLay: [],
  pinned: [],
  rules: CLOSE,
  ...task,
});

const faultsOf = (task: LayTask, seed = 1, steps = 400) => {
  const layout = searchLayout(task, { seed, steps });
  return { layout, faults: checkLaid(task.boards, task.toLay, layout.lying, task.rules) };
};

it('four strips that just fill a board fill it, and no layout is better', () => {
  const toLay = ['a', 'b', 'c', 'd'].map((id) => layOf(id, strip(100, 500)));
  const { layout, faults } = faultsOf(taskOf({ toLay }));
  expect(layout).toMatchObject({ unlaid: [], ended: 'best', cost: { used: 200_000 } });
  expect(faults).toEqual([]);
});

it('what is a hair too long finds no room', () => {
  const toLay = ['a', 'b', 'c'].map((id) => layOf(id, strip(100, 500.01)));
  const { layout } = faultsOf(taskOf({ toLay }));
  expect(layout.unlaid).toHaveLength(1);
  expect(layout.cost.unlaid).toBeCloseTo(50_001, 6);
});

it('unlike strips fill a board that only one way of cutting fills', () => {
  // 600 + 400 above, 300 + 700 below; 120 and 80 wide.
  const sizes: [string, number, number][] = [
    ['a', 120, 600],
    ['b', 120, 400],
    ['c', 80, 300],
    ['d', 80, 700],
  ];
  const toLay = sizes.map(([id, wide, long]) => layOf(id, strip(wide, long)));
  const { layout, faults } = faultsOf(taskOf({ toLay }), 3, 2000);
  expect(layout).toMatchObject({ unlaid: [], ended: 'best' });
  expect(faults).toEqual([]);
});

it('two tapered legs lie head to tail where their sloping sides meet, without a gap', () => {
  const leg = polygon([0, 0], [40, 0], [120, 600], [0, 600]);
  const boards = [boardOf(600, 160)];
  const toLay = ['a', 'b'].map((id) => layOf(id, leg));
  const { layout, faults } = faultsOf(taskOf({ boards, toLay }));
  expect(layout).toMatchObject({ unlaid: [], ended: 'best', cost: { used: 96_000 } });
  expect(faults).toEqual([]);
  const [a, b] = layout.lying;
  expect(Math.abs(a!.turned - b!.turned)).toBeCloseTo(Math.PI, 9);
});

it('a leg that may lie either face up is turned over where that saves wood', () => {
  // A right-angled piece: two make a rectangle only if one is turned by a half turn; mirrored ones do not.
  const left = polygon([0, 0], [100, 0], [0, 400]);
  const right = polygon([0, 0], [100, 0], [100, 400]);
  const boards = [boardOf(400, 100)];
  const wrong = [layOf('a', left), layOf('b', right)];
  expect(searchLayout(taskOf({ boards, toLay: wrong }), { seed: 1 }).unlaid).toHaveLength(1);
  const free = wrong.map((each) => ({ ...each, face: 'either' as const }));
  expect(searchLayout(taskOf({ boards, toLay: free }), { seed: 1 }).unlaid).toEqual([]);
});

it('a strip leans within its grain only as far as it may', () => {
  // Between two knots there is a lane at 2°.
  const lean = Math.tan(Math.PI / 90);
  const low = polygon([0, 0], [1000, 0], [1000, 40 + 1000 * lean], [0, 40]);
  const high = polygon([0, 104], [1000, 104 + 1000 * lean], [1000, 200], [0, 200]);
  const boards = [
    boardOf(1000, 200, {
      defects: [
        { kind: 'sapwood', region: low },
        { kind: 'knot', region: high },
      ],
    }),
  ];
  const toLay = [layOf('a', strip(60, 900))];
  const leaning = taskOf({ boards, toLay, rules: { ...CLOSE, grainWithin: (2.01 * Math.PI) / 180 } });
  const { layout, faults } = faultsOf({ ...leaning, rules: { ...leaning.rules, grainWithin: Math.PI / 90 } });
  expect(layout.unlaid).toEqual([]);
  expect(faults).toEqual([]);
  expect(faultsOf({ ...leaning, rules: CLOSE }).layout.unlaid).toEqual(['a']);
  expect(faultsOf({ ...leaning, rules: { ...CLOSE, allowed: ['sapwood'] } }).layout.unlaid).toEqual([]);
});

it('the saw allowance keeps off neighbours and edges, the part itself off knots', () => {
  const region = strip(80, 400);
  const blank = polygon([-10, -10], [90, -10], [90, 410], [-10, 410]);
  const knot = {
    kind: 'knot',
    region: { outer: circleOutline(vec(210, 101), 10, { id: 'k', role: 'left' }, 1), holes: [] },
  } as const;
  const task = taskOf({
    boards: [boardOf(421, 202, { defects: [knot] })],
    toLay: ['a', 'b'].map((id) => layOf(id, region, { blank })),
    rules: { ...CLOSE, between: 2 },
  });
  const { layout, faults } = faultsOf(task);
  expect(layout.unlaid).toEqual([]);
  expect(faults).toEqual([]);
  expect(layout.lying.map(({ at }) => Math.round(at.y * 1e6) / 1e6).sort((p, q) => p - q)).toEqual([10, 112]);
});

it('of boards that hold everything the cheapest are cut into', () => {
  const price = (amount: number) => ({ price: { amount, per: 'piece' as const } });
  const boards = [
    boardOf(1000, 200, { name: 'A', ...price(90) }),
    boardOf(520, 200, { name: 'B', ...price(30) }),
    boardOf(520, 200, { name: 'C', ...price(35) }),
  ];
  const toLay = ['a', 'b', 'c', 'd'].map((id) => layOf(id, strip(100, 500), { boards: ['A', 'B', 'C'] }));
  const { layout } = faultsOf(taskOf({ boards, toLay }));
  expect(layout.cost.boards).toBe(65);
  expect(new Set(layout.lying.map(({ board }) => board))).toEqual(new Set(['B', 'C']));
});

it('what was laid by hand stays, and the rest goes round it', () => {
  const toLay = ['a', 'b', 'c'].map((id) => layOf(id, strip(100, 450)));
  const pinned = [{ id: 'b', board: 'A', at: vec(300, 50), turned: 0, mirrored: false }];
  const { layout, faults } = faultsOf(taskOf({ toLay, pinned }));
  expect(layout.lying).toContainEqual(pinned[0]);
  expect(layout.unlaid).toHaveLength(2);
  expect(faults).toEqual([]);
});

it('the same seed gives the same layout; stopped at once nothing is laid, and it says so', () => {
  const toLay = Array.from({ length: 7 }, (_, i) =>
    layOf(`p${i}`, polygon([0, 0], [30 + 7 * i, 0], [50, 200 + 20 * i], [0, 180])),
  );
  const task = taskOf({ toLay, rules: { ...CLOSE, grainWithin: 0.03, between: 3 } });
  const one = searchLayout(task, { seed: 5, steps: 300 });
  expect(searchLayout(task, { seed: 5, steps: 300 })).toEqual(one);
  expect(searchLayout(task, { seed: 5, shouldStop: () => true })).toMatchObject({
    lying: [],
    ended: 'stopped',
  });
});

it('on a sheet parts are turned any way', () => {
  const boards = [boardOf(500, 300, { kind: 'sheet' })];
  const toLay = [layOf('a', strip(300, 400)), layOf('b', strip(100, 300))];
  expect(faultsOf(taskOf({ boards, toLay })).layout).toMatchObject({ unlaid: [], ended: 'best' });
});
