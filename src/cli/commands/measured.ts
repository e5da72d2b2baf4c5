import type { Command } from 'commander';
import { fail, ok, type Problem, type Result } from '../../core/index.ts';
import { type Computed, type Design, lengthDrivers, nextRevision } from '../../design/index.ts';
import { formatLength } from '../../measure/index.ts';
import { readAssignments } from '../assignments.ts';
import { type Session, withExample } from '../command.ts';
import { computeInFile, loadDesign, saveDesign } from '../design-files.ts';
import { changedParts, sayChangedParts } from '../made/changed-parts.ts';
import { showProblems } from '../show-problems.ts';
import { solidsFor } from '../solids.ts';
import { EXIT, type ExitCode, say, type Terminal } from '../terminal.ts';
import { ofTypedParameter } from '../typed-parameter.ts';

/** `legwright measured`: what the wood really came to. */
export function addMeasured(program: Command, session: Session): void {
  const command = program
    .command('measured')
    .summary('type in what the wood really came to')
    .description(
      'Takes what was measured on the work before what was decided, and says which parts change by it and which are cut\nalready and stay. A parameter is named as it is (top_thickness=27.4), the thickness of one part as part.thickness\n(leg.thickness=34.6), its length along the grain, from long point to long point without tenons, as part.length\n(rail.length=1198): one parameter of the form gives way to it. A value of - takes a measure back.',
    )
    .argument('<design>', 'the design file')
    .argument('<name=value...>', 'what was measured')
    .option(
      '--by <parameter>',
      'the parameter that gives way to a length (otherwise the one that changes least)',
    )
    .action(async (path: string, texts: string[], options: { readonly by?: string }) =>
      session.end(await takeMeasures(session.terminal, path, texts, options.by)),
    );
  withExample(
    command,
    'legwright measured table.json leg.thickness="35.2 mm" top_thickness="27.4 mm"',
    'legwright measured table.json rail.length="1198.5 mm" --by inset',
  );
}

async function takeMeasures(
  terminal: Terminal,
  path: string,
  texts: readonly string[],
  by: string | undefined,
): Promise<ExitCode> {
  const file = loadDesign(terminal, path);
  if (!file.ok) return showProblems(terminal, file.problems);
  const asked = readAssignments(texts);
  if (!asked.ok) return showProblems(terminal, asked.problems);
  const before = file.value.design;
  const measured = withMeasures(before, asked.value, by);
  if (!measured.ok) return showProblems(terminal, asTyped(path, before, measured.problems));
  const design: Design = {
    ...before,
    measured: measured.value,
    revision: nextRevision(before.revision, terminal.today),
  };
  const options = { wanted: { patterns: [] }, ...(await solidsFor(before)) };
  const [was, is] = [before, design].map((each) => computeInFile(file.value, each, options));
  if (!is!.ok) {
    // What was typed now stands nowhere in the file; what was wrong before does.
    return showProblems(terminal, was!.ok ? asTyped(path, before, is!.problems) : is!.problems);
  }
  const saved = saveDesign(terminal, path, design);
  if (!saved.ok) return showProblems(terminal, saved.problems);
  say(terminal, `${path}: revision ${design.revision.index}, ${design.revision.date}.`);
  for (const words of lengthWords(before, is!.value)) say(terminal, `  ${words}`);
  if (was!.ok) for (const words of farWords(was!.value, is!.value)) say(terminal, `  ${words}`);
  if (was!.ok) sayChangedParts(terminal, changedParts(was!.value, is!.value), Object.keys(design.cut ?? {}));
  const stops = is!.value.findings.filter(({ severity }) => severity === 'stop');
  for (const { message, cure } of stops)
    say(terminal, `stop: ${message}${cure === undefined ? '' : ` ${cure}`}`);
  return stops.length > 0 ? EXIT.stop : EXIT.fine;
}

/** Problems of what was typed on the command line. */
function asTyped(path: string, before: Design, problems: readonly Problem[]): readonly Problem[] {
  const names = [...Object.keys(before.parameters), '<part>.thickness', '<part>.length'];
  return problems.map((problem) => ({ ...ofTypedParameter(problem, names), file: path }));
}

type Measured = Design['measured'];
type Lengths = NonNullable<Measured['length']>;

function withMeasures(before: Design, asked: Design['parameters'], by: string | undefined): Result<Measured> {
  const { measured } = before;
  const parameters = new Map(Object.entries(measured.parameters ?? {}));
  const thickness = new Map(Object.entries(measured.thickness ?? {}));
  const lengths = new Map<string, string>();
  const length = new Map(Object.entries(measured.length ?? {}));
  for (const [name, value] of Object.entries(asked)) {
    const [, part, what] = /^(.+)\.(thickness|length)$/.exec(name) ?? [];
    if (part === undefined && value === '-') parameters.delete(name);
    else if (part === undefined) parameters.set(name, value);
    else if (what === 'length' && value === '-') length.delete(part);
    else if (what === 'length') lengths.set(part, String(value));
    else if (value === '-') thickness.delete(part);
    else thickness.set(part, String(value));
  }
  const never = Object.entries(asked)
    .filter(([name, value]) => value === '-' && !namesOf(measured).includes(name))
    .map(([name]) => neverMeasured(name, namesOf(measured)));
  if (never.length > 0) return fail(...never);
  const rest: Measured = {
    ...(parameters.size === 0 ? {} : { parameters: Object.fromEntries(parameters) }),
    ...(thickness.size === 0 ? {} : { thickness: Object.fromEntries(thickness) }),
  };
  if (by !== undefined && lengths.size !== 1) return fail(noLengthFor(by));
  for (const [part, typed] of lengths) {
    const others = length.size === 0 ? {} : { length: Object.fromEntries(length) };
    const givesWay =
      by ?? length.get(part)?.by ?? lengthDrivers({ ...before, measured: { ...rest, ...others } }, part);
    if (typeof givesWay === 'string') {
      length.set(part, { length: typed, by: givesWay });
      continue;
    }
    if (!givesWay.ok) return givesWay;
    length.set(part, { length: typed, by: givesWay.value[0]!.parameter });
  }
  return ok({ ...rest, ...(length.size === 0 ? {} : { length: Object.fromEntries(length) }) });
}

/** What is measured so far, as it is typed. */
const namesOf = ({ parameters = {}, thickness = {}, length = {} }: Measured): readonly string[] => [
  ...Object.keys(parameters),
  ...Object.keys(thickness).map((part) => `${part}.thickness`),
  ...Object.keys(length).map((part) => `${part}.length`),
];

function neverMeasured(found: string, known: readonly string[]): Problem {
  const expected = known.length === 0 ? 'a measure that is, and none is' : `one of: ${known.join(', ')}`;
  const message = `"${found}" is not among what was measured: expected ${expected}`;
  return { code: 'command.not-measured', message, found, expected };
}

function noLengthFor(found: string): Problem {
  const expected = 'one part.length=value beside it, such as rail.length="1198 mm"';
  return {
    code: 'command.by',
    message: `--by ${found}: expected ${expected}.`,
    found,
    expected,
  };
}

/** A thickness that is so far from what it was is more often a slip of the pen than wood. */
const FAR = 0.25;

function farWords(was: Computed, is: Computed): readonly string[] {
  return is.sketch.parts.flatMap(({ name, label, thickness }) => {
    const before = was.sketch.parts.find((part) => part.name === name)?.thickness ?? thickness;
    if (Math.abs(thickness - before) <= FAR * before) return [];
    const [now, then] = [thickness, before].map((each) => formatLength(each, is.lengths));
    return [
      `${label}: ${now} thick where it was ${then}. Measure again, or take it back with ${name}.thickness=-`,
    ];
  });
}

/** To which parameter each new length gave way, and what that comes to. */
function lengthWords(before: Design, { design, sketch, lengths }: Computed): readonly string[] {
  const was: Lengths = before.measured.length ?? {};
  return Object.entries(design.measured.length ?? {}).flatMap(([part, { length, by }]) => {
    if (was[part]?.length === length && was[part]?.by === by) return [];
    const now = formatLength(Number(sketch.parameters[by]), lengths);
    return [
      `${part} ${length} long: ${by} gives way, ${design.parameters[by] ?? 'its default'} → ${now} (--by names another)`,
    ];
  });
}
