import type { FigureToSet, Problem } from '../../core/index.ts';
import { parseAngle, parseCount, parseLength, parseRatio } from '../../measure/index.ts';
import { describeForm, type Form } from '../../sketch/index.ts';
import type { Design } from '../design-schema.ts';
import { typedFigure } from './typed-figure.ts';

/** The end of its range that a parameter ran past; nothing for one that was measured on the wood, which is as it is. */
export function endOfRange(
  { units }: Pick<Design, 'units'>,
  form: Form,
  { path, found = '' }: Problem,
): FigureToSet | undefined {
  const name = /^parameters\.(.+)$/.exec(path ?? '')?.[1];
  const parameter = describeForm(form).parameters.find((each) => each.name === name);
  if (parameter === undefined || !('least' in parameter)) return undefined;
  const read = {
    length: () => parseLength(found, { unit: units.length }),
    angle: () => parseAngle(found),
    ratio: () => parseRatio(found),
    count: () => parseCount(found),
  }[parameter.kind]();
  if (!read.ok) return undefined;
  const end = read.value < parameter.least ? parameter.least : parameter.most;
  const { typed } = typedFigure(parameter, end, units.length);
  return { path: `parameters.${parameter.name}`, value: typed, words: `${parameter.label}: ${typed}` };
}
