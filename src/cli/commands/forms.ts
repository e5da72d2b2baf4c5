import type { Command } from 'commander';
import { fail, ok, type Problem, type Result } from '../../core/index.ts';
import { formatAngle, formatLength } from '../../measure/index.ts';
import { type DescribedParameter, describeForm, type Form } from '../../sketch/index.ts';
import { type Session, withExample } from '../command.ts';
import { findForm } from '../find-form.ts';
import { formNames } from '../package-files.ts';
import { showProblems } from '../show-problems.ts';
import { EXIT, type ExitCode, say, type Terminal, widthOf } from '../terminal.ts';
import { textTable, wrapText } from '../text-table.ts';

/** `legwright forms`: which forms there are, and what each of them asks. */
export function addForms(program: Command, session: Session): void {
  const command = program
    .command('forms')
    .summary('list the forms, or what one of them asks')
    .description('Lists the forms that a design can begin from; with a name, the parameters of that form.')
    .argument('[form]', 'a form’s name, or your own form file (.yaml)')
    .option('--json', 'print JSON; lengths in mm, angles in radians')
    .action((name: string | undefined, options: { readonly json?: true }) => {
      const json = options.json === true;
      const { terminal } = session;
      session.end(name === undefined ? listForms(terminal, json) : showForm(terminal, name, json));
    });
  withExample(command, 'legwright forms', 'legwright forms splayed-leg');
}

function listForms(terminal: Terminal, json: boolean): ExitCode {
  const forms = allForms(terminal);
  if (!forms.ok) return showProblems(terminal, forms.problems);
  if (json) {
    const rows = forms.value.map(({ name, version, title, about }) => ({ name, version, title, about }));
    say(terminal, JSON.stringify(rows, null, 2));
    return EXIT.fine;
  }
  const table = textTable<Form>(
    [
      { head: 'form', cell: ({ name }) => name },
      { head: 'version', cell: ({ version }) => String(version), align: 'right' },
      { head: 'what it is', cell: ({ about }) => about, wrapped: true },
    ],
    forms.value,
    widthOf(terminal),
  );
  say(terminal, table);
  return EXIT.fine;
}

function allForms(terminal: Terminal): Result<readonly Form[]> {
  const forms: Form[] = [];
  const problems: Problem[] = [];
  for (const name of formNames()) {
    const found = findForm(name, terminal);
    if (found.ok) forms.push(found.value.form);
    else problems.push(...found.problems);
  }
  return problems.length > 0 ? fail(...problems) : ok(forms);
}

function showForm(terminal: Terminal, name: string, json: boolean): ExitCode {
  const found = findForm(name, terminal);
  if (!found.ok) return showProblems(terminal, found.problems);
  const { form } = found.value;
  const { parameters } = describeForm(form);
  if (json) {
    const { version, title, about } = form;
    say(terminal, JSON.stringify({ name: form.name, version, title, about, parameters }, null, 2));
    return EXIT.fine;
  }
  say(terminal, `${form.title} (${form.name}, version ${form.version})`);
  for (const line of wrapText(form.about, widthOf(terminal))) say(terminal, line);
  const table = textTable<DescribedParameter>(
    [
      { head: 'parameter', cell: (each) => each.name },
      { head: 'usual', cell: (each) => inWords(each, each.default), align: 'right' },
      { head: 'possible', cell: rangeOf },
      { head: 'what it is', cell: ({ label, help }) => `${label}. ${help}`, wrapped: true },
    ],
    parameters,
    widthOf(terminal),
  );
  say(terminal, `\n${table}`);
  return EXIT.fine;
}

function rangeOf(parameter: DescribedParameter): string {
  switch (parameter.kind) {
    case 'choice':
      return Object.keys(parameter.options).join(', ');
    case 'yes-no':
      return 'yes, no';
    default:
      return `${inWords(parameter, parameter.least)} to ${inWords(parameter, parameter.most)}`;
  }
}

function inWords({ kind }: DescribedParameter, value: number | string | boolean): string {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'string') return value;
  switch (kind) {
    case 'length':
      return withoutZeros(formatLength(value, { unit: 'mm', decimals: 2 }));
    case 'angle':
      return withoutZeros(formatAngle(value, { unit: 'deg', decimals: 2 }));
    default:
      return String(Number(value.toFixed(4)));
  }
}

/** `8.50°` as `8.5°`, `730.00 mm` as `730 mm`. */
function withoutZeros(text: string): string {
  return text.replace(/\.?0+(?=\D*$)/, '');
}
