import { boundsOfRegions, type Line, norm, type Region } from '../../geometry/index.ts';
import type { Mark } from '../api.ts';
import { type Drawing, pathMark } from '../layout/drawing.ts';
import { edgesOf } from '../layout/edges-of.ts';
import { writeExact } from '../layout/figures.ts';
import { inFrame } from '../layout/oriented-box.ts';
import { stroke } from '../layout/strokes.ts';
import { crossingsOf } from './crossings.ts';
import { drawLeader } from './leader.ts';
import type { PatternSource } from './source.ts';

/** Hatching lines of one place, at most; wide places are hatched more openly. */
const MOST_LINES = 80;
/** ISO 128-2: parallel lines no closer than 0.7 mm. */
const LEAST_PITCH = 0.7;

/** Wood that stays is hatched rising, wood that is lost falling: told apart without colour. */
export function hatchMarks(source: PatternSource): readonly Mark[] {
  return source.routing.differences.map(({ kind, region }) =>
    pathMark('residue', hatch([region], kind === 'left' ? Math.PI / 4 : (3 * Math.PI) / 4)),
  );
}

/** Parallel lines at an angle inside regions. */
export function hatch(regions: readonly Region[], angle: number): readonly Line[] {
  const edges = edgesOf(regions);
  if (edges.length === 0) return [];
  const box = boundsOfRegions(regions);
  const middle = { x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 };
  const reach = norm(box.maxX - box.minX, box.maxY - box.minY) / 2 + 0.1;
  const pitch = Math.max(LEAST_PITCH, (2 * reach) / MOST_LINES);
  const lines: Line[] = [];
  for (let y = -reach + pitch / 2; y < reach; y += pitch) {
    const from = inFrame(middle, angle, { x: -reach, y });
    const crossings = crossingsOf(edges, from, inFrame(middle, angle, { x: reach, y }));
    for (let i = 0; i + 1 < crossings.length; i++) {
      const here = crossings[i]!;
      if (!here.leaves && crossings[i + 1]!.leaves) lines.push(stroke(here.at, crossings[i + 1]!.at));
    }
  }
  return lines;
}

/** What the cutter leaves or takes, in words beside the place. */
export function drawResidueWords(drawing: Drawing, source: PatternSource): void {
  for (const { kind, at, reach } of source.routing.differences) {
    const far = writeExact(reach, source.options.lengths);
    const words =
      kind === 'left' ? `wood stays here, up to ${far}: by hand` : `cutter takes up to ${far} here`;
    drawLeader(drawing, at, words, { role: 'residue', end: 'none' });
  }
}
