import type { Vec } from '../../../src/geometry/index.ts';
import type { PrintedPage, PrintedPath } from './read-pdf.ts';

/**
 * Puts printed sheets together as a maker does, from nothing but what is printed: the bars give the scale of each
 * sheet, marks of the same name are laid on each other, and the key on the first page says which line is the part's edge.
 */
export interface Assembled {
  /** The part's edge as printed on all sheets, in the frame of the first sheet, mm about its own page's centre. */
  readonly edge: readonly (readonly Vec[])[];
  /** How far apart marks of the same name lie at the most, mm. */
  readonly marksApart: number;
  readonly sheets: number;
  readonly seams: number;
}

const MM = 72 / 25.4;
const MARK_NAME = /^(\d+[a-z]+|[a-z]+\d+)\.\d+$/;

interface SheetOnBench {
  readonly marks: ReadonlyMap<string, Vec>;
  readonly edge: readonly (readonly Vec[])[];
}

interface Rigid {
  readonly cos: number;
  readonly sin: number;
  readonly x: number;
  readonly y: number;
}

export function reassemble(pages: readonly PrintedPage[], edgeWords = 'edge of the part'): Assembled {
  const sheets = pages.filter((page) => page.texts.some(({ text }) => /^Row \d+, sheet \d+$/.test(text)));
  const key = pages.flatMap((page) => sampleFor(page, edgeWords)).at(0);
  if (key === undefined) throw new Error(`no key says which line is the ${edgeWords}`);
  const bench = sheets.map((page) => onBench(page, key));
  const placed = new Map<number, Rigid>([[0, { cos: 1, sin: 0, x: 0, y: 0 }]]);
  const seams = new Set<string>();
  for (const [at, by] of placed) {
    bench.forEach((sheet, other) => {
      const shared = [...bench[at]!.marks.keys()].filter((name) => sheet.marks.has(name));
      for (const name of shared) if (other !== at) seams.add(name.replace(/\..*/, ''));
      if (placed.has(other) || shared.length === 0) return;
      if (shared.length < 2) throw new Error(`one mark alone, ${shared[0]}, joins two sheets`);
      const from = shared.map((name) => sheet.marks.get(name)!);
      const to = shared.map((name) => move(bench[at]!.marks.get(name)!, by));
      placed.set(other, rigidFit(from, to));
    });
  }
  if (placed.size < bench.length) throw new Error(`${bench.length - placed.size} sheets join no other`);
  return {
    edge: bench.flatMap((sheet, i) => sheet.edge.map((line) => line.map((p) => move(p, placed.get(i)!)))),
    marksApart: marksApart(bench, placed),
    sheets: bench.length,
    seams: seams.size,
  };
}

function marksApart(bench: readonly SheetOnBench[], placed: ReadonlyMap<number, Rigid>): number {
  const found = new Map<string, Vec>();
  let most = 0;
  bench.forEach((sheet, i) => {
    for (const [name, at] of sheet.marks) {
      const here = move(at, placed.get(i)!);
      const before = found.get(name);
      if (before !== undefined) most = Math.max(most, Math.hypot(here.x - before.x, here.y - before.y));
      found.set(name, here);
    }
  });
  return most;
}

/** The line beside which the key has the words. */
function sampleFor(page: PrintedPage, words: string): PrintedPath[] {
  const entry = page.texts.find(({ text }) => text === words);
  if (entry === undefined) return [];
  return page.paths.filter(({ paint, lines }) => {
    const [a, b] = lines[0] ?? [];
    if (paint !== 'stroke' || lines.length !== 1 || lines[0]!.length !== 2 || !a || !b) return false;
    const isLevel = Math.abs(a.y - b.y) < 0.01;
    return isLevel && Math.abs(a.y - entry.at.y) < 2 * MM && b.x < entry.at.x && entry.at.x - b.x < 6 * MM;
  });
}

function onBench(page: PrintedPage, key: PrintedPath): SheetOnBench {
  const { x, y } = scaleOf(page);
  const toMm = (p: Vec): Vec => ({ x: (p.x - page.width / 2) * x, y: (p.y - page.height / 2) * y });
  const edges = page.paths.filter(
    (path) =>
      path.paint === 'stroke' &&
      path.colour === key.colour &&
      Math.abs(path.width - key.width) < 1e-6 &&
      path.dash.join() === key.dash.join(),
  );
  return {
    marks: new Map([...marksOn(page)].map(([name, at]) => [name, toMm(at)])),
    edge: edges.flatMap((path) => path.lines.map((line) => line.map(toMm))),
  };
}

/** mm of true length for each printed point along x and y, from the bars. */
function scaleOf(page: PrintedPage): Vec {
  const scales = { x: Number.NaN, y: Number.NaN };
  for (const { text, at, angle } of page.texts) {
    const nominal = /^(50|100) mm$/.exec(text);
    if (nominal === null) continue;
    const isUp = Math.abs(Math.sin(angle)) > 0.5;
    const bars = page.paths.flatMap(({ paint, lines }) => {
      const [a, b] = lines[0] ?? [];
      if (paint !== 'stroke' || lines[0]?.length !== 2 || !a || !b) return [];
      const along = isUp ? Math.abs(b.y - a.y) : Math.abs(b.x - a.x);
      const across = isUp ? Math.abs(b.x - a.x) : Math.abs(b.y - a.y);
      if (across > 0.01 || Math.abs(along / MM - Number(nominal[1])) > 3) return [];
      const away = isUp ? Math.abs(a.x - at.x) : Math.abs(a.y - at.y);
      const end = isUp ? Math.max(a.y, b.y) - at.y : Math.max(a.x, b.x) - at.x;
      return away < 6 * MM && end > 0 && end < 20 * MM ? [{ along, away }] : [];
    });
    const nearest = bars.sort((a, b) => a.away - b.away)[0];
    if (nearest === undefined) continue;
    scales[isUp ? 'y' : 'x'] = Number(nominal[1]) / nearest.along;
  }
  if (!(scales.x > 0) || !(scales.y > 0)) throw new Error(`${page.label}: a scale bar is missing`);
  return scales;
}

/** Each mark's name and where the tips of its two triangles meet. */
function marksOn(page: PrintedPage): Map<string, Vec> {
  const corners = page.paths
    .filter(({ paint, lines }) => paint === 'fill' && lines.length === 1 && lines[0]!.length === 4)
    .map(({ lines }) => lines[0]!.slice(0, 3));
  const tips = corners.flatMap((one, i) =>
    corners
      .slice(i + 1)
      .flatMap((other) => one.filter((a) => other.some((b) => Math.hypot(a.x - b.x, a.y - b.y) < 0.001))),
  );
  const marks = new Map<string, Vec>();
  for (const { text, at } of page.texts) {
    if (!MARK_NAME.test(text)) continue;
    const away = (tip: Vec): number => Math.hypot(tip.x - at.x, tip.y - at.y);
    const tip = [...tips].sort((a, b) => away(a) - away(b))[0];
    if (tip === undefined || away(tip) > 8 * MM) throw new Error(`${page.label}: no mark stands by ${text}`);
    const before = marks.get(text);
    if (before !== undefined && before !== tip)
      throw new Error(`${page.label}: two marks are called ${text}`);
    marks.set(text, tip);
  }
  return marks;
}

/** The rigid motion that brings points best on others, by least squares. */
function rigidFit(from: readonly Vec[], to: readonly Vec[]): Rigid {
  const middle = (points: readonly Vec[]): Vec => ({
    x: points.reduce((sum, p) => sum + p.x, 0) / points.length,
    y: points.reduce((sum, p) => sum + p.y, 0) / points.length,
  });
  const a = middle(from);
  const b = middle(to);
  let along = 0;
  let turned = 0;
  from.forEach((p, i) => {
    const q = to[i]!;
    along += (p.x - a.x) * (q.x - b.x) + (p.y - a.y) * (q.y - b.y);
    turned += (p.x - a.x) * (q.y - b.y) - (p.y - a.y) * (q.x - b.x);
  });
  const size = Math.hypot(along, turned);
  const cos = along / size;
  const sin = turned / size;
  return { cos, sin, x: b.x - (cos * a.x - sin * a.y), y: b.y - (sin * a.x + cos * a.y) };
}

function move({ x, y }: Vec, by: Rigid): Vec {
  return { x: by.cos * x - by.sin * y + by.x, y: by.sin * x + by.cos * y + by.y };
}
