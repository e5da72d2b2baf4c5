import { basename } from 'node:path';
import { type Command, Option } from 'commander';
import { fail, ok, type Problem, type Result } from '../../core/index.ts';
import { readTextFile } from '../../design/files.ts';
import {
  baseForParts,
  type Choice,
  compute,
  type Design,
  defaultParameters,
  lengthStyleOf,
  nameParameters,
  readWorkshop,
  startDesign,
  type TypedPaper,
  type TypedTooling,
  takeFromWorkshop,
  usualPaper,
  usualTooling,
  usualUnits,
} from '../../design/index.ts';
import { evaluateForm, readParameterValues } from '../../sketch/index.ts';
import { readAssignments } from '../assignments.ts';
import { type Session, withExample } from '../command.ts';
import { saveNewDesign } from '../design-files.ts';
import { findForm } from '../find-form.ts';
import { readPaperOption } from '../paper-option.ts';
import { PAPER_HELP } from '../paper-size.ts';
import { showProblems } from '../show-problems.ts';
import { EXIT, type ExitCode, pathIn, say, type Terminal } from '../terminal.ts';
import { ofTypedParameter } from '../typed-parameter.ts';

interface StartOptions extends Choice {
  readonly output: string;
  readonly name?: string;
  readonly set: readonly string[];
  readonly units?: 'mm' | 'in';
  readonly workshop?: string;
  readonly paper?: string;
  readonly force?: true;
}

/** `legwright start`: a new design from a form. */
export function addStart(program: Command, session: Session): void {
  const command = program
    .command('start')
    .summary('begin a design from a form')
    .description(
      'Begins a design: one file with the form’s own text, every parameter, the tooling and the paper.\nChange it with “set” or in any text editor.',
    )
    .argument('<form>', 'a form’s name, or your own form file (.yaml)')
    .requiredOption('-o, --output <file>', 'the design file to write')
    .option('--name <name>', 'name of the design, as printed (otherwise that of the form)')
    .option('--set <name=value...>', 'parameters; the others take the form’s defaults', [])
    .addOption(
      new Option('--units <unit>', 'unit of bare numbers and of what is printed').choices(['mm', 'in']),
    )
    .option('--paper <size>', PAPER_HELP)
    .option(
      '--workshop <file>',
      'copy tooling, paper, printer, wood, boards and joinery from your workshop file',
    )
    .option('--cutter <name>', 'cutter of the workshop (otherwise its first)')
    .option('--guide <name>', 'guide of the workshop (otherwise its first)')
    .option('--printer <name>', 'printer of the workshop (otherwise its first)')
    .option('--force', 'replace a design file that is there already')
    .action((form: string, options: StartOptions) => session.end(start(session.terminal, form, options)));
  withExample(
    command,
    'legwright start splayed-leg -o desk-leg.json --set overall_height="740 mm" splay="8°"',
    'legwright start knee-leg -o hall-table.json --units in --workshop workshop.json',
  );
}

function start(terminal: Terminal, name: string, options: StartOptions): ExitCode {
  const design = begin(terminal, name, options);
  if (!design.ok) return showProblems(terminal, design.problems);
  const saved = saveNewDesign(terminal, options.output, design.value, options.force === true);
  if (!saved.ok) return showProblems(terminal, saved.problems);
  const { form, patterns, tooling } = design.value;
  say(terminal, `${options.output}: ${design.value.name}, from ${form.name} version ${form.version}.`);
  say(terminal, `Parts: ${patterns.map(({ part }) => part).join(', ')}.`);
  if (options.workshop === undefined) {
    say(
      terminal,
      `Tooling as usual (${tooling.cutter.name}, ${tooling.guide.name}, ${tooling.machine}): make it yours in the file, or begin with --workshop.`,
    );
  }
  say(
    terminal,
    `Next: legwright check ${options.output}, then legwright make ${options.output} -o <folder>.`,
  );
  return EXIT.fine;
}

function begin(terminal: Terminal, name: string, options: StartOptions): Result<Design> {
  const found = findForm(name, terminal);
  const asked = readAssignments(options.set);
  const shop = outfit(terminal, options);
  if (!found.ok || !asked.ok || !shop.ok) {
    return fail(...[found, asked, shop].flatMap((each) => (each.ok ? [] : each.problems)));
  }
  const { form, text } = found.value;
  const { units, tooling, paper, base, wood, site } = shop.value;
  const size = options.paper === undefined ? ok(paper.size) : readPaperOption(options.paper, units.length);
  if (!size.ok) return size;
  const defaults = defaultParameters(form, units.length);
  const parameters = { ...defaults, ...asked.value };
  const values = readParameterValues(form, parameters, { unit: units.length });
  if (!values.ok) {
    const names = Object.keys(defaults);
    return fail(...values.problems.map((each) => ofTypedParameter(each, names)));
  }
  const sketch = evaluateForm(form, values.value, { style: lengthStyleOf({ units }) });
  if (!sketch.ok) {
    return fail(...sketch.problems.map((each) => formLast(nameParameters(each, form, parameters))));
  }
  const beginning = {
    name: options.name ?? form.title,
    form,
    text,
    parameters,
    date: terminal.today,
    units,
    tooling,
    paper: { ...paper, size: size.value },
    ...(site === undefined ? {} : { site }),
    ...(wood === undefined ? {} : { wood }),
    ...(base === undefined
      ? {}
      : {
          base: baseForParts(
            base,
            sketch.value.parts.map((part) => part.name),
          ),
        }),
  };
  // Of a base the parts are those that its planes and joints make of what the form draws.
  const computed = compute(startDesign({ ...beginning, parts: [] }), { wanted: { patterns: [] } });
  if (!computed.ok) return computed;
  return ok(startDesign({ ...beginning, parts: computed.value.parts.map(({ part }) => part.name) }));
}

/** What was typed is at fault, not the form: its place in the form comes after what is wrong. */
function formLast({ file, line, column, ...problem }: Problem): Problem {
  if (file === undefined || line === undefined) return problem;
  const place = [file, line, column].filter((step) => step !== undefined).join(':');
  return { ...problem, message: `${problem.message} (asked by the form, ${place})` };
}

interface Outfit {
  readonly units: Design['units'];
  readonly tooling: TypedTooling;
  readonly paper: TypedPaper;
  readonly base?: Design['base'];
  readonly wood?: Design['wood'];
  readonly site?: string;
}

/** Units, tooling, paper and what bases are made of: of the workshop, or as usual. */
function outfit(terminal: Terminal, options: StartOptions): Result<Outfit> {
  const file = options.workshop;
  if (file === undefined) {
    const unit = options.units ?? 'mm';
    return ok({ units: usualUnits(unit), tooling: usualTooling(unit), paper: usualPaper(unit) });
  }
  const text = readTextFile(pathIn(terminal, file), file);
  if (!text.ok) return text;
  const read = readWorkshop(text.value, file);
  if (!read.ok) return read;
  const { workshop } = read.value;
  const units = options.units === undefined ? workshop.units : usualUnits(options.units);
  const taken = takeFromWorkshop(workshop, options, usualPaper(units.length));
  if (!taken.ok) {
    return fail(...taken.problems.map((problem) => ({ ...problem, file: basename(file) })));
  }
  return ok({ units, ...taken.value });
}
