import type { OutlineSpec } from '../schema/construction.ts';
import type { FormData } from '../schema/form.ts';
import { MOST_DECLARATIONS, MOST_EDGES, MOST_NAILS, MOST_NAILS_IN_ALL } from '../source/limits.ts';
import type { Place } from '../source/place.ts';
import { type Complaints, noSuch } from './complaints.ts';
import { cornerNames, edgeName, startName } from './outline-names.ts';
import { own } from './own.ts';

/** Everything that a form calls by name must be there, once; and there must not be too much of it. */
export function checkReferences(
  data: FormData,
  places: ReadonlyMap<string, Place>,
  complaints: Complaints,
): void {
  const placeOf = (section: string, name: string): Place =>
    places.get(`${section}#${name}`) ?? { line: 1, column: 1, path: `${section}.${name}` };
  checkCounts(data, complaints);
  checkSharedNames(data, placeOf, complaints);
  for (const [name, outline] of Object.entries(data.outlines)) {
    checkOutline(name, outline, placeOf, complaints);
  }
  const outlines = Object.keys(data.outlines);
  const openings = Object.keys(data.openings ?? {});
  for (const opening of Object.values(data.openings ?? {})) {
    if (!('outline' in opening) || outlines.includes(opening.outline.text)) continue;
    const { place, text } = opening.outline;
    complaints.add(place, 'form.unknown', noSuch('outline', text, outlines));
  }
  for (const part of Object.values(data.parts)) {
    const { place, text } = part.outline;
    if (!outlines.includes(text)) complaints.add(place, 'form.unknown', noSuch('outline', text, outlines));
    for (const [index, opening] of (part.openings ?? []).entries()) {
      if (!openings.includes(opening.text)) {
        complaints.add(opening.place, 'form.unknown', noSuch('opening', opening.text, openings));
      } else if (part.openings?.findIndex((each) => each.text === opening.text) !== index) {
        complaints.add(opening.place, 'form.twice', `${opening.text} is cut twice`);
      }
    }
  }
  for (const point of Object.values(data.points ?? {})) {
    if (!('along' in point)) continue;
    const { outline, edge, source } = point.along;
    const edges = own(data.outlines, outline)?.edges.map((each) => edgeName(each).text);
    if (edges === undefined)
      complaints.add(source.place, 'form.unknown', noSuch('outline', outline, outlines));
    else if (!edges.includes(edge)) complaints.add(source.place, 'form.unknown', noSuch('edge', edge, edges));
  }
  if (Object.keys(data.parts).length === 0)
    complaints.add(placeOf('', 'parts'), 'form.missing', 'a form makes at least one part');
}

function checkCounts(data: FormData, complaints: Complaints): void {
  const top: Place = { line: 1, column: 1, path: '' };
  const outlines = Object.values(data.outlines);
  const sections = [
    data.parameters,
    data.values,
    data.points,
    data.planes,
    data.openings,
    data.parts,
    data.checks,
    data.outlines,
    data.base?.planes,
    data.base?.places,
    data.base?.joints,
    data.handles,
  ];
  const inside = [
    ...Object.values(data.parts).flatMap((part) => [part.pieces, part.joints, part.dimensions]),
    ...outlines.map((each) => each.corners),
  ];
  const declared = [...sections, ...inside].reduce((sum, each) => sum + Object.keys(each ?? {}).length, 0);
  const edges = outlines.reduce((sum, outline) => sum + outline.edges.length, 0);
  const over = (count: number, most: number, what: string): void => {
    if (count <= most) return;
    complaints.add(top, 'form.too-many', `the form has ${count} ${what}: at most ${most} are read`, {
      expected: `at most ${most}`,
    });
  };
  over(declared, MOST_DECLARATIONS, 'declarations');
  over(edges, MOST_EDGES, 'edges');
  let nails = 0;
  for (const edge of outlines.flatMap((outline) => outline.edges)) {
    if (!('batten' in edge)) continue;
    const own = edge.through?.length ?? 0;
    over(own, MOST_NAILS, `nails in ${edge.batten.text}`);
    nails += own;
  }
  over(nails, MOST_NAILS_IN_ALL, 'nails');
}

function checkSharedNames(
  data: FormData,
  placeOf: (section: string, name: string) => Place,
  complaints: Complaints,
): void {
  const taken = new Map<string, string>();
  for (const section of ['parameters', 'values', 'points', 'planes'] as const) {
    for (const name of Object.keys(data[section] ?? {})) {
      const before = taken.get(name);
      if (before === undefined) taken.set(name, section);
      else
        complaints.add(placeOf(section, name), 'form.twice', `${name} is declared under ${before} already`);
    }
  }
}

function checkOutline(
  name: string,
  outline: OutlineSpec,
  placeOf: (section: string, name: string) => Place,
  complaints: Complaints,
): void {
  const path = `outlines.${name}`;
  if (outline.edges.length === 0)
    complaints.add(placeOf('outlines', name), 'form.missing', `${name} has no edges`);
  if (startName(outline) === undefined) {
    const { place } = outline.start.source;
    complaints.add(place, 'form.corner', 'the start is not a plain name: give its corner a name with corner');
  }
  const seen = new Map<string, boolean>();
  for (const edge of outline.edges) {
    const { text, place } = edgeName(edge);
    const conditional = edge.when !== undefined;
    // Two edges may share a name when each has a condition: they are two ways of drawing one edge.
    if (seen.get(text) === false || (seen.has(text) && !conditional)) {
      complaints.add(place, 'form.twice', `${name} has an edge ${text} already`);
    }
    seen.set(text, conditional);
    if (edge.corner === undefined && edge.to.node.type !== 'name') {
      complaints.add(
        edge.to.source.place,
        'form.corner',
        'this is not a plain name: give the corner a name with corner',
      );
    }
  }
  if (outline.mirror !== undefined) {
    const suffix = `_${outline.mirror.suffix.text}`;
    const names = [...seen.keys(), ...Object.keys(outline.corners ?? {})];
    const clash = names.find((each) => names.includes(`${each}${suffix}`));
    if (clash !== undefined) {
      const message = `${name} has an edge called ${clash}${suffix} already: change a name or the suffix`;
      complaints.add(outline.mirror.suffix.place, 'form.twice', message);
    }
  }
  const corners = cornerNames(outline);
  for (const corner of Object.keys(outline.corners ?? {})) {
    const place = placeOf(`${path}.corners`, corner);
    if (!corners.includes(corner)) complaints.add(place, 'form.unknown', noSuch('corner', corner, corners));
    else if (seen.has(corner))
      complaints.add(place, 'form.twice', `${name} has an edge called ${corner} as well`);
  }
}
