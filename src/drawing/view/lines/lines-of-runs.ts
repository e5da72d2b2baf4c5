import { arc, type Edge, line, norm, type Vec } from '../../../geometry/index.ts';
import type { ViewLine } from '../api.ts';
import type { Chain, ChainPiece } from './chain.ts';
import { placeOn, type SeenRun } from './merge-runs.ts';

/** Runs of one chain that go on from one another, alike seen, as one line each; chords of a circle seen as a circle as its arcs. */
export function linesOfRuns(runs: readonly SeenRun[]): readonly ViewLine[] {
  const byChain = new Map<Chain, SeenRun[]>();
  for (const run of runs) {
    const list = byChain.get(run.chain);
    if (list === undefined) byChain.set(run.chain, [run]);
    else list.push(run);
  }
  return [...byChain].flatMap(([chain, own]) =>
    goingOn(own).map((run) => ({
      part: chain.part,
      edge: chain.tag,
      on: chain.on,
      visible: run.visible,
      edges: edgesOfRun(run),
    })),
  );
}

function goingOn(runs: readonly SeenRun[]): readonly SeenRun[] {
  const result: SeenRun[] = [];
  for (const run of runs.toSorted((a, b) => a.from - b.from)) {
    const last = result.at(-1);
    if (last !== undefined && last.to === run.from && last.visible === run.visible) {
      result[result.length - 1] = { ...last, to: run.to };
    } else result.push(run);
  }
  return result;
}

function edgesOfRun({ chain, from, to }: SeenRun): readonly Edge[] {
  const edges: Edge[] = [];
  let start = place(chain, from, chain.pieces[Math.floor(from)]!);
  for (let i = Math.floor(from); i < to; ) {
    const piece = chain.pieces[i]!;
    const begin = Math.max(from, i);
    let next = i + 1;
    while (next < to && isSame(piece, chain.pieces[next]!)) next += 1;
    const stop = Math.min(next, to);
    const end = place(chain, stop, piece);
    // Ends that meet after one chord or less are a speck, not a circle.
    const isWhole = piece.round !== undefined && stop - begin > 2 && near(start, end);
    if (piece.round === undefined) edges.push(line(start, end, chain.tag));
    else edges.push(arc(start, isWhole ? start : end, piece.round.centre, piece.round.turn, chain.tag));
    start = end;
    i = next;
  }
  return edges;
}

/** The point at a place; between two corners of a circle's chords it is moved out to the circle. */
function place(chain: Chain, at: number, { round }: ChainPiece): Vec {
  const p = placeOn(chain, at);
  if (round === undefined || Number.isInteger(at)) return p;
  const { centre, radius } = round;
  const away = norm(p.x - centre.x, p.y - centre.y);
  return {
    x: centre.x + ((p.x - centre.x) * radius) / away,
    y: centre.y + ((p.y - centre.y) * radius) / away,
  };
}

/** Pieces of one straight line, or of one circle seen as a circle. Chords of any other curve stay apart. */
function isSame(a: ChainPiece, b: ChainPiece): boolean {
  if (a.source === undefined || a.source !== b.source) return false;
  return a.source.kind === 'line' || a.round !== undefined;
}

const near = (a: Vec, b: Vec): boolean => norm(a.x - b.x, a.y - b.y) < 1e-7;
