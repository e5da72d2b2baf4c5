import { expect, it } from 'vitest';
import { boardDrawing, patchPattern, sceneToSvg } from '../../src/drawing/index.ts';
import { boundsOfEdges, circleOutline, vec } from '../../src/geometry/index.ts';
import { accountOf, layAt, planPatch } from '../../src/wood/index.ts';
import { boardOf, CLOSE, layOf, strip } from '../wood/to-lay.ts';
import { testLettering } from './lettering-of-tests.ts';

const LENGTHS = { unit: 'mm', decimals: 0 } as const;

it('a board is drawn to a scale of the standard, with what lies on it named inside its outline', () => {
  const knot = {
    kind: 'knot' as const,
    region: { outer: circleOutline(vec(1500, 100), 30, { id: 'k', role: 'left' }, 1), holes: [] },
  };
  const board = boardOf(2000, 200, { defects: [knot] });
  const leg = layOf('leg', strip(80, 700), { pieces: ['FL', 'FR'] });
  const laid = layAt(leg, { id: 'leg', board: 'A', at: vec(50, 60), turned: 0, mirrored: false });
  const [account] = accountOf([board], [laid], CLOSE).boards;
  const { scene, scale } = boardDrawing(account!, { lengths: LENGTHS });
  expect(scale).toBe('1:10');
  const texts = scene.marks.filter((mark) => mark.kind === 'text');
  const name = texts.find(({ text }) => text.startsWith('leg FL (leaf 1), FR (leaf 2)'))!;
  // The part lies at (5, 6) to (75, 14) on paper.
  expect(name.at.x).toBeGreaterThan(5);
  expect(name.at.y).toBeGreaterThan(6);
  expect(name.at.y + name.height).toBeLessThan(14);
  expect(texts.map(({ text }) => text)).toEqual(
    expect.arrayContaining(['2000', '200', 'knot', 'grain', 'marked end', '500 mm', '24 in']),
  );
  const visible = scene.marks.find((mark) => mark.kind === 'path' && mark.role === 'visible');
  expect(visible?.kind === 'path' && boundsOfEdges(visible.edges)).toEqual({
    minX: expect.closeTo(5, 9),
    minY: expect.closeTo(6, 9),
    maxX: expect.closeTo(75, 9),
    maxY: expect.closeTo(14, 9),
  });
  expect(scene.marks.some((mark) => mark.kind === 'path' && mark.role === 'saw-line')).toBe(true);
  expect(scene.marks.some((mark) => mark.kind === 'path' && mark.role === 'hatch')).toBe(true);
  expect(sceneToSvg(scene, testLettering())).toContain('saw-line');
});

/** Scales of reduction that ISO 5455 recommends. */
const RECOMMENDED = [1, 2, 5, 10, 20, 50];

it.each([250, 500, 1300, 2600, 5200, 13_000])(
  'a board of %d mm is drawn as long as its scale says, with bars and offcuts that hold at it, its marked end at the left',
  (long) => {
    const board = boardOf(long, 200);
    const laid = layAt(layOf('leg', strip(80, long / 2)), {
      id: 'leg',
      board: 'A',
      at: vec(0, 0),
      turned: 0,
      mirrored: false,
    });
    const [account] = accountOf([board], [laid], CLOSE).boards;
    const { scene, scale, factor } = boardDrawing(account!, { lengths: LENGTHS, room: 270 });
    const [one, times] = scale.split(':').map(Number) as [number, number];
    expect(one).toBe(1);
    expect(RECOMMENDED).toContain(times);
    expect(factor).toBeCloseTo(1 / times, 12);
    const boxes = (role: string) =>
      scene.marks.flatMap((mark) =>
        mark.kind === 'path' && mark.role === role ? [boundsOfEdges(mark.edges)] : [],
      );
    expect(Math.max(...boxes('part').map(({ maxX, minX }) => maxX - minX))).toBeCloseTo(long / times, 9);
    // 24 in are 609.6 mm.
    const bars = boxes('mark').map(({ minX, maxX }) => (maxX - minX) * times);
    expect(bars).toEqual([expect.closeTo(500, 6), expect.closeTo(609.6, 6)]);
    const [triangle] = boxes('reference');
    expect(triangle!.maxX).toBeLessThan(0);
    const marked = scene.marks.find((mark) => mark.kind === 'text' && mark.text === 'marked end');
    expect(marked?.kind === 'text' && marked.at.x).toBeLessThan(0);
    // Left over: beyond the leg all the width, and beside it 120 mm; each said along the board first.
    const said = scene.marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));
    const offcut = said.find((text) => /\d+ × \d+/.test(text));
    const sizes = account!.offcuts.map(({ rectangle }) => rectangle!);
    expect(sizes).toHaveLength(1);
    if (offcut !== undefined) {
      const [{ minX, maxX, minY, maxY }] = sizes as [(typeof sizes)[number]];
      expect(offcut).toContain(`${Math.round(maxX - minX)} × ${Math.round(maxY - minY)}`);
    } else expect(long).toBeGreaterThan(5200);
  },
);

it('the template of a patch shows opening and plug at full size, and both middle lines as check lengths', () => {
  const flaw = { outer: circleOutline(vec(400, 90), 6, { id: 'k', role: 'left' }, 1), holes: [] };
  const tooling = { cutter: 3, bushing: 8 };
  const patch = planPatch(flaw, 0.4, { shape: 'boat' }, tooling);
  const { scene, checks, toolFacts } = patchPattern(patch, tooling, LENGTHS);
  const boxOf = (role: string) => {
    const mark = scene.marks.find((each) => each.kind === 'path' && each.role === role);
    return boundsOfEdges(mark?.kind === 'path' ? mark.edges : []);
  };
  const [plug, opening] = [boxOf('part'), boxOf('template')];
  expect(plug.maxY - plug.minY).toBeCloseTo(patch.length, 6);
  expect(plug.maxX - plug.minX).toBeCloseTo(patch.width, 6);
  // The opening stands off the plug by the radii of bushing and cutter.
  expect(opening.maxX - plug.maxX).toBeCloseTo(5.5, 6);
  expect(checks.map(({ nominal }) => nominal)).toEqual([
    expect.closeTo(opening.maxY - opening.minY + 60, 6),
    expect.closeTo(opening.maxX - opening.minX + 60, 6),
  ]);
  expect(toolFacts).toContainEqual({ words: 'Collar on it for the recess', figure: 'Ø 14' });
});
