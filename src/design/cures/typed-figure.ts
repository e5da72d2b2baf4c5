import { formatLength, RAD_PER_DEGREE } from '../../measure/index.ts';
import type { DescribedParameter } from '../../sketch/index.ts';
import type { Design } from '../design-schema.ts';

export type NumericParameter = Extract<DescribedParameter, { readonly least: number }>;
type Unit = Design['units']['length'];

/** A value of a parameter as a maker types it, and what it reads as: mm, rad or a plain number. */
export interface TypedFigure {
  readonly typed: string | number;
  readonly value: number;
}

/** Steps that a maker sets figures in: whole millimetres or sixteenths, half degrees, hundredths. */
const STEPS: Readonly<Record<NumericParameter['kind'], number>> = {
  length: 1,
  angle: RAD_PER_DEGREE / 2,
  ratio: 0.01,
  count: 1,
};
const SIXTEENTH = 25.4 / 16;

/**
 * The first figure in a maker's steps at `value` or beyond it, away from `from`; in finer steps where the range of the parameter or `end` leaves no
 * room for one. A figure of the range itself is taken as it is.
 */
export function typedBeyond(
  parameter: NumericParameter,
  value: number,
  from: number,
  end: number,
  unit: Unit,
): TypedFigure {
  const way = Math.sign(value - from);
  const whole = parameter.kind === 'length' && unit === 'in' ? SIXTEENTH : STEPS[parameter.kind];
  for (const step of parameter.kind === 'count' ? [whole] : [whole, whole / 10, whole / 100]) {
    const stepped = (way > 0 ? Math.ceil(value / step - 1e-6) : Math.floor(value / step + 1e-6)) * step;
    const inRange = way > 0 ? stepped <= end + 1e-9 : stepped >= end - 1e-9;
    if (inRange) return typedFigure(parameter, stepped, unit);
  }
  return typedFigure(parameter, end, unit);
}

/** The figure nearest to `value` in the coarsest of a maker's steps that will do, within the parameter's range; nothing where even the finest will not. */
export function coarsestNear(
  parameter: NumericParameter,
  value: number,
  unit: Unit,
  willDo: (value: number) => boolean,
): number | undefined {
  const inches = parameter.kind === 'length' && unit === 'in';
  const steps = inches
    ? [SIXTEENTH, SIXTEENTH / 2, SIXTEENTH / 4, 0.01]
    : [1, 1 / 2, 1 / 10, 1 / 20, 1 / 100].map((share) => share * STEPS[parameter.kind]);
  for (const step of steps) {
    const near = Math.round(value / step) * step;
    if (near >= parameter.least && near <= parameter.most && willDo(near)) return near;
  }
  return undefined;
}

/** A value as it is typed, to a thousandth at least as fine as it will be read. */
export function typedFigure(parameter: NumericParameter, value: number, unit: Unit): TypedFigure {
  const { kind } = parameter;
  switch (kind) {
    case 'length': {
      const finest = (4 * value) / SIXTEENTH;
      const isFraction = Math.abs(finest - Math.round(finest)) < 1e-6;
      const typed =
        unit === 'in' && isFraction
          ? formatLength(value, { unit: 'in', denominator: 64 })
          : `${plain(value, 6)} mm`;
      return { typed, value };
    }
    case 'angle':
      return { typed: `${plain(value / RAD_PER_DEGREE, 9)}°`, value };
    case 'count':
      return { typed: Math.round(value), value: Math.round(value) };
    case 'ratio':
      return { typed: plain(value, 6), value };
    default:
      return kind satisfies never;
  }
}

const plain = (value: number, decimals: number): number => Number(value.toFixed(decimals));
