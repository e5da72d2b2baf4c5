import { describe, expect, it } from 'vitest';
import type { Edge, Region } from '../../src/geometry/index.ts';
import {
  areaOfOutline,
  areaOfRegions,
  boundsOfEdges,
  circleOutline,
  line,
  nearestOnEdges,
  pointAt,
  polygonOutline,
  readSvgDrawing,
  readSvgPath,
  slotOutline,
  sweepOf,
  writeSvgPath,
} from '../../src/geometry/index.ts';
import { bulged, TAG } from './random-outlines.ts';

function readPath(d: string): readonly Edge[][] {
  const result = readSvgPath(d, TAG);
  if (!result.ok) throw new Error(result.problems[0]!.message);
  return result.value.map(({ edges }) => [...edges]);
}

function readDrawing(body: string, head = 'width="200mm" height="100mm" viewBox="0 0 200 100"') {
  const result = readSvgDrawing(`<svg xmlns="http://www.w3.org/2000/svg" ${head}>${body}</svg>`, 'routed');
  if (!result.ok) throw new Error(result.problems[0]!.message);
  return result.value;
}

const boxOf = (edges: readonly Edge[]): number[] => {
  const { minX, minY, maxX, maxY } = boundsOfEdges(edges);
  return [minX, minY, maxX, maxY].map((v) => Math.round(v * 1e6) / 1e6);
};

describe('writing path data', () => {
  it('keeps lines and arcs, y negated for the page', () => {
    const edges = [
      line({ x: 0, y: 0 }, { x: 10, y: 2.5 }, TAG),
      bulged({ x: 10, y: 2.5 }, { x: 20, y: 2.5 }, Math.tan(Math.PI / 8)),
    ];
    expect(writeSvgPath(edges, false)).toBe('M0 0L10 -2.5A7.0711 7.0711 0 0 0 20 -2.5');
    expect(writeSvgPath(edges, false, 2, 'up')).toBe('M0 0L10 2.5A7.07 7.07 0 0 1 20 2.5');
    expect(writeSvgPath([], true)).toBe('');
  });

  it('closes a loop with Z and never writes a negative zero or an exponent', () => {
    const square = polygonOutline(
      [
        { x: 0, y: 0 },
        { x: 10, y: 0 },
        { x: 10, y: 1e-9 },
        { x: -1e-9, y: 10 },
      ],
      TAG,
    );
    expect(writeSvgPath(square.edges, true)).toBe('M0 0L10 0L10 0L0 -10Z');
  });

  it('rounds circles and half circles without losing their centres', () => {
    for (const outline of [
      circleOutline({ x: 1 / 3, y: 2 / 3 }, 100 / 7, TAG),
      slotOutline({ x: 1 / 3, y: 1 / 7 }, { x: 50 / 3, y: 10 }, 20 / 3, TAG),
    ]) {
      const [back] = readPath(writeSvgPath(outline.edges, true, 4));
      for (const edge of back!) {
        for (const t of [0, 0.25, 0.5, 0.9]) {
          expect(nearestOnEdges(outline.edges, pointAt(edge, t)).distance).toBeLessThan(2.5e-4);
        }
      }
      expect(areaOfOutline({ edges: back! })).toBeCloseTo(areaOfOutline(outline), 1);
    }
  });
});

describe('reading path data', () => {
  it('keeps circular arcs exact, of either size and either sweep', () => {
    const [[arc]] = readPath('M10 0 A10 10 0 1 1 0 -10') as [[Edge]];
    expect(arc).toMatchObject({
      kind: 'arc',
      radius: 10,
      turn: -1,
      from: { x: 10, y: 0 },
      to: { x: 0, y: 10 },
    });
    expect(arc!.kind === 'arc' && sweepOf(arc)).toBeCloseTo(1.5 * Math.PI, 12);
    const [[half]] = readPath('M-5 0 a5,5 0 01 10,0') as [[Edge]];
    expect(half).toMatchObject({
      kind: 'arc',
      centre: { x: expect.closeTo(0, 12), y: expect.closeTo(0, 12) },
      turn: -1,
    });
    const [[grown]] = readPath('M0 0 A1 1 0 0 0 20 0') as [[Edge]];
    expect(grown).toMatchObject({ kind: 'arc', radius: expect.closeTo(10, 12) });
  });

  it('reads numbers run together, repeated commands and relative moves', () => {
    const runs = readPath('m.5.5-1-1e0zl2 0 0 2z M1 1 2 2,3 1');
    expect(runs.map((run) => run.length)).toEqual([2, 3, 2]);
    expect(runs[0]![0]).toEqual(line({ x: 0.5, y: -0.5 }, { x: -0.5, y: 0.5 }, TAG));
    expect(runs[1]![0]!.from).toEqual({ x: 0.5, y: -0.5 });
  });

  it('turns an ellipse into arcs within the tolerance', () => {
    const [edges] = readPath('M40 0 A40 20 0 0 1 -40 0 A40 20 0 0 1 40 0 Z');
    for (const edge of edges!) {
      for (const t of [0, 0.3, 0.7]) {
        const p = pointAt(edge, t);
        const angle = Math.atan2(p.y / 20, p.x / 40);
        // Off the ellipse by no more than the level of its equation says, divided by its least slope.
        expect(Math.abs(Math.hypot(p.x / 40, p.y / 20) - 1) * 40).toBeLessThan(0.011);
        expect(Number.isFinite(angle)).toBe(true);
      }
    }
    expect(areaOfOutline({ edges: edges! })).toBeCloseTo(-Math.PI * 800, 0);
  });

  it('refuses what the grammar does not allow, with the place', () => {
    const cases: [string, number][] = [
      ['L1 1', 2],
      ['M1', 3],
      ['M1 1 L2', 8],
      ['M1 1 X2', 6],
      ['M0 0 A5 5 0 2 1 9 9', 13],
      ['M0 0 L1,', 9],
      ['M0 0 L1e999 2', 7],
      ['M0 0 z 5', 8],
      ['12', 1],
    ];
    for (const [d, column] of cases) {
      const result = readSvgPath(d, TAG);
      expect({ d, result: result.ok ? 'read' : result.problems[0]!.column }).toEqual({ d, result: column });
    }
    expect(readSvgPath('', TAG)).toEqual({ ok: true, value: [] });
    expect(readSvgPath('  ', TAG)).toEqual({ ok: true, value: [] });
  });

  it('is quick to refuse endless spaces', () => {
    const spaces = ' '.repeat(200_000);
    expect(readSvgPath(`M0 0${spaces}L1${spaces}x`, TAG).ok).toBe(false);
    const svg = (attribute: string): string => `<svg><rect ${attribute}/></svg>`;
    expect(readSvgDrawing(svg(`transform="scale(1)${spaces}x"`), 'routed').ok).toBe(false);
    expect(readSvgDrawing(svg(`width="1${spaces}x" height="1"`), 'routed').ok).toBe(false);
    expect(readSvgDrawing(svg(`width${spaces}x`), 'routed').ok).toBe(false);
  });
});

describe('reading a drawing', () => {
  it('finds every kind of shape at the stated size, y up', () => {
    const drawing = readDrawing(`
      <title>Stool leg</title>
      <rect x="10" y="20" width="30" height="40"/>
      <rect x="10" y="20" width="30" height="40" rx="5"/>
      <circle cx="100" cy="50" r="7"/>
      <ellipse cx="100" cy="50" rx="20" ry="10"/>
      <polygon points="0,0 10,0 10,10"/>
      <polyline points="0,0 10,0 10,10 0 0"/>
      <path d="M0 0H10V10Z M2 2 3 2"/>
      <line x1="0" y1="0" x2="30" y2="40"/>
      <text x="3">Legs</text>`);
    expect(drawing.scale).toBe('stated');
    expect(drawing.skipped).toEqual(['text']);
    expect(drawing.open).toEqual(
      [
        { from: { x: 2, y: -2 }, to: { x: 3, y: -2 }, gap: expect.closeTo(1, 9) },
        {
          from: { x: 0, y: 0 },
          to: { x: expect.closeTo(30, 9), y: expect.closeTo(-40, 9) },
          gap: expect.closeTo(50, 9),
        },
      ].map((o) => ({
        ...o,
        from: { x: expect.closeTo(o.from.x, 9), y: expect.closeTo(o.from.y, 9) },
        to: expect.anything(),
      })),
    );
    const areas = drawing.outlines.map((outline) => Math.abs(areaOfOutline(outline)));
    const expected = [1200, 1200 - (4 - Math.PI) * 25, Math.PI * 49, Math.PI * 200, 50, 50, 50];
    for (const [i, area] of areas.entries()) expect(area).toBeCloseTo(expected[i]!, i === 3 ? 0 : 9);
    expect(areas).toHaveLength(7);
    expect(boxOf(drawing.outlines[0]!.edges)).toEqual([10, -60, 40, -20]);
    expect(boxOf(drawing.outlines[1]!.edges)).toEqual([10, -60, 40, -20]);
    expect(drawing.outlines[2]!.edges).toMatchObject([{ kind: 'arc', radius: expect.closeTo(7, 9) }]);
    for (const { edges } of drawing.outlines) {
      for (const [i, edge] of edges.entries()) expect(edge.to).toEqual(edges[(i + 1) % edges.length]!.from);
    }
  });

  it('applies transforms, the innermost first, and keeps a turned and scaled circle a circle', () => {
    const drawing = readDrawing(`
      <g transform="translate(100 50) rotate(90)"><g transform="scale(2)">
        <circle cx="10" cy="0" r="3"/><rect width="10" height="5" transform="skewX(45)"/>
      </g></g><circle r="5" transform="matrix(1 0 0 2 50 50)"/>`);
    const [circle, skewed, stretched] = drawing.outlines;
    expect(boxOf(circle!.edges)).toEqual([94, -76, 106, -64]);
    expect(circle!.edges).toHaveLength(1);
    expect(Math.abs(areaOfOutline(skewed!))).toBeCloseTo(200, 9);
    expect(boxOf(skewed!.edges)).toEqual([90, -80, 100, -50]);
    expect(Math.abs(areaOfOutline(stretched!))).toBeCloseTo(50 * Math.PI, 0);
    expect(stretched!.edges.length).toBeGreaterThan(4);
  });

  it('finds the size: from millimetres, inches, or 96 units to the inch', () => {
    const width = (head: string): number => {
      const { outlines } = readDrawing('<rect width="96" height="96"/>', head);
      return boxOf(outlines[0]!.edges)[2]!;
    };
    expect(width('width="2in" height="2in" viewBox="0 0 192 192"')).toBeCloseTo(25.4, 6);
    expect(width('width="96mm" viewBox="0 0 96 50"')).toBeCloseTo(96, 6);
    expect(width('')).toBeCloseTo(25.4, 6);
    expect(width('width="100%" height="100%" viewBox="0 0 96 96"')).toBeCloseTo(25.4, 6);
    // The smaller of two scales, unless the drawing asks to be stretched.
    expect(width('width="192mm" height="96mm" viewBox="0 0 96 96"')).toBeCloseTo(96, 6);
    expect(width('width="192mm" height="96mm" viewBox="0 0 96 96" preserveAspectRatio="none"')).toBeCloseTo(
      192,
      6,
    );
    expect(readDrawing('<rect width="9" height="9"/>', 'width="9"').scale).toBe('assumed');
  });

  it('passes over what is hidden or only defined', () => {
    const drawing = readDrawing(`<defs><circle r="3"/></defs><g display="none"><circle r="4"/></g>
      <circle r="5" style="fill:red; display : none"/><use href="#a"/><!-- <circle r="6"/> --><circle r="7"/>`);
    expect(drawing.outlines).toHaveLength(1);
    expect(drawing.skipped).toEqual(['use']);
  });

  it('closes a loop over a gap that rounding left', () => {
    const drawing = readDrawing('<path d="M0 0H10V10L0.004 0.004"/>');
    expect(drawing.outlines[0]!.edges).toHaveLength(4);
    const region: Region = { outer: drawing.outlines[0]!, holes: [] };
    expect(Math.abs(areaOfRegions([region]))).toBeCloseTo(50, 1);
  });

  it('says where a drawing cannot be read', () => {
    const problem = (text: string): string | undefined => {
      const result = readSvgDrawing(text, 'routed');
      return result.ok ? undefined : `${result.problems[0]!.code} ${result.problems[0]!.line ?? ''}`.trim();
    };
    expect(problem('<svg>\n<path d="M0 0 L"/>\n</svg>')).toBe('svg.path 2');
    expect(problem('<svg>\n\n<g transform="wobble(3)"/></svg>')).toBe('svg.attribute 3');
    expect(problem('<svg><circle r="2 apples"/></svg>')).toBe('svg.attribute 1');
    expect(problem('<svg><polygon points="1 2 3"/></svg>')).toBe('svg.attribute 1');
    expect(problem('<svg viewBox="0 0 0 5"/>')).toBe('svg.attribute 1');
    expect(problem('<html></html>')).toBe('svg.unreadable 1');
    expect(problem('<svg><circle r="1e8"/></svg>')).toBe('svg.too-large');
    for (const broken of [
      '',
      'hello',
      '<svg>',
      '<svg></g>',
      '<svg a="1" a="2"/>',
      '<svg a=1/>',
      '<svg/><svg/>',
      '<svg><!-- </svg>',
      '<svg a="&lol;"/>',
    ]) {
      expect(problem(broken)).toBe('svg.unreadable 1');
    }
  });

  it('refuses entities that would expand, and nesting without end', () => {
    const bomb = '<!DOCTYPE svg [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;">]><svg><text>&b;</text></svg>';
    expect(readSvgDrawing(bomb, 'routed').ok).toBe(false);
    expect(readSvgDrawing(`<svg>${'<g>'.repeat(100_000)}`, 'routed').ok).toBe(false);
    expect(readSvgDrawing('<!DOCTYPE svg [ ]><svg/>', 'routed').ok).toBe(false);
    const plain =
      '<?xml version="1.0"?>\n<!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "x.dtd">\n<svg:svg a="&#65;&amp;&lt;"/>';
    expect(readSvgDrawing(plain, 'routed').ok).toBe(true);
  });
});
