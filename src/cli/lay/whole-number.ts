import { InvalidArgumentError } from 'commander';

/** A whole number, 0 or more, as typed on the command line. */
export function wholeNumber(text: string): number {
  const number = Number(text);
  if (!/^\d{1,10}$/.test(text.trim()) || number > 4294967295) {
    throw new InvalidArgumentError('Expected a whole number.');
  }
  return number;
}
