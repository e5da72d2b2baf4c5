import { namesIn } from '../expression/node.ts';
import type { FormData } from '../schema/form.ts';
import type { Place } from '../source/place.ts';
import type { Complaints } from './complaints.ts';
import { expressionsIn } from './expressions-in.ts';
import { edgeName } from './outline-names.ts';
import { own } from './own.ts';

/** Something that is made of other things. */
interface Maker {
  readonly label: string;
  readonly place: Place;
  readonly needs: readonly string[];
}

const MOST_CYCLES = 5;

/**
 * Nothing may need itself. Each circle is reported once, beginning with the member that stands first in the file:
 * `length → foot → length`. An edge of an outline needs the edges drawn before it. Without circles: the names of all
 * values, points, planes and edges (`outline[2]`), each after everything it needs.
 */
export function checkCycles(
  data: FormData,
  places: ReadonlyMap<string, Place>,
  complaints: Complaints,
): readonly string[] | undefined {
  const makers = makersOf(data, places);
  const done = new Set<string>();
  let cycles = 0;
  const visit = (key: string, way: readonly string[]): void => {
    const maker = makers.get(key);
    if (maker === undefined || done.has(key) || cycles >= MOST_CYCLES) return;
    const met = way.indexOf(key);
    if (met >= 0) {
      cycles += 1;
      report(
        way.slice(met).map((each) => makers.get(each)!),
        complaints,
      );
      return;
    }
    for (const need of maker.needs) visit(need, [...way, key]);
    done.add(key);
  };
  for (const key of makers.keys()) visit(key, []);
  return cycles > 0 ? undefined : [...done];
}

/** What each value, point, plane and edge (`outline[2]`) is made of directly, by its key. */
export function needsByKey(data: FormData): ReadonlyMap<string, readonly string[]> {
  return new Map([...makersOf(data, new Map())].map(([key, { needs }]) => [key, needs]));
}

function report(members: readonly Maker[], complaints: Complaints): void {
  const order = members.map((_, index) => index);
  const isBefore = (a: Place, b: Place): boolean =>
    a.line < b.line || (a.line === b.line && a.column < b.column);
  const first = order.reduce(
    (best, at) => (isBefore(members[at]!.place, members[best]!.place) ? at : best),
    0,
  );
  const labels = [...members.slice(first), ...members.slice(0, first)].map((each) => each.label);
  // An outline's edges follow each other: naming the run once is enough.
  const shown = labels.filter((label, index) => label !== labels[index - 1]);
  const circle = [...shown, shown[0]!].join(' → ');
  complaints.add(members[first]!.place, 'form.cycle', `these need each other: ${circle}`, { found: circle });
}

function makersOf(data: FormData, places: ReadonlyMap<string, Place>): ReadonlyMap<string, Maker> {
  const makers = new Map<string, Maker>();
  for (const section of ['values', 'points', 'planes'] as const) {
    for (const [name, part] of Object.entries(data[section] ?? {})) {
      const place = places.get(`${section}#${name}`) ?? { line: 1, column: 1, path: name };
      makers.set(name, { label: name, place, needs: [...needsOf(part), ...edgesAlong(part, data)] });
    }
  }
  for (const [outline, { start, edges }] of Object.entries(data.outlines)) {
    for (const [index, edge] of edges.entries()) {
      const { text, place } = edgeName(edge);
      const before = index === 0 ? needsOf(start) : [keyOf(outline, index - 1)];
      makers.set(keyOf(outline, index), {
        label: `${outline}.${text}`,
        place,
        needs: [...before, ...needsOf(edge)],
      });
    }
  }
  return makers;
}

function needsOf(part: unknown): readonly string[] {
  return expressionsIn(part).flatMap((expression) => namesIn(expression.node));
}

function edgesAlong(part: object, data: FormData): readonly string[] {
  if (!('along' in part)) return [];
  const { outline, edge } = part.along as { readonly outline: string; readonly edge: string };
  const edges = own(data.outlines, outline)?.edges ?? [];
  return edges.flatMap((each, index) => (edgeName(each).text === edge ? [keyOf(outline, index)] : []));
}

/** How the edge with this index in an outline is called in the order of making. */
export function keyOf(outline: string, index: number): string {
  return `${outline}[${index}]`;
}
