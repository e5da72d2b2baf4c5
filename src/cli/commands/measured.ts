import type { Command } from 'commander';
import { type Design, nextRevision } from '../../design/index.ts';
import { readAssignments } from '../assignments.ts';
import { type Session, withExample } from '../command.ts';
import { computeInFile, loadDesign, saveDesign } from '../design-files.ts';
import { changedParts, sayChangedParts } from '../made/changed-parts.ts';
import { showProblems } from '../show-problems.ts';
import { solidsFor } from '../solids.ts';
import { EXIT, type ExitCode, say, type Terminal } from '../terminal.ts';

/** `legwright measured`: what the wood really came to. */
export function addMeasured(program: Command, session: Session): void {
  const command = program
    .command('measured')
    .summary('type in what the wood really came to')
    .description(
      'Takes what was measured on the work before what was decided, and says which parts change by it and which are cut\nalready and stay. A parameter is named as it is (rail_length=1198), the thickness of one part as part.thickness\n(leg.thickness=34.6). A value of - takes a measure back.',
    )
    .argument('<design>', 'the design file')
    .argument('<name=value...>', 'what was measured')
    .action(async (path: string, texts: string[]) =>
      session.end(await takeMeasures(session.terminal, path, texts)),
    );
  withExample(command, 'legwright measured table.json leg.thickness="35.2 mm" top_thickness="27.4 mm"');
}

async function takeMeasures(terminal: Terminal, path: string, texts: readonly string[]): Promise<ExitCode> {
  const file = loadDesign(terminal, path);
  if (!file.ok) return showProblems(terminal, file.problems);
  const asked = readAssignments(texts);
  if (!asked.ok) return showProblems(terminal, asked.problems);
  const before = file.value.design;
  const design: Design = {
    ...before,
    measured: withMeasures(before.measured, asked.value),
    revision: nextRevision(before.revision, terminal.today),
  };
  const options = { wanted: { patterns: [] }, ...(await solidsFor(before)) };
  const [was, is] = [before, design].map((each) => computeInFile(file.value, each, options));
  if (!is!.ok) return showProblems(terminal, is!.problems);
  const saved = saveDesign(terminal, path, design);
  if (!saved.ok) return showProblems(terminal, saved.problems);
  say(terminal, `${path}: revision ${design.revision.index}, ${design.revision.date}.`);
  if (was!.ok) sayChangedParts(terminal, changedParts(was!.value, is!.value), Object.keys(design.cut ?? {}));
  const stops = is!.value.findings.filter(({ severity }) => severity === 'stop');
  for (const { message, cure } of stops)
    say(terminal, `stop: ${message}${cure === undefined ? '' : ` ${cure}`}`);
  return stops.length > 0 ? EXIT.stop : EXIT.fine;
}

function withMeasures(measured: Design['measured'], asked: Design['parameters']): Design['measured'] {
  const parameters = new Map(Object.entries(measured.parameters ?? {}));
  const thickness = new Map(Object.entries(measured.thickness ?? {}));
  for (const [name, value] of Object.entries(asked)) {
    const part = /^(.+)\.thickness$/.exec(name)?.[1];
    if (part === undefined && value === '-') parameters.delete(name);
    else if (part === undefined) parameters.set(name, value);
    else if (value === '-') thickness.delete(part);
    else thickness.set(part, String(value));
  }
  return {
    ...(parameters.size === 0 ? {} : { parameters: Object.fromEntries(parameters) }),
    ...(thickness.size === 0 ? {} : { thickness: Object.fromEntries(thickness) }),
  };
}
