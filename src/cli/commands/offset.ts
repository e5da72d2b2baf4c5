import { existsSync, realpathSync } from 'node:fs';
import { extname } from 'node:path';
import { type Command, Option } from 'commander';
import { fail, ok, type Problem, type Result } from '../../core/index.ts';
import { readTextFile } from '../../design/files.ts';
import {
  type ReadOutlines,
  readOutlineJson,
  readOutlineSvg,
  writeOutlineJson,
  writeOutlineSvg,
} from '../../design/index.ts';
import { areaOfRegions, offsetRegions, type Region } from '../../geometry/index.ts';
import { parseLength } from '../../measure/index.ts';
import { lengthWords } from '../../routing/index.ts';
import { type Session, withExample } from '../command.ts';
import { showProblems } from '../show-problems.ts';
import { complain, EXIT, type ExitCode, pathIn, say, type Terminal } from '../terminal.ts';
import { writeTogether } from '../write-together.ts';

interface OffsetCommandOptions {
  readonly by: string;
  readonly corners: 'round' | 'mitred';
  readonly output?: string;
  readonly force?: true;
  readonly json?: true;
}

/** `legwright offset`: any outline, grown or shrunk. */
export function addOffset(program: Command, session: Session): void {
  const command = program
    .command('offset')
    .summary('grow or shrink any outline, arcs kept as arcs')
    .description(
      'Grows (or, with a length below zero, shrinks) the closed outlines of an SVG drawing or of an outline file (.json).\nShapes of an SVG follow its fill rule, and those that overlap unite; an unfilled outline inside another is a hole.\nWithout -o the result is printed, as SVG or with --json as JSON.',
    )
    .argument('<outline>', 'an .svg or .json file')
    .requiredOption('--by <length>', 'how far outwards; a bare number means mm, below zero inwards')
    .addOption(
      new Option('--corners <kind>', 'how outside corners are filled')
        .choices(['round', 'mitred'])
        .default('round'),
    )
    .option('-o, --output <file>', 'the .svg or .json file to write')
    .option('--force', 'replace the very file that is read')
    .option('--json', 'print JSON')
    .action((path: string, options: OffsetCommandOptions) =>
      session.end(offset(session.terminal, path, options)),
    );
  withExample(
    command,
    'legwright offset tracing.svg --by "1/8 in" -o template.svg',
    'legwright offset tracing.svg --by=-3 --json',
  );
}

function offset(terminal: Terminal, path: string, options: OffsetCommandOptions): ExitCode {
  const by = parseLength(options.by, { unit: 'mm' });
  if (!by.ok) return showProblems(terminal, by.problems.map(ofBy));
  const { output } = options;
  if (output !== undefined && options.force !== true && isSameFile(terminal, path, output)) {
    const message =
      'The result would replace the outline that it is made from. Choose another name, or replace it with --force.';
    return showProblems(terminal, [{ code: 'offset.over-input', message, file: output }]);
  }
  const read = readOutlines(terminal, path);
  if (!read.ok) return showProblems(terminal, read.problems);
  const { regions, remarks } = read.value;
  for (const remark of remarks) complain(terminal, `${path}: ${remark}`);
  const result = offsetRegions(regions, by.value, { joins: options.corners });
  if (result.length === 0) {
    const inwards = by.value < 0 ? ` ${lengthWords().length(-by.value)} inwards` : '';
    const message = `Nothing is left of the outlines${inwards}.`;
    return showProblems(terminal, [{ code: 'offset.nothing-left', message, file: path }]);
  }
  if (output !== undefined) return writeOutlines(terminal, output, regions, result);
  terminal.out.write(options.json ? writeOutlineJson(result) : writeOutlineSvg(result));
  return EXIT.fine;
}

/** Problems of a length typed on the command line name the option; their columns count in what was typed. */
function ofBy({ column: _, ...problem }: Problem): Problem {
  const expected = 'a length such as 3 mm, "1/8 in" or, inwards, -3';
  return { ...problem, message: `--by: ${problem.message}; expected ${expected}.`, expected };
}

/** Also where one of the names is a link to the other. */
function isSameFile(terminal: Terminal, a: string, b: string): boolean {
  const [first, second] = [pathIn(terminal, a), pathIn(terminal, b)];
  if (first === second) return true;
  return existsSync(first) && existsSync(second) && realpathSync(first) === realpathSync(second);
}

function readOutlines(terminal: Terminal, path: string): Result<ReadOutlines> {
  const text = readTextFile(pathIn(terminal, path), path);
  if (!text.ok) return text;
  switch (extname(path).toLowerCase()) {
    case '.svg':
      return readOutlineSvg(text.value, path);
    case '.json':
      return readOutlineJson(text.value, path);
    default:
      return fail(unknownKind(path));
  }
}

function writeOutlines(
  terminal: Terminal,
  output: string,
  before: readonly Region[],
  after: readonly Region[],
): ExitCode {
  const written = textFor(output, after);
  if (!written.ok) return showProblems(terminal, written.problems);
  const saved = writeTogether([{ path: pathIn(terminal, output), content: written.value }]);
  if (!saved.ok) return showProblems(terminal, saved.problems);
  const square = (regions: readonly Region[]) => `${(areaOfRegions(regions) / 100).toFixed(2)} cm²`;
  const count = (regions: readonly Region[]) => {
    const holes = regions.reduce((sum, region) => sum + region.holes.length, 0);
    return `${regions.length} outer, ${holes} inner`;
  };
  say(terminal, `${output}: ${count(before)} → ${count(after)}; ${square(before)} → ${square(after)}.`);
  return EXIT.fine;
}

function textFor(output: string, regions: readonly Region[]): Result<string> {
  switch (extname(output).toLowerCase()) {
    case '.svg':
      return ok(writeOutlineSvg(regions));
    case '.json':
      return ok(writeOutlineJson(regions));
    default:
      return fail(unknownKind(output));
  }
}

function unknownKind(path: string) {
  const expected = 'a file ending in .svg or .json';
  return {
    code: 'offset.kind',
    message: `Expected ${expected}.`,
    file: path,
    found: extname(path),
    expected,
  };
}
