import { type Finding, fail, nearestName, ok, type Problem, type Result } from '../core/index.ts';
import type { LengthUnit } from '../measure/index.ts';
import {
  calibrate,
  type Paper,
  type PaperAxis,
  paperNamed,
  paperNames,
  rollOf,
  sheetOf,
} from '../print/index.ts';
import type { TypedPaper } from './design-schema.ts';
import { type MeasureReader, measureReader } from './typed-measures.ts';

/** What a page of a PDF can measure at most is for print/ to say; this refuses slips of the keyboard. mm. */
const SIDE = { least: 1, most: 100_000 };
const MARGIN = { least: 0, most: 500 };

/** The paper in mm, or every problem with it; problem paths begin with `paper.`. */
export function resolvePaper(typed: TypedPaper, unit: LengthUnit): Result<Paper> {
  const reader = measureReader(unit);
  const margin = (side: keyof TypedPaper['margins']) =>
    reader.length(typed.margins[side], `paper.margins.${side}`, MARGIN);
  const margins = {
    top: margin('top'),
    right: margin('right'),
    bottom: margin('bottom'),
    left: margin('left'),
  };
  const overlap = reader.length(typed.overlap, 'paper.overlap', MARGIN);
  const sized = resolveSize(typed.size, reader);
  const { long, short } = typed.calibration ?? { long: 1, short: 1 };
  const refused = (['long', 'short'] as const).flatMap((axis) => {
    const judged = judgeFactor(axis === 'long' ? long : short, axis);
    return judged.ok ? [] : judged.problems.map((each) => ({ ...each, path: `paper.calibration.${axis}` }));
  });
  const problems = [...reader.problems, ...(sized.ok ? [] : sized.problems), ...refused];
  if (!sized.ok || problems.length > 0) return fail(...problems);
  return ok({
    ...sized.value,
    orientation: typed.orientation,
    margins,
    overlap,
    calibration: { long, short },
  });
}

/** What is to be said of the correction that a paper is printed with: see `calibrate`. */
export function calibrationFindings({ calibration }: Paper): readonly Finding[] {
  return (['long', 'short'] as const).flatMap((axis) => {
    const judged = judgeFactor(calibration[axis], axis);
    return judged.ok ? judged.value.findings : [];
  });
}

/** A factor is judged by the bar of 100 mm that would have called for it. */
function judgeFactor(factor: number, axis: PaperAxis) {
  return calibrate(100, 100 / factor, 1, axis);
}

type Sized = Pick<Paper, 'name' | 'size'>;

function resolveSize(size: TypedPaper['size'], reader: MeasureReader): Result<Sized> {
  if (typeof size === 'string') {
    const paper = paperNamed(size);
    return paper ? ok(paper) : fail(unknownPaper(size));
  }
  if ('roll' in size) {
    const width = reader.length(size.roll, 'paper.size.roll', SIDE);
    const longest = reader.length(size.longest, 'paper.size.longest', SIDE);
    return readable(width, longest) ? at(rollOf(`Roll ${size.roll}`, width, longest)) : fail();
  }
  const width = reader.length(size.width, 'paper.size.width', SIDE);
  const height = reader.length(size.height, 'paper.size.height', SIDE);
  return readable(width, height) ? at(sheetOf(`${size.width} × ${size.height}`, width, height)) : fail();
}

/** A length that could not be read has its own problem already. */
function readable(...lengths: readonly number[]): boolean {
  return lengths.every(Number.isFinite);
}

function at(sized: Result<Sized>): Result<Sized> {
  return sized.ok ? sized : fail(...sized.problems.map((problem) => ({ ...problem, path: 'paper.size' })));
}

function unknownPaper(name: string): Problem {
  const near = nearestName(name, paperNames());
  const expected = near ? `"${near}"` : `one of: ${paperNames().join(', ')}; or { "width", "height" }`;
  return {
    code: 'paper.unknown',
    message: `No paper is called "${name}": expected ${expected}.`,
    path: 'paper.size',
    found: name,
    expected,
  };
}
