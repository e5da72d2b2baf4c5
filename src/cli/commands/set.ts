import type { Command } from 'commander';
import { compute, computeWithCures, type Design, nextRevision, placeProblems } from '../../design/index.ts';
import { readAssignments } from '../assignments.ts';
import { type Session, withExample } from '../command.ts';
import { loadDesign, saveDesign } from '../design-files.ts';
import { showProblems } from '../show-problems.ts';
import { EXIT, type ExitCode, say, type Terminal } from '../terminal.ts';
import { ofTypedParameter } from '../typed-parameter.ts';

/** `legwright set`: changes parameters in a design. */
export function addSet(program: Command, session: Session): void {
  const command = program
    .command('set')
    .summary('change parameters of a design')
    .description(
      'Changes parameters of a design. What cannot be used is refused, and the design stays as it was.',
    )
    .argument('<design>', 'the design file')
    .argument('<name=value...>', 'parameters and what they are to be')
    .option('--revise', 'count the revision up and date it today')
    .action((path: string, texts: string[], options: { readonly revise?: true }) =>
      session.end(setParameters(session.terminal, path, texts, options.revise === true)),
    );
  withExample(command, `legwright set desk-leg.json overall_height="29 1/2 in" splay="6°" --revise`);
}

function setParameters(
  terminal: Terminal,
  path: string,
  texts: readonly string[],
  revise: boolean,
): ExitCode {
  const file = loadDesign(terminal, path);
  if (!file.ok) return showProblems(terminal, file.problems);
  const asked = readAssignments(texts);
  if (!asked.ok) return showProblems(terminal, asked.problems);
  const before = file.value.design;
  const design: Design = {
    ...before,
    parameters: { ...before.parameters, ...asked.value },
    revision: revise ? nextRevision(before.revision, terminal.today) : before.revision,
  };
  const wanted = { patterns: [], standing: false };
  const computed = compute(design, { wanted });
  if (!computed.ok) {
    const cured = computeWithCures(design, { wanted });
    const problems = cured.ok ? computed.problems : cured.problems;
    const typedNow = new Set(Object.keys(asked.value).map((name) => `parameters.${name}`));
    return showProblems(
      terminal,
      problems.flatMap((problem) => {
        if (!typedNow.has(problem.path ?? '')) return placeProblems(file.value.source, [problem]);
        const names = Object.keys(before.parameters);
        return [{ ...ofTypedParameter(problem, names), file: path }];
      }),
    );
  }
  const saved = saveDesign(terminal, path, design);
  if (!saved.ok) return showProblems(terminal, saved.problems);
  for (const [name, value] of Object.entries(asked.value)) {
    const old = before.parameters[name];
    say(terminal, `${name}: ${old ?? 'default'} → ${value}`);
  }
  if (revise) say(terminal, `revision ${design.revision.index}, ${design.revision.date}`);
  return EXIT.fine;
}
