import type { Form } from '../sketch/index.ts';
import { DESIGN_VERSION, type Design, type PatternRequest } from './design-schema.ts';

/** What a maker says when beginning a design. */
export interface Beginning
  extends Pick<Design, 'name' | 'parameters' | 'units' | 'tooling' | 'paper' | 'base' | 'wood' | 'site'> {
  /** The form, and its own text, which the design keeps. */
  readonly form: Pick<Form, 'name' | 'version'>;
  readonly text: string;
  readonly parts: readonly string[];
  /** Today by ISO 8601. */
  readonly date: string;
}

/** A new design at revision A, with one pattern of each part that shows everything. */
export function startDesign({ name, form, text, parts, date, ...said }: Beginning): Design {
  return {
    legwright: DESIGN_VERSION,
    name,
    revision: { index: 'A', date },
    units: said.units,
    form: { name: form.name, version: form.version, text: linesOfForm(text) },
    parameters: said.parameters,
    tooling: said.tooling,
    paper: said.paper,
    patterns: parts.map((part): PatternRequest => ({ part, view: 'all', mirrored: false })),
    grids: {},
    measured: {},
    ...(said.base === undefined ? {} : { base: said.base }),
    ...(said.wood === undefined ? {} : { wood: said.wood }),
    ...(said.site === undefined ? {} : { site: said.site }),
  };
}

/** A form's text as a design keeps it. */
export function linesOfForm(text: string): readonly string[] {
  return text
    .replace(/^\uFEFF/, '')
    .replaceAll('\r\n', '\n')
    .split('\n');
}
