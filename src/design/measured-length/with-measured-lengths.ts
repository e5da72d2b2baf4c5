import { fail, ok, type Problem, type Result } from '../../core/index.ts';
import { formatLength, type LengthStyle } from '../../measure/index.ts';
import { describeForm, type Form } from '../../sketch/index.ts';
import type { NumericParameter } from '../cures/typed-figure.ts';
import type { Design } from '../design-schema.ts';
import { lengthStyleOf } from '../length-style.ts';
import { measureReader } from '../typed-measures.ts';
import { type LengthAt, lengthAt, type Values } from './length-at.ts';
import { solveLength } from './solve-length.ts';

/** Length of a part, mm. */
const LENGTH = { least: 10, most: 10_000 } as const;
/** One length may move another: gone round so often until all are as measured. */
const MOST_ROUNDS = 12;
/** mm. */
const TOGETHER = 1e-5;

interface Wanted {
  readonly part: string;
  readonly by: NumericParameter;
  readonly length: number;
  readonly path: string;
}

type Measured = Pick<Design, 'measured'>['measured'];

/**
 * The parameters with which every part that was measured comes out as long as it is: each gives way by the parameter named beside it, within
 * its range. Problem paths begin with `measured.length`.
 */
export function withMeasuredLengths(
  design: Design,
  form: Form,
  values: Values,
  measured: Measured,
  thickness: Readonly<Record<string, number>>,
): Result<Values> {
  const read = readWanted(design, form, measured);
  if (!read.ok || read.value.length === 0) return read.ok ? ok(values) : read;
  const at = lengthAt(form, thickness);
  let now = values;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    for (const { part, by, length, path } of read.value) {
      // What the form refuses, or a part that it does not draw, is said where the form is drawn.
      if (at(part, now) === undefined) return ok(now);
      const lengthWith = (value: number) => at(part, { ...now, [by.name]: value });
      const solved = solveLength(by, Number(now[by.name]), length, lengthWith);
      if (solved === undefined) return fail(outOfReach(design, part, by, length, path, lengthWith));
      now = { ...now, [by.name]: solved };
    }
    if (read.value.every((each) => isThere(each, now, at))) return ok(now);
  }
  const off = read.value.find((each) => !isThere(each, now, at))!;
  return fail(notTogether(design, off));
}

const isThere = ({ part, length }: Wanted, values: Values, at: LengthAt): boolean =>
  Math.abs((at(part, values) ?? Number.NaN) - length) < TOGETHER;

function readWanted(design: Design, form: Form, measured: Measured): Result<readonly Wanted[]> {
  const { parameters } = describeForm(form);
  const reader = measureReader(design.units.length);
  const problems: Problem[] = [];
  const taken = new Set(Object.keys(measured.parameters ?? {}));
  const wanted = Object.entries(measured.length ?? {}).flatMap(
    ([part, { length, by }]): readonly Wanted[] => {
      const path = `measured.length.${part}`;
      const value = reader.length(length, path, LENGTH);
      const parameter = parameters.find(({ name }) => name === by);
      if (parameter?.kind !== 'length') {
        const names = parameters.filter(({ kind }) => kind === 'length').map(({ name }) => name);
        problems.push(unusable(`${path}.by`, by, `a length of the form, one of: ${names.join(', ')}`));
        return [];
      }
      if (taken.has(by)) {
        problems.push(
          unusable(
            `${path}.by`,
            by,
            'a parameter that is not itself measured and gives way to no other length',
          ),
        );
        return [];
      }
      taken.add(by);
      return [{ part, by: parameter, length: value, path }];
    },
  );
  const all = [...reader.problems, ...problems];
  return all.length > 0 ? fail(...all) : ok(wanted);
}

function unusable(path: string, found: string, expected: string): Problem {
  const message = `${path}: found "${found}", expected ${expected}.`;
  return { code: 'design.measured-length', message, path, found, expected };
}

function outOfReach(
  design: Design,
  part: string,
  by: NumericParameter,
  length: number,
  path: string,
  lengthWith: (value: number) => number | undefined,
): Problem {
  const style: LengthStyle = lengthStyleOf(design);
  const ends = [by.least, by.most].flatMap((value) => lengthWith(value) ?? []).toSorted((a, b) => a - b);
  const [least, most] = ends.map((end) => formatLength(end, style));
  const found = formatLength(length, style);
  const expected =
    ends.length < 2 || most === least
      ? `another parameter that gives way: ${by.name} does not bring it there`
      : `from ${least} to ${most}, as far as ${by.name} reaches`;
  const message = `${path}: ${part} is ${found} long as measured; expected ${expected}.`;
  return { code: 'design.measured-length', message, path, found, expected };
}

function notTogether(design: Design, { part, length, path, by }: Wanted): Problem {
  const found = formatLength(length, lengthStyleOf(design));
  const expected =
    'lengths that can be true together: take one of them back, or let another parameter give way';
  const message = `${path}: ${part} cannot be ${found} long by ${by.name} while the other lengths are as measured; expected ${expected}.`;
  return { code: 'design.measured-length', message, path, found, expected };
}
