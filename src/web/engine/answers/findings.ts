import type { Finding } from '../../../core/index.ts';
import type { Answering } from './answering.ts';

/** What the checks have to say, graver ones first. */
export function findings({ computed }: Answering, _: undefined): readonly Finding[] | undefined {
  return computed?.findings;
}
