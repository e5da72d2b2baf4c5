import { readdirSync, readFileSync } from 'node:fs';
import { boundsOfRegions, type Edge, transformRegion, turnBy } from '../../src/geometry/index.ts';
import {
  describeForm,
  evaluateForm,
  type Form,
  type ParameterValue,
  readForm,
  type Sketch,
  type SketchedPart,
} from '../../src/sketch/index.ts';

export type Values = Readonly<Record<string, ParameterValue>>;

const FOLDER = new URL('../../templates/', import.meta.url);

/** Every form that the project brings along. */
const ALL: readonly Form[] = readdirSync(FOLDER)
  .filter((name) => name.endsWith('.yaml'))
  .map((name) => {
    const read = readForm(readFileSync(new URL(name, FOLDER), 'utf8'), name);
    if (!read.ok) throw new Error(`${name}: ${JSON.stringify(read.problems, null, 1)}`);
    return read.value;
  });

/** Forms of one part. */
export const FORMS: readonly Form[] = ALL.filter(({ data }) => data.base === undefined);
/** Forms of a whole base. */
export const BASE_FORMS: readonly Form[] = ALL.filter(({ data }) => data.base !== undefined);

export function formCalled(name: string): Form {
  const form = ALL.find((candidate) => candidate.name === name);
  if (form === undefined) throw new Error(`there is no form ${name}`);
  return form;
}

/** A form's sketch at values that are known to suit it. */
export function sketchOf(name: string, values: Values = {}): Sketch {
  const sketch = evaluateForm(formCalled(name), values);
  if (!sketch.ok) throw new Error(`${name}: ${sketch.problems.map(({ message }) => message).join('; ')}`);
  return sketch.value;
}

/** The only part of a form at values that are known to suit it. */
export function partOf(name: string, values: Values = {}): SketchedPart {
  const [part, ...others] = sketchOf(name, values).parts;
  if (part === undefined || others.length > 0) throw new Error(`${name} does not make one part`);
  return part;
}

/** What the maker is told of the form, and why it refuses these values. */
export function refusalOf(name: string, values: Values): string {
  const sketch = evaluateForm(formCalled(name), values);
  return sketch.ok ? '' : sketch.problems.map(({ message }) => message).join('; ');
}

export function defaultOf(name: string, parameter: string): number {
  const found = describeForm(formCalled(name)).parameters.find((one) => one.name === parameter);
  if (found === undefined || typeof found.default !== 'number') throw new Error(`${name}.${parameter}`);
  return found.default;
}

/** Edges with this identity, in order. */
export function edgesCalled({ region }: SketchedPart, id: string): readonly Edge[] {
  const edges = [region.outer, ...region.holes].flatMap((loop) => loop.edges);
  const found = edges.filter(({ tag }) => tag.id === id);
  if (found.length === 0) throw new Error(`no edge ${id} among ${edges.map(({ tag }) => tag.id).join(' ')}`);
  return found;
}

export function edgeCalled(part: SketchedPart, id: string): Edge {
  const [edge, ...others] = edgesCalled(part, id);
  if (edge === undefined || others.length > 0) throw new Error(`${id} is not one edge`);
  return edge;
}

/** The part's outline as it stands in the base, face side towards us: turned about its origin until up is +y. */
export function standing(part: SketchedPart): SketchedPart {
  return { ...part, region: transformRegion(part.region, turnBy(Math.PI / 2 - part.up)) };
}

/** Lowest and highest place of a part that stands. */
export function heightsOf({ region }: SketchedPart): { readonly lowest: number; readonly highest: number } {
  const { minY, maxY } = boundsOfRegions([region]);
  return { lowest: minY, highest: maxY };
}

export const DEGREE = Math.PI / 180;
