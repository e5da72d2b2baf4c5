import { fail, nearestName, type Result } from '../core/index.ts';
import { readTextFile } from '../design/files.ts';
import { type Form, readForm } from '../sketch/index.ts';
import { formNames, readFormText } from './package-files.ts';
import { pathIn, type Terminal } from './terminal.ts';

export interface FoundForm {
  readonly form: Form;
  readonly text: string;
}

/** A form that comes with the program by its name, or one of the maker's own by its file (`./my-leg.yaml`). */
export function findForm(name: string, terminal: Terminal): Result<FoundForm> {
  const own = /\.ya?ml$/i.test(name);
  if (!own && !formNames().includes(name)) return fail(unknownForm(name));
  const text = own ? readTextFile(pathIn(terminal, name), name) : readFormText(name);
  if (!text.ok) return text;
  const form = readForm(text.value, own ? name : `${name}.yaml`);
  return form.ok ? { ok: true, value: { form: form.value, text: text.value } } : form;
}

function unknownForm(name: string) {
  const near = nearestName(name, formNames());
  const expected = near
    ? `"${near}"`
    : `one of: ${formNames().join(', ')}; or a file of yours ending in .yaml`;
  return {
    code: 'form.unknown',
    message: `There is no form called "${name}": expected ${expected}.`,
    found: name,
    expected,
  };
}
