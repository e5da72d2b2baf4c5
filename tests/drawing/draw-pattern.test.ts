import { describe, expect, test } from 'vitest';
import { drawPattern, type PatternView, type Scene } from '../../src/drawing/index.ts';
import { boxesOverlap, boxOfText, cornersOf } from '../../src/drawing/layout/oriented-box.ts';
import { openingSizes } from '../../src/drawing/pattern/opening-sizes.ts';
import { arc, distance, line, locate, type Region, reverseEdge, vec } from '../../src/geometry/index.ts';
import { MM_PER } from '../../src/measure/index.ts';
import type { Routing } from '../../src/routing/index.ts';
import type { SketchedPart } from '../../src/sketch/index.ts';
import {
  archedStretcher,
  kneeLeg,
  PATTERN_CASES,
  panelLeg,
  splayedLeg,
  withRouting,
} from '../cases/pattern-cases.ts';
import { patternOptions } from './pattern-options.ts';
import { dimensionsDrawn, textsOf } from './pattern-reading.ts';

const VIEWS: readonly PatternView[] = ['part', 'template', 'as-routed', 'all'];

describe('a pattern of any view', () => {
  for (const [name, make] of Object.entries(PATTERN_CASES)) {
    for (const view of VIEWS) {
      test(`${name}, ${view}: says what it is inside its outline, over and over`, () => {
        const { part, routing } = make();
        const pattern = drawPattern(part, routing, { ...patternOptions(), view });
        const main: readonly Region[] =
          view === 'template' ? routing.template : view === 'as-routed' ? routing.asRouted : [part.region];
        const inside = textsOf(pattern).filter((mark) =>
          cornersOf(boxOfText(mark)).every((corner) => locate(main, corner) === 'inside'),
        );
        const saying = (words: string) => inside.filter(({ text }) => text.includes(words));
        const atLeast = Math.floor(distance(part.centreLine.from, part.centreLine.to) / 160);
        for (const words of [part.label, 'make 2', 'show face this side', 'up', 'grain']) {
          expect(saying(words).length, words).toBeGreaterThanOrEqual(atLeast);
        }
        expect(saying(view === 'template' ? 'Template' : 'Pattern').length).toBeGreaterThanOrEqual(atLeast);
      });
    }
  }
});

test('no stretch of 200 mm along a leg is without its name', () => {
  const { part, routing } = splayedLeg();
  const heights = textsOf(drawPattern(part, routing, patternOptions()))
    .filter(({ text }) => text === 'Splayed leg, left hand')
    .map(({ at }) => at.y)
    .sort((a, b) => a - b);
  const stops = [0, ...heights, 700];
  for (const [i, y] of stops.slice(1).entries()) expect(y - stops[i]!).toBeLessThan(200);
});

test('the grain arrow lies along the grain, the up arrow points up', () => {
  const { part, routing } = splayedLeg();
  const { marks } = drawPattern(part, routing, patternOptions()).scene;
  const grain = marks.find((mark) => mark.kind === 'path' && mark.role === 'grain');
  if (grain?.kind !== 'path') throw new Error('no grain arrow');
  const [shaft] = grain.edges;
  expect(
    Math.abs(Math.cos(Math.atan2(shaft!.to.y - shaft!.from.y, shaft!.to.x - shaft!.from.x) - part.grain)),
  ).toBeCloseTo(1, 9);
  const head = marks.findIndex(
    (mark) => mark.kind === 'path' && mark.role === 'mark' && mark.fill === 'solid',
  );
  const stem = marks[head - 1]!;
  if (stem.kind !== 'path') throw new Error('no shaft');
  const { from, to } = stem.edges[0]!;
  expect(Math.atan2(to.y - from.y, to.x - from.x)).toBeCloseTo(part.up, 9);
});

describe('a mirrored pattern', () => {
  const { part, routing } = splayedLeg();
  const pattern = drawPattern(part, routing, { ...patternOptions(), mirrored: true });

  test('is asked for by name and says so, in the part and beside it', () => {
    expect(pattern.name).toBe('splayed-leg-mirrored');
    expect(pattern.mirrored).toBe(true);
    const warnings = textsOf(pattern).filter(({ text }) => text === 'PATTERN – MIRRORED');
    expect(warnings.length).toBeGreaterThan(3);
    const plain = drawPattern(part, routing, patternOptions());
    expect(textsOf(plain).some(({ text }) => text.includes('MIRRORED'))).toBe(false);
  });

  test('is the other hand', () => {
    expect(textsOf(pattern).some(({ text }) => text === 'Splayed leg, right hand')).toBe(true);
    expect(
      textsOf(pattern).some(({ text }) =>
        /make 2(, left hand: 2 | \(left hand: 2| \(and 2 left\))/.test(text),
      ),
    ).toBe(true);
    expect(textsOf(pattern).some(({ text }) => text.includes('leg, left'))).toBe(false);
  });

  test('is the outline with x turned round', () => {
    const outline = pattern.scene.marks.find((mark) => mark.kind === 'path' && mark.role === 'part');
    if (outline?.kind !== 'path') throw new Error('no outline');
    const xs = outline.edges.map(({ from }) => from.x).sort((a, b) => a - b);
    const expected = part.region.outer.edges.map(({ from }) => 0 - from.x).sort((a, b) => a - b);
    expect(xs).toEqual(expected);
  });

  test('still reads from below or from the right', () => {
    for (const { angle, text } of textsOf(pattern)) {
      expect(angle, text).toBeGreaterThan(-Math.PI / 2 + 0.1);
      expect(angle, text).toBeLessThan(Math.PI / 2 + 0.2);
    }
  });
});

describe('check lengths', () => {
  test.each(Object.entries(PATTERN_CASES))('of a %s span it, and their figure is the distance', (_, make) => {
    const { part, routing } = make();
    const pattern = drawPattern(part, routing, patternOptions());
    expect(pattern.checks.map(({ name }) => name)).toEqual(['A', 'B', 'C', 'D']);
    const table = textsOf(pattern).map(({ text }) => text);
    for (const { name, from, to, nominal } of pattern.checks) {
      expect(nominal).toBe(distance(from, to));
      expect(table).toContain(name);
      // 0.1 mm is what the table shows.
      expect(
        table.some((text) => Math.abs(Number(text) - nominal) <= 0.05 + 1e-9),
        name,
      ).toBe(true);
      expect(locate([part.region], from)).toBe('inside');
      expect(locate([part.region], to)).toBe('inside');
      expect(nominal).toBeGreaterThan(0.8 * distance(part.centreLine.from, part.centreLine.to));
      for (const end of [from, to]) {
        expect(crossAt(pattern, end), `${name} has a cross at its end`).toBe(true);
      }
    }
    expect(table.filter((text) => text === 'after taping' || text === 'after gluing')).toHaveLength(2);
  });

  test('along the sides are round figures on a rule', () => {
    const { part, routing } = splayedLeg();
    const [a, b] = drawPattern(part, routing, patternOptions()).checks;
    expect(a!.nominal % 5).toBeCloseTo(0, 6);
    expect(b!.nominal % 5).toBeCloseTo(0, 6);
    const inches = drawPattern(part, routing, {
      ...patternOptions(),
      lengths: { unit: 'in', denominator: 32 },
    });
    const quarters = inches.checks[0]!.nominal / (MM_PER.in / 4);
    expect(quarters).toBeCloseTo(Math.round(quarters), 6);
  });
});

function crossAt(pattern: ReturnType<typeof drawPattern>, p: { x: number; y: number }): boolean {
  return pattern.scene.marks.some(
    (mark) =>
      mark.kind === 'path' &&
      mark.role === 'check' &&
      mark.edges.length === 1 &&
      Math.abs((mark.edges[0]!.from.x + mark.edges[0]!.to.x) / 2 - p.x) < 1e-9 &&
      Math.abs((mark.edges[0]!.from.y + mark.edges[0]!.to.y) / 2 - p.y) < 1e-9,
  );
}

describe('key dimensions', () => {
  test('stand beside the outline, and the figure is the distance between the arrowheads', () => {
    const { part, routing } = splayedLeg();
    const drawn = dimensionsDrawn(drawPattern(part, routing, patternOptions()));
    expect(drawn.length).toBeGreaterThanOrEqual(3);
    for (const { drawn: length, figure } of drawn)
      expect(Math.abs(Number(figure) - length)).toBeLessThan(0.0501);
  });

  test.each(Object.entries(PATTERN_CASES))('of a %s are never lost: drawn, or listed', (_, make) => {
    const { part, routing } = make();
    for (const view of VIEWS) {
      const words = textsOf(drawPattern(part, routing, { ...patternOptions(), view })).map(
        ({ text }) => text,
      );
      for (const dimension of part.dimensions.filter(({ kind }) => kind === 'length')) {
        const figure = String(Math.round(dimension.value * 10) / 10);
        expect(words, `${view}: ${dimension.name}`).toContain(figure);
      }
    }
  });

  test('a form that gives a wrong figure does not make the drawing lie', () => {
    const { part, routing } = splayedLeg();
    const wrong = part.dimensions.map((dimension) =>
      dimension.name === 'head' ? { ...dimension, value: 99 } : dimension,
    );
    const words = textsOf(drawPattern({ ...part, dimensions: wrong }, routing, patternOptions()));
    expect(words.some(({ text }) => text === '99')).toBe(false);
    expect(words.some(({ text }) => text === '68.6')).toBe(true);
  });

  test('a radius is that of its arc, an angle is given in degrees', () => {
    const { part, routing } = panelLeg();
    const words = textsOf(drawPattern(part, routing, patternOptions())).map(({ text }) => text);
    expect(words).toContain('R 12 window corners');
    const leg = splayedLeg();
    const angles = textsOf(drawPattern(leg.part, leg.routing, patternOptions())).map(({ text }) => text);
    expect(angles).toContain('97.66° at the foot');
  });

  test('in inches fractions are set, and whole figures carry the mark', () => {
    const { part, routing } = panelLeg();
    const options = { ...patternOptions(), lengths: { unit: 'in', denominator: 16 } } as const;
    const words = textsOf(drawPattern(part, routing, options)).map(({ text }) => text);
    // 400 mm is 15 3/4 in to the nearest 1/16.
    expect(words).toContain('15\u20093\u20444\u2033');
  });
});

describe('ticks from the centre line', () => {
  const region: Region = withRouting(splayedLeg().part).part.region;
  test('stand every 100 mm with the distance to either edge', () => {
    const { part, routing } = archedStretcher(1100, 90, 50);
    const pattern = drawPattern(part, routing, patternOptions());
    const figures = textsOf(pattern).filter(({ role }) => role === 'station');
    for (let y = 100; y <= 1000; y += 100) {
      expect(
        figures.some(({ text, at }) => text === String(y) && Math.abs(at.y - y) < 5),
        `${y}`,
      ).toBe(true);
    }
    // The straight edge lies 25 mm from the centre line all along.
    expect(figures.filter(({ text }) => text === '25').length).toBeGreaterThanOrEqual(9);
    // In the middle of the arch, at 500: by the circle through springing and crown.
    const rise = 40;
    const radius = (460 ** 2 + rise ** 2) / (2 * rise);
    const ordinate = 25 + (radius - Math.sqrt(radius ** 2 - 50 ** 2));
    expect(figures.some(({ text, at }) => Math.abs(at.y - 500) < 3 && text === ordinate.toFixed(1))).toBe(
      true,
    );
  });

  test('cross the outline where they say', () => {
    const { part, routing } = splayedLeg();
    const pattern = drawPattern(part, routing, patternOptions());
    const ticks = pattern.scene.marks.flatMap((mark) =>
      mark.kind === 'path' && mark.role === 'station' && mark.edges.length === 1 ? [mark.edges[0]!] : [],
    );
    const acrossOutline = ticks.filter(
      ({ from, to }) => locate([region], from) === 'inside' && locate([region], to) === 'outside',
    );
    expect(acrossOutline.length).toBeGreaterThanOrEqual(10);
  });
});

describe('what follows from the tooling', () => {
  test('every feed arrow says which machine it is for', () => {
    const { part, routing } = panelLeg();
    const said = (r: typeof routing) =>
      textsOf(drawPattern(part, r, patternOptions())).filter(({ text }) => text.startsWith('feed'));
    expect(said(routing).length).toBeGreaterThan(4);
    expect(said(routing).every(({ text }) => text.includes('hand-held'))).toBe(true);
    const table = { ...routing, tooling: { ...routing.tooling, machine: 'table' } } as const;
    expect(said(table).every(({ text }) => text.includes('router table'))).toBe(true);
  });

  test('a cut against the grain is marked at the edge and in words', () => {
    const { part, routing } = splayedLeg();
    const pattern = drawPattern(part, routing, patternOptions());
    const teeth = pattern.scene.marks.filter((mark) => mark.kind === 'path' && mark.role === 'against');
    expect(teeth.length).toBeGreaterThan(0);
    expect(textsOf(pattern).some(({ text }) => text.includes('AGAINST the grain'))).toBe(true);
    const neutral = { ...routing, feed: routing.feed.map((run) => ({ ...run, grain: 'neutral' as const })) };
    const calm = drawPattern(part, neutral, patternOptions());
    expect(textsOf(calm).some(({ text }) => text.includes('AGAINST'))).toBe(false);
  });

  test('the template names its offset along an edge, and twice that across an opening', () => {
    const { part, routing } = panelLeg();
    const words = textsOf(drawPattern(part, routing, patternOptions())).map(({ text }) => text);
    // (19 − 12.7) / 2 = 3.15, doubled 6.3.
    expect(words).toContain('template 3.15 inside the part');
    expect(words).toContain('template 6.3 wider across, 3.15 at each side');
  });

  test('offsets and tools are never rounded to the fraction of the design', () => {
    const { part, routing } = splayedLeg();
    const tooling = {
      ...routing.tooling,
      cutter: { ...routing.tooling.cutter, name: 'Straight bit no. 7', diameter: 12 },
      guide: { kind: 'bushing', name: 'Long collar', outsideDiameter: 24, barrelLength: 6.35 },
    } as const;
    const offsets = routing.offsets.map((offset) => ({ ...offset, offset: 6 }));
    const lengths = { unit: 'in', denominator: 16 } as const;
    const pattern = drawPattern(
      part,
      { ...routing, tooling, offsets },
      { ...patternOptions(), lengths, view: 'template' },
    );
    const facts = pattern.toolFacts.map(({ words }) => words).join(' ');
    expect(facts).toContain('cutter “Straight bit no. 7” 0.472″ (12 mm)');
    expect(facts).toContain('bushing “Long collar” 0.945″ (24 mm) outside, barrel 1⁄4″');
    expect(textsOf(pattern).map(({ text }) => text)).toContain('template 0.236″ (6 mm) inside the part');
  });

  test('in inches nothing but tools and check lengths is finer than the fraction of the design', () => {
    const { part, routing } = splayedLeg();
    const lengths = { unit: 'in', denominator: 16 } as const;
    const pattern = drawPattern(part, routing, { ...patternOptions(), lengths, view: 'part' });
    const onSheets = pattern.scene.marks.flatMap((mark) =>
      mark.kind === 'text' && mark.role !== 'residue' ? [mark.text] : [],
    );
    expect(onSheets.some((text) => text.includes('⁄16'))).toBe(true);
    expect(onSheets.filter((text) => /⁄(32|64)/.test(text))).toEqual([]);
    expect(textsOf(pattern).some(({ text }) => text.startsWith('should be to 1⁄64″'))).toBe(true);
  });

  test('the template shows where the sawn ends of the part lie under it', () => {
    const { part, routing } = splayedLeg();
    const pattern = drawPattern(part, routing, { ...patternOptions(), view: 'template' });
    const thin = pattern.scene.marks.flatMap((mark) =>
      mark.kind === 'path' && mark.role === 'thin' ? mark.edges : [],
    );
    const ends = part.region.outer.edges.filter(({ tag }) => tag.role === 'sawn');
    expect(ends.length).toBe(2);
    for (const end of ends) expect(thin).toContainEqual(end);
    expect(textsOf(pattern).filter(({ text }) => text === 'end of the part').length).toBe(2);
  });

  test('a difference that nobody can see is neither hatched nor named', () => {
    const { part, routing } = kneeLeg();
    const shown = (reach: number) => {
      const differences = routing.differences.map((difference) => ({ ...difference, reach }));
      const { marks } = drawPattern(part, { ...routing, differences }, patternOptions()).scene;
      return marks.filter(({ role }) => role === 'residue').length;
    };
    expect(routing.differences.length).toBeGreaterThan(0);
    expect(shown(0.11)).toBeGreaterThan(0);
    expect(shown(0.09)).toBe(0);
  });

  test('wood that the cutter cannot reach is hatched and named', () => {
    const { part, routing } = kneeLeg();
    const pattern = drawPattern(part, routing, patternOptions());
    const hatching = pattern.scene.marks.find((mark) => mark.kind === 'path' && mark.role === 'residue');
    if (hatching?.kind !== 'path') throw new Error('no hatching');
    const corners = routing.differences.map(({ region }) => region);
    expect(hatching.edges.length).toBeGreaterThan(2);
    for (const { from, to } of hatching.edges) {
      expect(locate(corners, vec((from.x + to.x) / 2, (from.y + to.y) / 2))).toBe('inside');
    }
    expect(textsOf(pattern).some(({ text }) => text === 'wood stays here, up to 2.1: by hand')).toBe(true);
  });

  test('ticks stand on the side that is cut away', () => {
    const { part, routing } = panelLeg();
    const pattern = drawPattern(part, routing, patternOptions());
    const ticks = pattern.scene.marks.flatMap((mark) =>
      mark.kind === 'path' && mark.role === 'keep-side' ? mark.edges : [],
    );
    expect(ticks.length).toBeGreaterThan(300);
    for (const { to } of ticks) expect(locate([part.region], to)).toBe('outside');
  });

  test('without a possible template the pattern says so', () => {
    const { part, routing } = splayedLeg();
    const none = { ...routing, template: [] };
    for (const view of VIEWS) {
      const words = textsOf(drawPattern(part, none, { ...patternOptions(), view })).map(({ text }) => text);
      expect(words).toContain('No template is possible with this guide.');
    }
  });
});

test('the name of a joint stands at its line, or is said by number beside the drawing', () => {
  const { part, routing } = splayedLeg();
  const [first] = part.joints;
  // Joints so close that all their names cannot stand there.
  const joints = Array.from({ length: 60 }, (_, i) => ({
    name: `rail-${i}`,
    label: `Middle of the long rail under the seat ${i}`,
    from: { x: first!.from.x, y: 600 - 0.5 * i },
    to: { x: first!.to.x, y: 600 - 0.5 * i },
  }));
  const pattern = drawPattern({ ...part, joints }, routing, patternOptions());
  const texts = textsOf(pattern).map(({ text }) => text);
  const onSheets = pattern.scene.marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));
  const notes = pattern.jointNotes ?? [];
  expect(notes.length).toBeGreaterThan(0);
  expect(texts).toContain('Joints by number');
  for (const { label } of joints) {
    const note = notes.find((each) => each.label === label);
    expect(onSheets.includes(label) !== (note !== undefined), label).toBe(true);
    if (note !== undefined && note.mark !== '') expect(onSheets).toContain(note.mark);
  }
});

test('an opening has its sizes in words where no dimension gives them, and a feed arrow inside it', () => {
  const { part, routing } = slottedBoard(14);
  const pattern = drawPattern(part, routing, patternOptions());
  expect(openingSizes(part).map(({ label, size }) => `${label} ${size.toFixed(2)}`)).toEqual([
    'Slot, length 90.00',
    'Slot, width 14.00',
  ]);
  const texts = textsOf(pattern).map(({ text }) => text);
  expect(texts).toContain('Slot, width');
  const hole = [{ outer: { edges: [...part.region.holes[0]!.edges].reverse().map(reverseEdge) }, holes: [] }];
  const inside = pattern.scene.marks.filter(
    (mark) =>
      mark.kind === 'path' &&
      (mark.role === 'feed' || mark.role === 'against') &&
      mark.edges.every(({ from, to }) => locate(hole, from) === 'inside' && locate(hole, to) === 'inside'),
  );
  // The plunge is three marks; an arrow is two more.
  expect(inside.length).toBeGreaterThanOrEqual(5);
});

test('a size of an opening that a dimension gives is not said again', () => {
  const { part } = slottedBoard(14);
  const width = { kind: 'length', name: 'w', label: 'w', from: vec(100, 93), to: vec(100, 107) } as const;
  const labels = (dimensions: SketchedPart['dimensions']) =>
    openingSizes({ ...part, dimensions }).map(({ label }) => label);
  expect(labels([{ ...width, value: 14 }])).toEqual(['Slot, length']);
  // Another length of the part that happens to be the same says nothing of the slot.
  const elsewhere = { ...width, from: vec(0, 0), to: vec(14, 0), value: 14 };
  expect(labels([elsewhere])).toEqual(['Slot, length', 'Slot, width']);
});

/** A board 200 × 200 with a level slot 90 long in its middle, ends round. */
function slottedBoard(width: number) {
  const tag = (id: string) => ({ id, role: 'routed' }) as const;
  const r = width / 2;
  const [left, right] = [55 + r, 145 - r];
  const corners = [vec(0, 0), vec(200, 0), vec(200, 200), vec(0, 200)];
  const slot = [
    line(vec(right, 100 - r), vec(left, 100 - r), tag('under')),
    arc(vec(left, 100 - r), vec(left, 100 + r), vec(left, 100), -1, tag('left-end')),
    line(vec(left, 100 + r), vec(right, 100 + r), tag('over')),
    arc(vec(right, 100 + r), vec(right, 100 - r), vec(right, 100), -1, tag('right-end')),
  ];
  return withRouting({
    ...splayedLeg().part,
    region: {
      outer: { edges: corners.map((from, i) => line(from, corners[(i + 1) % 4]!, tag(`side-${i}`))) },
      holes: [{ edges: slot }],
    },
    corners: [],
    joints: [],
    dimensions: [],
    openings: [{ name: 'slot', label: 'Slot', hole: 0, plunge: vec(100, 100) }],
    centreLine: { from: vec(100, 0), to: vec(100, 200) },
  });
}

test('seams are asked to keep off corners, joints and check targets', () => {
  const { part, routing } = splayedLeg();
  const pattern = drawPattern(part, routing, patternOptions());
  const kept = (p: { x: number; y: number }) => pattern.keepOffSeams.some(({ at }) => distance(at, p) < 1e-9);
  for (const { from } of part.region.outer.edges) expect(kept(from)).toBe(true);
  for (const { from, to } of part.joints) expect(kept(from) && kept(to)).toBe(true);
  for (const { from, to } of pattern.checks) expect(kept(from) && kept(to)).toBe(true);
});

test('a part too small for any lettering has its name beside it', () => {
  const tiny: Region = {
    outer: {
      edges: splayedLeg().part.region.outer.edges.map((edge) => ({
        ...edge,
        from: vec(edge.from.x / 40, edge.from.y / 40),
        to: vec(edge.to.x / 40, edge.to.y / 40),
      })),
    },
    holes: [],
  };
  const { part, routing } = withRouting({
    ...splayedLeg().part,
    region: tiny,
    centreLine: { from: vec(0.5, 0), to: vec(0.5, 17) },
    dimensions: [],
    joints: [],
  });
  const words = textsOf(drawPattern(part, routing, patternOptions())).map(({ text }) => text);
  expect(words).toContain('Splayed leg, left hand');
});

test('names that no paper is wide enough for do no harm', () => {
  const { part, routing } = splayedLeg();
  const long = { ...part, label: 'leg '.repeat(200) + 'x'.repeat(5000) };
  const pattern = drawPattern(long, routing, { ...patternOptions(), design: 'y\n'.repeat(10_000) });
  expect(pattern.withNotes.box.maxX - pattern.withNotes.box.minX).toBeLessThan(400);
  expect(textsOf(pattern).every(({ text }) => text.length < 140 && !text.includes('\n'))).toBe(true);
});

test('the notes stand beside the drawing in one piece, and on no sheet', () => {
  const { part, routing } = splayedLeg();
  const pattern = drawPattern(part, routing, patternOptions());
  const wordsIn = ({ marks }: Scene) => marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));
  expect(wordsIn(pattern.withNotes)).toEqual(expect.arrayContaining(['Routing', 'Lines', 'Check lengths']));
  for (const heading of ['Routing', 'Lines', 'Check lengths']) {
    expect(wordsIn(pattern.scene)).not.toContain(heading);
  }
  expect(pattern.toolFacts.length).toBeGreaterThan(3);
});

test('labels stand beside the patches of tape, or whole on them', () => {
  const { part, routing } = kneeLeg();
  const labelsOn = (fixings: Routing['fixings']) =>
    textsOf(drawPattern(part, { ...routing, fixings }, { ...patternOptions(), view: 'all' })).filter(
      ({ text, weight }) => text.startsWith(part.label) && weight === 'semibold',
    );
  const free = labelsOn([]);
  // A patch whose border would run through the middle of a label.
  const { centre } = boxOfText(free[0]!);
  const box = { centre, halfWidth: 6, halfHeight: 6, angle: 0 };
  const labels = labelsOn([{ kind: 'tape', at: centre, width: 12, height: 12, turn: 0 }]);
  expect(labels.length).toBeGreaterThan(2);
  expect(free.some((mark) => boxesOverlap(boxOfText(mark), box))).toBe(true);
  for (const mark of labels) expect(boxesOverlap(boxOfText(mark), box)).toBe(false);
});
