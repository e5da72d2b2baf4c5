import { type Box, boundsOfEdges, type Vec, vec } from '../../geometry/index.ts';
import { MM_PER } from '../../measure/index.ts';
import { boxRoundText } from '../grid/content.ts';
import { GRAPHITE, type PageItem, type TextItem, THIN, WHITE } from './ink.ts';
import { cornersOf, filled, polyline } from './items.ts';
import { linesThrough, type Occupied, occupiedNear, touches } from './occupied.ts';
import type { Work } from './work.ts';

/** Room of a bar across its length, mm, and beyond its ends. */
const BREADTH = 11;
const BEYOND = 3;
/** Distance between the two lines of a bar, and lengths of its ticks, mm. */
const APART = 1.2;
const TICKS = { end: 2.6, tenth: 1.8, small: 1 } as const;
const SMALL = 1.8;
/** Room for the figure at the end of a ruler, mm. */
const FIGURE_ROOM = 13;
/** Places for a bar are tried in steps of this, mm. */
const STEP = 3;
/** A line of the work's own outline in the way counts as so many; a free place that lies on the work as part of one. */
const OUTLINE_WEIGHT = 3;
const ON_THE_WORK = 0.5;
/** A line through the bar's own lettering counts so many times more: across the ruler alone both can still be read. */
const THROUGH_WORDS = 4;
const OTHER_BAR = 100;

/** A bar on its baseline: 100 mm above it and 4 in below, or 50 mm and 2 in where paper is small. */
export interface ScaleBar {
  readonly at: Vec;
  readonly direction: 'across' | 'up';
  readonly mm: 50 | 100;
  readonly edgeOfPaper: 'long' | 'short';
  /** Its words stand at the end of the ruler or at the start, where fewer lines pass. */
  readonly wordsAt: 'start' | 'end';
}

/**
 * A scale bar along each direction of the page, inside a box, off the work where there is room, else where the fewest
 * lines are in the way; the one across near the foot, the other near the left, when that is as good as elsewhere. Both
 * orders are tried, for the first one takes room from the second.
 */
export function placeBars(
  room: Box,
  drawn: { readonly occupied: Occupied; readonly work: Work },
  orientation: 'portrait' | 'landscape',
): readonly [ScaleBar, ScaleBar] {
  const near = { occupied: occupiedNear(drawn.occupied, room), work: drawn.work.near(room) };
  const across = placeBar('across', room, near, undefined, orientation);
  const up = placeBar('up', room, near, boxOf(across.bar), orientation);
  if (across.cost + up.cost === 0) return [across.bar, up.bar];
  const upFirst = placeBar('up', room, near, undefined, orientation);
  const acrossThen = placeBar('across', room, near, boxOf(upFirst.bar), orientation);
  return upFirst.cost + acrossThen.cost < across.cost + up.cost
    ? [acrossThen.bar, upFirst.bar]
    : [across.bar, up.bar];
}

function placeBar(
  direction: ScaleBar['direction'],
  room: Box,
  { occupied, work }: { readonly occupied: Occupied; readonly work: Work },
  taken: Box | undefined,
  orientation: 'portrait' | 'landscape',
): { readonly bar: ScaleBar; readonly cost: number } {
  const isAcross = direction === 'across';
  const extent = isAcross ? room.maxX - room.minX : room.maxY - room.minY;
  const mm = extent >= 4 * MM_PER.in + 2 * BEYOND ? 100 : 50;
  const edgeOfPaper = isAcross === (orientation === 'portrait') ? 'short' : 'long';
  const kind = { direction, mm, edgeOfPaper } as const;
  const size = boxOf({ ...kind, at: vec(0, 0) });
  let best: ScaleBar | undefined;
  let least = Infinity;
  const columns = Math.max(0, Math.floor((room.maxX - room.minX - (size.maxX - size.minX)) / STEP));
  const rows = Math.max(0, Math.floor((room.maxY - room.minY - (size.maxY - size.minY)) / STEP));
  for (let i = 0; i <= (isAcross ? rows : columns); i++) {
    for (let j = 0; j <= (isAcross ? columns : rows); j++) {
      const at = vec(
        room.minX - size.minX + STEP * (isAcross ? j : i),
        room.minY - size.minY + STEP * (isAcross ? i : j),
      );
      const box = boxOf({ ...kind, at });
      const cost =
        (taken !== undefined && touches(taken, box) ? OTHER_BAR : 0) +
        linesThrough(occupied, box) +
        OUTLINE_WEIGHT * work.linesThrough(box) +
        (work.holds(box) ? ON_THE_WORK : 0);
      if (cost >= least) continue;
      for (const wordsAt of ['start', 'end'] as const) {
        const bar: ScaleBar = { ...kind, at, wordsAt };
        const crossed = cost < 1 ? 0 : THROUGH_WORDS * throughWords(bar, { occupied, work });
        if (cost + crossed >= least) continue;
        best = bar;
        least = cost + crossed;
      }
      if (least === 0) return { bar: best!, cost: 0 };
    }
  }
  return { bar: best!, cost: least };
}

function throughWords(
  bar: ScaleBar,
  { occupied, work }: { readonly occupied: Occupied; readonly work: Work },
): number {
  return lettersOf(bar)
    .map(boxRoundLetters)
    .reduce((sum, box) => sum + linesThrough(occupied, box) + OUTLINE_WEIGHT * work.linesThrough(box), 0);
}

/** The room that a bar takes with its figures. */
export function boxOf({ at, direction, mm }: Pick<ScaleBar, 'at' | 'direction' | 'mm'>): Box {
  const long = (mm / 25) * MM_PER.in + BEYOND;
  return direction === 'across'
    ? { minX: at.x - BEYOND, minY: at.y - BREADTH / 2, maxX: at.x + long, maxY: at.y + BREADTH / 2 }
    : { minX: at.x - BREADTH / 2, minY: at.y - BEYOND, maxX: at.x + BREADTH / 2, maxY: at.y + long };
}

/** A place along a bar and beside it, mm from the start of its ruler. */
function placeOn({ at, direction }: ScaleBar, along: number, side: number): Vec {
  return direction === 'across' ? vec(at.x + along, at.y + side) : vec(at.x - side, at.y + along);
}

/** The four pieces of lettering of a bar. */
function lettersOf(bar: ScaleBar): readonly TextItem[] {
  const { direction, mm, edgeOfPaper, wordsAt } = bar;
  const inches = mm / 25;
  const lift = APART / 2 + TICKS.tenth + 0.8;
  const letter = (text: string, along: number, side: 1 | -1, align: 'left' | 'right'): TextItem => ({
    kind: 'text',
    text,
    at: placeOn(bar, along, side > 0 ? lift : -(lift + SMALL)),
    height: SMALL,
    angle: direction === 'across' ? 0 : Math.PI / 2,
    align,
    weight: 'regular',
    ink: GRAPHITE,
  });
  const said = (text: string, side: 1 | -1): TextItem =>
    wordsAt === 'start' ? letter(text, 0.8, side, 'left') : letter(text, mm - FIGURE_ROOM, side, 'right');
  return [
    letter(`${mm} mm`, mm - 0.8, 1, 'right'),
    said(`along the ${edgeOfPaper} edge of the paper`, 1),
    letter(`${inches} in`, inches * MM_PER.in - 0.8, -1, 'right'),
    said('measure before taping', -1),
  ];
}

function boxRoundLetters(item: TextItem): Box {
  return boundsOfEdges(boxRoundText({ ...item, kind: 'text', role: 'mark' }));
}

/** A bar; its lettering has a white ground where lines of the pattern would run through it. */
export function barItems(bar: ScaleBar, occupied: Occupied): PageItem[] {
  const { mm } = bar;
  const inches = mm / 25;
  const rule = (length: number, side: 1 | -1): PageItem =>
    polyline([placeOn(bar, 0, (side * APART) / 2), placeOn(bar, length, (side * APART) / 2)], THIN);
  const tick = (along: number, side: 1 | -1, tall: number): PageItem =>
    polyline(
      [placeOn(bar, along, (side * APART) / 2), placeOn(bar, along, side * (APART / 2 + tall))],
      THIN,
      GRAPHITE,
    );
  const tallAt = (i: number, every: number, last: number): number =>
    i === 0 || i === last ? TICKS.end : i % every === 0 ? TICKS.tenth : TICKS.small;
  const mmTicks = Array.from({ length: mm / 5 + 1 }, (_, i) => tick(i * 5, 1, tallAt(i, 2, mm / 5)));
  const inchTicks = Array.from({ length: inches * 4 + 1 }, (_, i) =>
    tick((i * MM_PER.in) / 4, -1, tallAt(i, 4, inches * 4)),
  );
  const letters = lettersOf(bar);
  const grounds = letters
    .map(boxRoundLetters)
    .filter((box) => linesThrough(occupied, box) > 0)
    .map((box) => filled(cornersOf(box), WHITE));
  return [...grounds, rule(mm, 1), rule(inches * MM_PER.in, -1), ...mmTicks, ...inchTicks, ...letters];
}
