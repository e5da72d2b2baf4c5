import { expect, test } from 'vitest';
import { drawPattern, type Scene, sceneToSvg } from '../../src/drawing/index.ts';
import { arc, areaOfOutline, circleOutline, line, vec } from '../../src/geometry/index.ts';
import { panelLeg, splayedLeg } from '../cases/pattern-cases.ts';
import { testLettering } from './lettering-of-tests.ts';
import { patternOptions } from './pattern-options.ts';

const TAG = { id: 'edge', role: 'routed' } as const;
const lettering = testLettering();

const half: Scene = {
  marks: [
    {
      kind: 'path',
      role: 'part',
      closed: true,
      edges: [arc(vec(30, 10), vec(10, 10), vec(20, 10), 1, TAG), line(vec(10, 10), vec(30, 10), TAG)],
    },
  ],
  box: { minX: 10, minY: 10, maxX: 30, maxY: 20 },
};

test('a drawing is as large on paper as in the part, one unit a millimetre', () => {
  const svg = sceneToSvg(half, lettering, { margin: 0 });
  expect(svg).toContain('width="20mm" height="10mm" viewBox="0 0 20 10"');
});

test('arcs stay arcs, y runs down, and an anticlockwise arc bulges the right way', () => {
  const svg = sceneToSvg(half, lettering, { margin: 0 });
  // A half circle over its chord: more than 170°, so it is written in two, by way of its top.
  expect(svg).toContain('d="M20 10A10 10 0 0 0 10 0A10 10 0 0 0 0 10L20 10Z"');
});

test('a whole circle is drawn', () => {
  const edges = circleOutline(vec(0, 0), 5, TAG, 1).edges;
  const scene: Scene = {
    marks: [{ kind: 'path', role: 'part', edges, closed: true }],
    box: { minX: -5, minY: -5, maxX: 5, maxY: 5 },
  };
  const svg = sceneToSvg(scene, lettering, { margin: 0 });
  expect(svg.match(/A5 5 0 0 0 /g)?.length).toBeGreaterThanOrEqual(2);
  expect(svg).toContain('viewBox="0 0 10 10"');
});

test('every role of line is a group by its name, with its width, and lettering is apart', () => {
  const { part, routing } = splayedLeg();
  const svg = sceneToSvg(drawPattern(part, routing, patternOptions()).scene, lettering);
  for (const id of ['part', 'template', 'saw-line', 'keep-side', 'centre', 'lettering']) {
    expect(svg.match(new RegExp(`<g id="${id}" `, 'g')), id).toHaveLength(1);
  }
  expect(svg).toMatch(/<g id="part" fill="none" stroke="#[0-9a-f]{6}" stroke-width="0.35"/);
  expect(svg).not.toContain('<text');
  expect(svg).not.toContain('NaN');
});

test('for a machine only the closed outlines of one role are written, without dashes', () => {
  const { part, routing } = panelLeg();
  const { scene } = drawPattern(part, routing, { ...patternOptions(), view: 'template' });
  const svg = sceneToSvg(scene, lettering, { cutting: 'template' });
  expect(svg.match(/<g /g)).toHaveLength(1);
  expect(svg.match(/<path /g)).toHaveLength(2);
  expect(svg.match(/Z"/g)).toHaveLength(2);
  expect(svg).not.toContain('dasharray');
  expect(svg).not.toContain('lettering');
});

test('what a machine cuts measures what was computed', () => {
  const { part, routing } = panelLeg();
  const { scene } = drawPattern(part, routing, { ...patternOptions(), view: 'template' });
  const svg = sceneToSvg(scene, lettering, { cutting: 'template' });
  const areas = [...svg.matchAll(/ d="([^"]*)"/g)].map(([, data]) => Math.abs(areaOfPathData(data!)));
  const loops = routing.template.flatMap(({ outer, holes }) => [outer, ...holes]);
  expect(areas).toHaveLength(loops.length);
  for (const [i, loop] of loops.entries()) {
    expect(areas[i]).toBeCloseTo(Math.abs(areaOfOutline(loop)), 0);
  }
});

test('words that mean something in XML are escaped, and what XML forbids is left out', () => {
  const { part, routing } = splayedLeg();
  const evil = { ...part, label: '<script>"&\u0000\u0008leg\ufffe' };
  const svg = sceneToSvg(drawPattern(evil, routing, patternOptions()).scene, lettering, {
    title: evil.label,
  });
  expect(svg).toContain('<title>&lt;script&gt;&quot;&amp;leg</title>');
  expect(svg).not.toContain('<script');
  expect(svg).not.toContain('\u0000');
  expect(svg.replace(/&(amp|lt|gt|quot);/g, '')).not.toContain('&');
});

test('the same drawing gives the same text', () => {
  const once = () => {
    const { part, routing } = panelLeg();
    return sceneToSvg(drawPattern(part, routing, patternOptions()).scene, lettering);
  };
  expect(once()).toBe(once());
});

/** Area inside path data of M, L, A (circles, short arcs) and Z, y down: chords by the shoelace rule, arcs by their segments. */
function areaOfPathData(data: string): number {
  let area = 0;
  let at = { x: 0, y: 0 };
  let start = at;
  const chord = (to: { x: number; y: number }) => {
    area += (at.x * to.y - to.x * at.y) / 2;
    at = to;
  };
  for (const [, command, rest] of data.matchAll(/([MLAZ])([^MLAZ]*)/g)) {
    const n = rest!.trim().split(/[ ,]+/).map(Number);
    if (command === 'M') start = at = { x: n[0]!, y: n[1]! };
    if (command === 'L') chord({ x: n[0]!, y: n[1]! });
    if (command === 'Z') chord(start);
    if (command === 'A') {
      const to = { x: n[5]!, y: n[6]! };
      const sweep = 2 * Math.asin(Math.min(1, Math.hypot(to.x - at.x, to.y - at.y) / 2 / n[0]!));
      area += (n[4] === 1 ? 1 : -1) * (n[0]! ** 2 / 2) * (sweep - Math.sin(sweep));
      chord(to);
    }
  }
  return area;
}
