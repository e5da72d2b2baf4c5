import type { Outline, Region } from '../../geometry/index.ts';
import type { Routing } from '../../routing/index.ts';
import type { SketchedPart } from '../../sketch/index.ts';
import type { LineRole, PathMark, Scene } from '../api.ts';
import { boundsOfMarks } from '../scene/bounds-of-marks.ts';

/** What a part is routed by, over each other: part, template, what the cutter leaves, where that differs, and the saw line. */
export function routingScene(part: SketchedPart, routing: Routing): Scene {
  const marks = [
    ...routing.differences.flatMap(({ region }) => filled(region, 'residue')),
    ...routing.blank.flatMap((region) => outlines(region, 'saw-line')),
    ...outlines(part.region, 'part').map((mark) => ({ ...mark, part: part.name })),
    ...routing.asRouted.flatMap((region) => outlines(region, 'as-routed')),
    ...routing.template.flatMap((region) => outlines(region, 'template')),
  ];
  return { marks, box: boundsOfMarks(marks) };
}

/** The part's own edges each by itself, so that a pointer names them; other outlines as closed loops. */
function outlines(region: Region, role: LineRole): readonly PathMark[] {
  const loops = [region.outer, ...region.holes];
  if (role !== 'part') return loops.map(({ edges }) => ({ kind: 'path', role, edges, closed: true }));
  return loops.flatMap((loop) =>
    namedRuns(loop).map((edges): PathMark => ({ kind: 'path', role, edges, closed: false })),
  );
}

function namedRuns({ edges }: Outline): readonly Outline['edges'][] {
  const byName = new Map<string, Outline['edges'][number][]>();
  for (const edge of edges) byName.set(edge.tag.id, [...(byName.get(edge.tag.id) ?? []), edge]);
  return [...byName.values()];
}

function filled(region: Region, role: LineRole): readonly PathMark[] {
  const edges = [region.outer, ...region.holes].flatMap((loop) => loop.edges);
  return [{ kind: 'path', role, edges, closed: true, fill: 'solid' }];
}
