import type { Place } from '../source/place.ts';

/** A problem on its way out of the schema, the file's name still missing. */
export interface Complaint {
  readonly code: string;
  readonly message: string;
  readonly found?: string;
  readonly expected?: string;
  readonly place?: Place;
}

/** The issue that carries a complaint through zod. */
export function complain(input: unknown, complaint: Complaint) {
  return { code: 'custom' as const, message: complaint.message, input, params: { complaint } };
}
