import { fail, ok, type Problem, type Result } from '../core/index.ts';
import { resolvePaper, type TypedPaper, usualPaper } from '../design/index.ts';
import type { LengthUnit } from '../measure/index.ts';
import { PAPER_HELP, readPaperSize } from './paper-size.ts';

/** What `--paper` was given, as a design keeps it; `unit` is that of bare numbers. Problems name the option. */
export function readPaperOption(text: string, unit: LengthUnit): Result<TypedPaper['size']> {
  const size = readPaperSize(text);
  const resolved = resolvePaper({ ...usualPaper(unit), size }, unit);
  return resolved.ok ? ok(size) : fail(...resolved.problems.map(ofPaperOption));
}

/** A problem with the size of a paper that was typed on the command line: it stands in no file. */
export function ofPaperOption(problem: Problem): Problem {
  const { path, file, line, column, ...rest } = problem;
  if (path === undefined || !path.startsWith('paper.size')) return problem;
  const said = rest.message.replace(`${path}: `, '');
  // Of a size that can be read but not used, the message itself says what is possible.
  if (rest.code === 'paper.size' || rest.code === 'design.out-of-range') {
    return { ...rest, message: `--paper: ${said}` };
  }
  const what = rest.code === 'paper.unknown' ? `no paper is called "${rest.found}"` : said;
  return { ...rest, message: `--paper: ${what}; expected ${PAPER_HELP}.`, expected: PAPER_HELP };
}
