import {
  areaOfRegions,
  boundsOfRegions,
  circleOutline,
  distance,
  norm,
  type Region,
  type Similarity,
  STAY,
  symmetricDifference,
  transformPoint,
  transformRegion,
  type Vec,
  vec,
} from '../../geometry/index.ts';
import { formatLength, type LengthStyle } from '../../measure/index.ts';
import type { InsertPlan, InsertRow } from '../../wood/index.ts';
import type { CheckLength, Mark, Pattern } from '../api.ts';
import { createDrawing, letter, pathMark, textMark } from '../layout/drawing.ts';
import { DRAWN, narrowHead, stroke, strokes } from '../layout/strokes.ts';
import { boundsOfMarks } from '../scene/bounds-of-marks.ts';

/** Half the cross through a hole, beyond its edge, mm. */
const CROSS = 4;
/** Holes nearer than this, mm, to where they lie under another part are the same. */
const SAME = 0.02;

/** One full-size drilling pattern, and the parts under whose places of the top it is laid. */
export interface DrillingPattern {
  readonly pattern: Pattern;
  /** Placed parts. */
  readonly parts: readonly string[];
}

/**
 * Holes for inserts at full size, one pattern for all parts of the base that take them alike. They are seen from below, as the top lies on its
 * face on the bench, turned over about its length: what is at the front of the table lies at the far side. Each shows the outline of the part
 * that stands there, the holes with their crosses, and its distance from the top's middle lines to be laid by.
 */
export function drillingPatterns(
  plan: InsertPlan,
  labelOf: (part: string) => string,
  lengths: LengthStyle,
): readonly DrillingPattern[] {
  const groups: { readonly row: InsertRow; readonly rows: InsertRow[] }[] = [];
  for (const row of plan.rows) {
    const same = groups.find((group) => isAlike(group.row, row));
    if (same === undefined) groups.push({ row, rows: [row] });
    else same.rows.push(row);
  }
  return groups.map(({ rows }, at) => ({
    pattern: patternOf(plan, rows, `drilling-${at + 1}`, labelOf, lengths),
    parts: rows.map(({ part }) => part),
  }));
}

const FROM_BELOW: Similarity = { ...STAY, mirrored: true, turn: Math.PI };

/** The same holes in the same outline, as they lie or turned by half a turn on the top. */
function isAlike(a: InsertRow, b: InsertRow): boolean {
  return a.holes.length === b.holes.length && turnOnto(a, b) !== undefined;
}

/** By how much one is turned to lie on the other, rad; nothing where it does not. */
function turnOnto(a: InsertRow, b: InsertRow): number | undefined {
  const to = boundsOfRegions(b.footprint);
  return [0, Math.PI].find((turn) => {
    const spun: Similarity = { ...STAY, turn };
    const from = boundsOfRegions(a.footprint.map((region) => transformRegion(region, spun)));
    const laid = { ...spun, shift: vec(to.minX - from.minX, to.minY - from.minY) };
    const footprint = a.footprint.map((region) => transformRegion(region, laid));
    const off = areaOfRegions(symmetricDifference(footprint, b.footprint));
    return (
      off < SAME * (to.maxX - to.minX + to.maxY - to.minY) &&
      a.holes.every((hole) => b.holes.some((other) => distance(transformPoint(hole, laid), other) < SAME))
    );
  });
}

function patternOf(
  plan: InsertPlan,
  rows: readonly InsertRow[],
  name: string,
  labelOf: (part: string) => string,
  lengths: LengthStyle,
): Pattern {
  const row = rows[0]!;
  const { insert, depth, left } = plan;
  const say = (mm: number): string => formatLength(mm, finer(lengths));
  const footprint = row.footprint.map((region) => transformRegion(region, FROM_BELOW));
  const holes = row.holes.map((hole) => transformPoint(hole, FROM_BELOW));
  const box = boundsOfRegions(footprint);
  const drawing = createDrawing(norm(box.maxX - box.minX, box.maxY - box.minY) * 1.5);
  drawing.draw(footprint.flatMap(outlineMarks));
  for (const hole of holes) drawing.draw(holeMarks(hole, insert.pilot));
  const long = box.maxX - box.minX > box.maxY - box.minY;
  const angle = long ? 0 : Math.PI / 2;
  const checks = checkOf(holes);
  drawing.draw(middleLine(box));
  for (const { name: letterOf, from, to } of checks)
    for (const at of [from, to])
      drawing.draw([
        textMark(letterOf, vec(at.x + 7, at.y + 3), { height: 3.5, weight: 'semibold', role: 'check' }),
      ]);
  for (const [at, hole] of holes.entries()) {
    const text = `hole ${at + 1}: Ø ${say(insert.pilot)}, ${say(depth)} deep`;
    letter(
      drawing,
      [text, `${at + 1}: Ø ${say(insert.pilot)}`].flatMap((words) =>
        [10, 15, 20, -10, -15, -20, 28, -28].map((off) =>
          textMark(words, vec(hole.x + (long ? 0 : -off), hole.y + (long ? off : 0)), {
            height: 2.5,
            angle,
            align: 'middle',
            role: 'dimension',
          }),
        ),
      ),
    );
  }
  const title = `Inserts under ${rows.map(({ part }) => labelOf(part)).join(', ')}`;
  const facts = [
    title,
    'laid on the underside of the top, turned over about its length: the front of the table is at the far side',
    ...rows.map((each) => `${labelOf(each.part)}: ${whereOf(each, row, say)}`),
    `${insert.thread}: drill Ø ${say(insert.pilot)}, ${say(depth)} deep with a stop; ${say(left)} of the top is left`,
  ];
  facts.forEach((text, line) => {
    const off = 12 + 5 * (facts.length - line);
    const at = long ? vec(box.minX, box.maxY + off) : vec(box.minX - off, box.minY);
    drawing.draw([
      textMark(text, at, {
        height: line === 0 ? 3.5 : 2.5,
        angle,
        weight: line === 0 ? 'semibold' : 'regular',
        role: 'dimension',
      }),
    ]);
  });
  const marks = drawing.marks();
  const scene = { marks, box: boundsOfMarks(marks) };
  return {
    name,
    title,
    view: 'part',
    mirrored: false,
    scene,
    withNotes: scene,
    toolFacts: [
      { words: 'Pilot', figure: `Ø ${say(insert.pilot)}` },
      { words: 'Depth, with a stop', figure: say(depth) },
      { words: 'Left of the top', figure: say(left) },
      {
        words:
          'Try the pilot in scrap of the same wood: too tight it splits, too wide the thread holds little. Where the base stands ready, mark from it in place and use this to check.',
      },
    ],
    keepOffSeams: holes.map((at) => ({ at, clearance: insert.outer + CROSS })),
    checks,
  };
}

/** Where the middle of an outline lies on the top, in the sitter's words. */
function whereOf(row: InsertRow, first: InsertRow, say: (mm: number) => string): string {
  const { minX, maxX, minY, maxY } = boundsOfRegions(row.footprint);
  const [x, y] = [(minX + maxX) / 2, (minY + maxY) / 2];
  const off = (mm: number, less: string, more: string): string =>
    Math.abs(mm) < SAME ? 'on the middle line' : `${say(Math.abs(mm))} to the ${mm < 0 ? less : more}`;
  const turned = turnOnto(first, row) === 0 ? '' : ', turned by half a turn';
  return `middle of the outline ${off(x, 'left', 'right')} and ${off(y, 'front', 'back')}${turned}`;
}

const outlineMarks = ({ outer, holes }: Region): readonly Mark[] =>
  [outer, ...holes].map(({ edges }) => pathMark('hidden', edges, true));

function holeMarks(at: Vec, diameter: number): readonly Mark[] {
  const reach = diameter / 2 + CROSS;
  return [
    pathMark('part', circleOutline(at, diameter / 2, DRAWN).edges, true),
    pathMark('joint', strokes([vec(at.x - reach, at.y), vec(at.x + reach, at.y)])),
    pathMark('joint', strokes([vec(at.x, at.y - reach), vec(at.x, at.y + reach)])),
  ];
}

/** Where the top's long middle line crosses the outline, with an arrow along the table: there wood stays still. */
function middleLine({ minX, maxX, minY, maxY }: ReturnType<typeof boundsOfRegions>): readonly Mark[] {
  if (minY > 0 || maxY < 0) return [];
  const [from, to] = [vec(minX - 10, 0), vec(maxX + 14, 0)];
  return [
    pathMark('axis', [stroke(from, to)]),
    narrowHead('axis', to, vec(1, 0)),
    textMark('middle line of the top', vec(maxX + 16, -1.25), { height: 2.5, role: 'dimension' }),
  ];
}

/** From the first hole to the last. */
function checkOf(holes: readonly Vec[]): readonly CheckLength[] {
  const [from, to] = [holes[0], holes.at(-1)];
  if (from === undefined || to === undefined || holes.length < 2) return [];
  return [{ name: 'A', from, to, nominal: distance(from, to) }];
}

const finer = (lengths: LengthStyle): LengthStyle =>
  lengths.unit === 'mm'
    ? { ...lengths, decimals: Math.max(1, lengths.decimals) }
    : { ...lengths, denominator: 64 };
