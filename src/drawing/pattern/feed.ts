import {
  add,
  angleOf,
  distance,
  leftOf,
  locate,
  POSITION_TOLERANCE,
  polar,
  scale,
  type Vec,
} from '../../geometry/index.ts';
import { blowOuts, type FeedRun, type Tooling } from '../../routing/index.ts';
import type { Mark } from '../api.ts';
import { type Drawing, fits, pathMark, textMark } from '../layout/drawing.ts';
import { openHead, readable, stroke } from '../layout/strokes.ts';
import { drawBackingBlock } from './backing-block.ts';
import { besideChain, type Chain, chainOf, onChain } from './chain.ts';
import type { PatternSource } from './source.ts';

const MACHINE: Readonly<Record<Tooling['machine'], string>> = {
  'hand-held': 'hand-held',
  table: 'router table',
};

/** Edges shorter than this carry no arrow of their own, mm. */
const LEAST = 16;
/** One arrow on every so many mm, so that none of the sheets is without. */
const REPEAT = 230;
const MOST_ARROWS = 100;
const ARROW = 26;
/** Distances from the edge tried for an arrow, mm. */
const LANES = [6.5, 9, 12, 16] as const;
/** Teeth along an edge that is cut against the grain: how far apart, how long, mm. */
const TOOTH_PITCH = 5;
const TOOTH = 1.8;
const MOST_TEETH = 10_000;

/** How an arrow is set: lengths and heights in mm. */
interface Setting {
  readonly longest: number;
  readonly lanes: readonly number[];
  readonly height: number;
}

const USUAL: Setting = { longest: ARROW, lanes: LANES, height: 2.5 };
/** In an opening too narrow for the usual arrow a small one, without words where even they find no room. */
const SMALL: Setting = { longest: 15, lanes: [5.5, 4, 3, 2.2], height: 1.8 };

interface Run extends Chain {
  readonly edge: string;
  readonly grain: FeedRun['grain'];
  /** 1 when the waste lies on the left of the feed, −1 on its right. */
  readonly waste: 1 | -1;
}

/** Teeth in the waste along every edge that is cut against the grain; drawn before any lettering. */
export function drawTeeth(drawing: Drawing, source: PatternSource): void {
  const clear = Math.max(0.6, source.routing.tooling.sawAllowance + 0.6);
  for (const run of runsOf(source)) {
    if (run.grain !== 'against') continue;
    const count = Math.min(MOST_TEETH, Math.max(1, Math.floor(run.length / TOOTH_PITCH)));
    const teeth = Array.from({ length: count }, (_, i) => {
      const { at, direction } = onChain(run, ((i + 0.5) * run.length) / count);
      const out = scale(leftOf(direction), run.waste);
      const root = add(at, scale(out, clear));
      // They lean against the feed, as fibres do that the cutter lifts.
      return stroke(root, add(add(root, scale(out, TOOTH)), scale(direction, -TOOTH * 0.8)));
    });
    drawing.draw([pathMark('against', teeth)]);
  }
}

/**
 * Arrows beside the edges in the waste: which way the tool is fed, on which machine, and how the cut meets the grain. An
 * arrow is drawn only where its words fit.
 */
export function drawFeed(drawing: Drawing, source: PatternSource): void {
  const machine = MACHINE[source.routing.tooling.machine];
  const shown = new Set<Run>();
  const runs = runsOf(source);
  const corners = blowOuts(source.part, source.routing.feed, source.routing.tooling.machine);
  const isFirst = (run: Run): boolean =>
    corners.some(({ edge, cure }) => edge === run.edge && cure === 'first');
  for (const corner of corners.filter(({ cure }) => cure === 'block'))
    drawBackingBlock(drawing, source, corner);
  for (const run of runs) {
    if (run.length < LEAST) continue;
    const count = Math.min(MOST_ARROWS, Math.max(1, Math.round(run.length / REPEAT)));
    for (let i = 0; i < count; i++) {
      const middle = ((i + 0.5) * run.length) / count;
      if (drawArrow(drawing, run, middle, wordsOf(run, machine, isFirst(run)), USUAL)) shown.add(run);
    }
  }
  for (const hole of source.part.region.holes) {
    const ids = new Set(hole.edges.map(({ tag }) => tag.id));
    const own = runs.filter(({ edge }) => ids.has(edge));
    if (own.some((run) => shown.has(run))) continue;
    const longestFirst = [...own].sort((a, b) => b.length - a.length);
    for (const words of ['feed', '']) {
      if (longestFirst.some((run) => drawArrow(drawing, run, run.length / 2, [words], SMALL))) break;
    }
  }
}

function wordsOf(run: Run, machine: string, first: boolean): readonly string[] {
  switch (run.grain) {
    case 'with':
      return [`feed, ${machine}, with the grain`, `feed, ${machine}`];
    case 'against':
      return [
        `feed, ${machine}, AGAINST the grain: turn the work over`,
        `feed, ${machine}, AGAINST the grain`,
      ];
    case 'end':
      return [
        `feed, ${machine}, end grain${first ? ': CUT FIRST' : ''}`,
        ...(first ? ['end grain: CUT FIRST'] : []),
        `feed, ${machine}`,
      ];
    case 'neutral':
      return [`feed, ${machine}`];
    default:
      return run.grain satisfies never;
  }
}

function drawArrow(
  drawing: Drawing,
  run: Run,
  middle: number,
  words: readonly string[],
  { longest, lanes, height }: Setting,
): boolean {
  const long = Math.min(longest, run.length * 0.75);
  const role = run.grain === 'against' ? 'against' : 'feed';
  for (const text of words) {
    for (const lane of lanes) {
      for (const shift of [0, 22, -22, 44, -44, 66, -66]) {
        const at = middle + shift;
        if (at - long / 2 < 0 || at + long / 2 > run.length) continue;
        const shaft = besideChain(run, at - long / 2, at + long / 2, run.waste * lane);
        if (shaft === undefined || shaft.length === 0) continue;
        const marks = arrowWithWords(run, shaft, at, lane, { text, height, role });
        const letters = marks.filter((mark) => mark.kind === 'text');
        const room = {
          centre: marks[0]!.kind === 'path' ? besidePoint(run, at, lane) : run.edges[0]!.from,
          halfWidth: long / 2,
          halfHeight: 1.2,
          angle: angleOf(onChain(run, at).direction),
        };
        if (!drawing.occupancy.isFree(room) || !letters.every((mark) => fits(drawing, mark))) continue;
        drawing.draw(marks);
        return true;
      }
    }
  }
  return false;
}

function besidePoint(run: Run, at: number, lane: number): Vec {
  const place = onChain(run, at);
  return add(place.at, scale(leftOf(place.direction), run.waste * lane));
}

function arrowWithWords(
  run: Run,
  shaft: readonly Run['edges'][number][],
  at: number,
  lane: number,
  {
    text,
    height,
    role,
  }: { readonly text: string; readonly height: number; readonly role: 'feed' | 'against' },
): readonly Mark[] {
  const tip = shaft.at(-1)!.to;
  const { direction } = onChain(run, at);
  const end = shaft.at(-1)!;
  const heading = end.kind === 'line' ? direction : headingAtEnd(end);
  const angle = readable(angleOf(direction));
  const out = scale(leftOf(direction), run.waste);
  const up = leftOf(polar(angle));
  const isAbove = up.x * out.x + up.y * out.y > 0;
  const baseline = isAbove ? lane + 1.7 : lane + 1.7 + height;
  return [
    pathMark(role, shaft),
    pathMark(role, openHead(tip, heading, 2.6)),
    ...(text === ''
      ? []
      : [textMark(text, besidePoint(run, at, baseline), { height, angle, align: 'middle', role })]),
  ];
}

function headingAtEnd(edge: Extract<Run['edges'][number], { kind: 'arc' }>): Vec {
  const ray = { x: edge.to.x - edge.centre.x, y: edge.to.y - edge.centre.y };
  return scale(leftOf(scale(ray, 1 / edge.radius)), edge.turn);
}

/** Feed runs joined where they follow each other on one edge and meet the grain alike. */
function runsOf(source: PatternSource): readonly Run[] {
  const groups: { grain: FeedRun['grain']; edge: string; edges: FeedRun['path'][] }[] = [];
  for (const run of source.routing.feed) {
    const last = groups.at(-1);
    const end = last?.edges.at(-1)?.to;
    const follows = end !== undefined && distance(end, run.path.from) <= 10 * POSITION_TOLERANCE;
    if (last && follows && last.edge === run.edge && last.grain === run.grain) last.edges.push(run.path);
    else groups.push({ grain: run.grain, edge: run.edge, edges: [run.path] });
  }
  return groups.map(({ grain, edge, edges }) => {
    const chain = chainOf(edges);
    const { at, direction } = onChain(chain, chain.length / 2);
    const beside = add(at, scale(leftOf(direction), 0.05));
    const waste = locate([source.part.region], beside) === 'inside' ? -1 : 1;
    return { ...chain, edge, grain, waste };
  });
}
