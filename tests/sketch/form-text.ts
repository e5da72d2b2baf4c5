import type { Problem } from '../../src/core/index.ts';
import {
  evaluateForm,
  type Form,
  type ParameterValue,
  readForm,
  type Sketch,
} from '../../src/sketch/index.ts';

/** Sections of a form as YAML lines without their first indentation. A plate of 100 × 60 mm stands in for what is left out. */
export interface Sections {
  readonly parameters?: string;
  readonly values?: string;
  readonly points?: string;
  readonly planes?: string;
  /** Instead of the plate. */
  readonly outlines?: string;
  readonly openings?: string;
  readonly part?: string;
  readonly checks?: string;
}

export const PLATE = `
plate:
  start: a
  edges:
    - { line: bottom, to: b, role: sawn }
    - { line: right, to: c, role: routed }
    - { line: top, to: d, role: routed }
    - { line: left, to: a, role: routed }`;

const PLATE_POINTS = `
a: 0, 0
b: 100 mm, 0
c: 100 mm, 60 mm
d: 0, 60 mm`;

export function formText(sections: Sections = {}): string {
  const lines = [
    'form: test-plate',
    'grammar: 1',
    'version: 3',
    'title: Plate',
    'about: A plate to try things on.',
    'parameters:',
    indent(
      sections.parameters ??
        'height: { label: Height, kind: length, default: 700 mm, least: 300 mm, most: 900 mm, help: Floor to top. }',
    ),
  ];
  if (sections.values !== undefined) lines.push('values:', indent(sections.values));
  lines.push(
    'points:',
    indent(
      `${sections.outlines === undefined || sections.points === undefined ? PLATE_POINTS : ''}\n${sections.points ?? ''}`,
    ),
  );
  if (sections.planes !== undefined) lines.push('planes:', indent(sections.planes));
  lines.push('outlines:', indent(sections.outlines ?? PLATE));
  if (sections.openings !== undefined) lines.push('openings:', indent(sections.openings));
  const part = sections.part ?? '';
  const has = (key: string): boolean => new RegExp(`^${key}:`, 'm').test(part);
  const defaults = [
    'label: Plate',
    `outline: ${/^\s*(\w+):/m.exec(sections.outlines ?? PLATE)![1]}`,
    'thickness: 20 mm',
    'grain: 90 deg',
    'up: 90 deg',
    'quantity: { left: 1, right: 0 }',
    'centre_line: [line_from, line_to]',
  ].filter((line) => !has(line.split(':')[0]!));
  lines.push('parts:', '  plate:', indent(indent(`${defaults.join('\n')}\n${part}`)));
  if (sections.checks !== undefined) lines.push('checks:', indent(sections.checks));
  return lines.join('\n').replace('points:\n', 'points:\n  line_from: 0, 0\n  line_to: 0, 1 mm\n');
}

export function readOrThrow(text: string): Form {
  const form = readForm(text, 'plate.yaml');
  if (!form.ok)
    throw new Error(form.problems.map((each) => `${each.line}:${each.column} ${each.message}`).join('\n'));
  return form.value;
}

export function sketchOf(sections: Sections, values: Record<string, ParameterValue> = {}): Sketch {
  const sketch = evaluateForm(readOrThrow(formText(sections)), values);
  if (!sketch.ok)
    throw new Error(sketch.problems.map((each) => `${each.line}:${each.column} ${each.message}`).join('\n'));
  return sketch.value;
}

/** Problems found while the form is read, or else while it is evaluated. */
export function problemsOf(
  sections: Sections | string,
  values: Record<string, ParameterValue> = {},
): readonly Problem[] {
  const text = typeof sections === 'string' ? sections : formText(sections);
  const form = readForm(text, 'plate.yaml');
  if (!form.ok) return form.problems;
  const sketch = evaluateForm(form.value, values);
  if (sketch.ok) throw new Error('no problem was found');
  return sketch.problems;
}

export function messageOf(sections: Sections | string, values: Record<string, ParameterValue> = {}): string {
  return problemsOf(sections, values)[0]!.message;
}

/** The text that a problem points at, to the end of its line. */
export function pointedAt(text: string, problem: Problem): string {
  return text.split('\n')[problem.line! - 1]!.slice(problem.column! - 1);
}

/** The value of an expression, by way of a point: its x when it is a length. */
export function lengthOf(expression: string, values = ''): number {
  return sketchOf({ values, points: `probe: ${expression}, 0` }).points.probe!.x;
}

function indent(text: string): string {
  return text
    .split('\n')
    .filter((line) => line.trim() !== '')
    .map((line) => `  ${line}`)
    .join('\n');
}
