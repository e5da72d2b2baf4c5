import type { Result } from '../../core/index.ts';
import {
  areaOfOutline,
  distance,
  type Edge,
  findFaults,
  nearestOnEdge,
  type Outline,
  POSITION_TOLERANCE,
  reverseEdge,
} from '../../geometry/index.ts';
import type { NamedCorner } from '../api.ts';
import { type Desk, openDesk } from '../evaluate/desk.ts';
import type { Sheet } from '../evaluate/sheet.ts';
import { showPoint } from '../evaluate/show.ts';
import { keyOf } from '../form/check-cycles.ts';
import { startName } from '../form/outline-names.ts';
import type { OutlineSpec } from '../schema/construction.ts';
import { cutCorner } from './cut-corner.ts';
import type { DrawnEdge } from './drawn-edge.ts';
import { mirrorHalf } from './mirror-half.ts';
import type { Side } from './side.ts';

/** A closed outline of a form, anticlockwise, with the corners it had before any was cut. */
export interface AssembledOutline {
  readonly outline: Outline;
  readonly corners: readonly NamedCorner[];
}

/** An outline from its drawn edges: closed, mirrored, its corners cut, free of crossings. */
export function assembleOutline(name: string, sheet: Sheet): Result<AssembledOutline> {
  const desk = openDesk(sheet);
  const spec = sheet.form.data.outlines[name]!;
  return desk.close(assemble(name, spec, desk));
}

function assemble(name: string, spec: OutlineSpec, desk: Desk): AssembledOutline | undefined {
  const edges = presentEdges(name, spec, desk);
  if (edges === undefined) return undefined;
  const start = startName(spec)!;
  const half = edges.map(({ name: id, role, pieces, corner }): Side => ({ name: id, role, pieces, corner }));
  const whole =
    spec.mirror === undefined
      ? closeLoop(name, edges, half, start, desk)
      : mirrorHalf(half, start, spec.mirror, desk);
  if (whole === undefined) return undefined;
  const corners = whole.flatMap((side) =>
    side.corner === undefined ? [] : [{ name: side.corner, at: side.pieces.at(-1)!.to }],
  );
  const cut = cutCorners(whole, spec, desk);
  if (cut === undefined) return undefined;
  const pieces = cut.flatMap((side) => side.pieces);
  const isClockwise = areaOfOutline({ edges: pieces }) < 0;
  const outline = { edges: isClockwise ? pieces.toReversed().map(reverseEdge) : pieces };
  if (!isSound(name, outline, edges, desk)) return undefined;
  return { outline, corners };
}

/** The edges whose condition holds; nothing when one could not be drawn. */
function presentEdges(name: string, spec: OutlineSpec, desk: Desk): readonly DrawnEdge[] | undefined {
  const edges: DrawnEdge[] = [];
  for (const index of spec.edges.keys()) {
    const edge = desk.take(desk.sheet.edges.get(keyOf(name, index))!);
    if (edge === undefined) return undefined;
    if (edge === 'absent') continue;
    if (edges.some((each) => each.name === edge.name)) {
      return desk.refuse(
        edge.place,
        'form.twice',
        `${name} has two edges called ${edge.name} with these numbers`,
        'conditions that exclude each other',
      );
    }
    edges.push(edge);
  }
  if (edges.length > 0) return edges;
  return desk.refuse(
    spec.start.source.place,
    'form.absent',
    `${name} has no edges with these numbers`,
    'an edge that is present',
  );
}

/** A loop must end where it starts; from then on it does so exactly. */
function closeLoop(
  name: string,
  edges: readonly DrawnEdge[],
  sides: readonly Side[],
  start: string,
  desk: Desk,
): readonly Side[] | undefined {
  const last = edges.at(-1)!;
  const { from } = edges[0]!;
  if (distance(last.to, from) > POSITION_TOLERANCE) {
    const { style } = desk.sheet;
    const message = `${name} does not close: it starts at ${showPoint(from, style)} and ends at ${showPoint(last.to, style)}`;
    return desk.refuse(last.place, 'form.open', message, `an edge that runs to ${start}`);
  }
  const side = sides.at(-1)!;
  const piece: Edge = { ...side.pieces.at(-1)!, to: from };
  const corner = edges.length === 1 ? undefined : start;
  return [...sides.slice(0, -1), { ...side, pieces: [...side.pieces.slice(0, -1), piece], corner }];
}

function cutCorners(whole: readonly Side[], spec: OutlineSpec, desk: Desk): readonly Side[] | undefined {
  let sides = whole;
  const suffix = spec.mirror === undefined ? undefined : `_${spec.mirror.suffix.text}`;
  for (const [name, corner] of Object.entries(spec.corners ?? {})) {
    const holds = desk.holds(corner.when);
    if (holds === undefined) return undefined;
    if (!holds) continue;
    for (const each of suffix === undefined ? [name] : [name, `${name}${suffix}`]) {
      const at = sides.findIndex((side) => side.corner === each);
      // An absent edge takes its corner with it, and with the corner its round.
      if (at < 0) continue;
      const next = (at + 1) % sides.length;
      const cut = cutCorner(sides[at]!, sides[next]!, corner, each, desk);
      if (cut === undefined) return undefined;
      const [before, between, after] = cut;
      sides = sides.flatMap((side, index) =>
        index === at ? [before, between] : index === next ? [after] : [side],
      );
    }
  }
  return sides;
}

/** No edge may cross or touch another: otherwise both are named, and the place. */
function isSound(name: string, outline: Outline, drawn: readonly DrawnEdge[], desk: Desk): boolean {
  const faults = findFaults([{ outer: outline, holes: [] }]);
  const fault = faults.find(({ kind }) => kind === 'self-crossing') ?? faults[0];
  if (fault === undefined) return true;
  const at = showPoint(fault.at, desk.sheet.style);
  const first = outline.edges[fault.edge]!;
  const place = drawn.find((edge) => edge.name === first.tag.id)?.place ?? drawn[0]!.place;
  if (fault.kind !== 'self-crossing') {
    desk.refuse(place, 'form.outline', `${name} is no outline at ${at}: ${fault.message}`);
    return false;
  }
  const others = outline.edges.filter((_, index) => index !== fault.edge);
  const apart = (edge: Edge): number => nearestOnEdge(edge, fault.at).distance;
  const second = others.reduce((best, edge) => (apart(edge) < apart(best) ? edge : best), others[0]!);
  const message = `${name} crosses itself: ${first.tag.id} meets ${second.tag.id} at ${at}`;
  desk.refuse(place, 'form.crossing', message, 'edges that meet only at their corners');
  return false;
}
