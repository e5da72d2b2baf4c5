import {
  compute,
  type Design,
  defaultParameters,
  startDesign,
  usualPaper,
  usualTooling,
  usualUnits,
} from '../../../design/index.ts';
import { type Form, readForm } from '../../../sketch/index.ts';
import { FORM_TEXTS } from '../forms.ts';
import { known } from '../known.ts';

/** Begins a design of a form that comes with the program, with usual tools and paper. */
export function beginDesign(said: {
  readonly form: string;
  readonly name: string;
  readonly unit: 'mm' | 'in';
  /** ISO 8601. */
  readonly date: string;
}): Design {
  const form = formNamed(said.form);
  const beginning = {
    name: said.name,
    form,
    text: FORM_TEXTS.get(said.form)!,
    parameters: defaultParameters(form, said.unit),
    units: usualUnits(said.unit),
    tooling: usualTooling(said.unit),
    paper: usualPaper(said.unit),
    date: said.date,
  };
  const computed = compute(startDesign({ ...beginning, parts: [] }), {
    memo: known,
    wanted: { patterns: [], standing: false },
  });
  if (!computed.ok) throw new RangeError(`${said.form} cannot be made at its defaults`);
  return startDesign({ ...beginning, parts: computed.value.parts.map(({ part }) => part.name) });
}

/** A form that comes with the program. They are sound: the tests read and draw them all. Throws where there is none of the name. */
export function formNamed(name: string): Form {
  const read = readForm(FORM_TEXTS.get(name) ?? '', name);
  if (!read.ok) throw new RangeError(`no such form: ${name}`);
  return read.value;
}
