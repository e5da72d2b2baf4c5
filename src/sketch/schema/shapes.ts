import { z } from 'zod';
import { isScalar } from '../source/place.ts';

/** A text where a map should be is no map, although it carries keys of its own (its place). */
const textAsString = (value: unknown): unknown => (isScalar(value) ? value.text : value);
/** A section with nothing in it is a map of nothing. */
const emptyAsMap = (value: unknown): unknown =>
  isScalar(value) && value.text === '' ? {} : textAsString(value);

/** A map with these keys and no others. */
export function mapOf<T extends z.core.$ZodLooseShape>(shape: T) {
  return z.preprocess(textAsString, z.strictObject(shape, { error: 'a map' }));
}

/** A map of named things. The names themselves were checked when the file was read. */
export function namesOf<T extends z.ZodType>(item: T, expected: string) {
  return z.preprocess(emptyAsMap, z.record(z.string(), item, { error: expected }));
}
