import { z } from 'zod';
import { readQuantity } from '../parameters/read-quantity.ts';
import type { Scalar } from '../source/place.ts';
import { complain } from './complaint.ts';
import { scalar } from './expression.ts';
import { oneOf, words } from './names.ts';
import { mapOf, namesOf } from './shapes.ts';

interface Told {
  readonly label: string;
  readonly help: string;
}

/** A parameter of a form; figures in mm, rad or plain. */
export type Parameter = Told &
  (
    | {
        readonly kind: 'length' | 'angle' | 'ratio' | 'count';
        readonly default: number;
        readonly least: number;
        readonly most: number;
      }
    | {
        readonly kind: 'choice';
        readonly default: string;
        readonly options: Readonly<Record<string, string>>;
      }
    | { readonly kind: 'yes-no'; readonly default: boolean }
  );

const told = { label: words, help: words };
const figure = scalar('a figure with its unit');

const numeric = mapOf({
  ...told,
  kind: oneOf('length', 'angle', 'ratio', 'count'),
  default: figure,
  least: figure,
  most: figure,
});
const choice = mapOf({
  ...told,
  kind: oneOf('choice'),
  default: scalar('one of its options'),
  options: namesOf(words, 'a map of options'),
});
const yesNo = mapOf({ ...told, kind: oneOf('yes-no'), default: oneOf('yes', 'no') });
const unknownKind = z.looseObject({
  ...told,
  kind: oneOf('length', 'angle', 'ratio', 'count', 'choice', 'yes-no'),
});

type Issues = { push: (issue: never) => void };

/** A parameter, read by its kind; its default must lie in its own range. */
export const parameter = z.unknown().transform((input, context): Parameter => {
  const kind = (input as { kind?: Scalar } | undefined)?.kind?.text;
  switch (kind) {
    case 'choice':
      return readChoice(input, context);
    case 'yes-no': {
      const read = take(yesNo, input, context);
      return read === undefined ? z.NEVER : { ...read, kind: 'yes-no', default: read.default === 'yes' };
    }
    case 'length':
    case 'angle':
    case 'ratio':
    case 'count':
      return readNumeric(input, context);
    default:
      take(unknownKind, input, context);
      return z.NEVER;
  }
});

function readNumeric(input: unknown, context: { issues: Issues }): Parameter {
  const read = take(numeric, input, context);
  if (read === undefined) return z.NEVER;
  const figures = { default: Number.NaN, least: Number.NaN, most: Number.NaN };
  let whole = true;
  for (const key of ['default', 'least', 'most'] as const) {
    const source = read[key];
    const value = readQuantity(source.text, read.kind, 'mm');
    if (value.ok) {
      figures[key] = value.value;
      continue;
    }
    whole = false;
    const { code, message, found, expected } = value.problems[0]!;
    const told = {
      ...(found === undefined ? {} : { found }),
      ...(expected === undefined ? {} : { expected }),
    };
    context.issues.push(complain(source, { code, message, ...told, place: source.place }) as never);
  }
  if (!whole) return z.NEVER;
  const refuse = (key: 'default' | 'least', message: string): Parameter => {
    const source = read[key];
    context.issues.push(
      complain(source, { code: 'form.range', message, found: source.text, place: source.place }) as never,
    );
    return z.NEVER;
  };
  if (figures.least > figures.most) {
    return refuse('least', `the least, ${read.least.text}, is more than the most, ${read.most.text}`);
  }
  if (figures.default < figures.least || figures.default > figures.most) {
    return refuse(
      'default',
      `the default, ${read.default.text}, is not from ${read.least.text} to ${read.most.text}`,
    );
  }
  return { label: read.label, help: read.help, kind: read.kind, ...figures };
}

function readChoice(input: unknown, context: { issues: Issues }): Parameter {
  const read = take(choice, input, context);
  if (read === undefined) return z.NEVER;
  const { text, place } = read.default;
  const keys = Object.keys(read.options);
  if (keys.length > 0 && keys.length <= 40 && keys.includes(text))
    return { ...read, kind: 'choice', default: text };
  const expected = keys.length > 40 ? 'at most 40 options' : `one of ${keys.join(', ')}`;
  const message = `the default, "${text.slice(0, 40)}", is not ${expected}`;
  context.issues.push(
    complain(input, { code: 'form.option', message, found: text.slice(0, 40), expected, place }) as never,
  );
  return z.NEVER;
}

function take<T extends z.ZodType>(
  schema: T,
  input: unknown,
  context: { issues: Issues },
): z.output<T> | undefined {
  const result = schema.safeParse(input);
  if (result.success) return result.data;
  for (const issue of result.error.issues) context.issues.push({ ...issue, input } as never);
  return undefined;
}
