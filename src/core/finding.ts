import type { FigureToSet } from './figure-to-set.ts';

/** How grave a finding is: a `stop` must be cured before wood is cut. */
export type Severity = 'stop' | 'caution' | 'note';

/** A measured value or a limit: millimetres, radians, square millimetres, or a plain number. */
export interface Quantity {
  readonly value: number;
  readonly unit: 'mm' | 'rad' | 'mm2' | 'none';
}

/** What a check has to say of a sound design. */
export interface Finding {
  /** Stable, dotted: `routing.cutter-too-large`. */
  readonly code: string;
  readonly severity: Severity;
  /** The part's name, where one part is meant. */
  readonly part?: string;
  /** The hand of the part that it holds for, where the hands differ; all of them when absent. */
  readonly hand?: 'left' | 'right' | 'as drawn' | 'mirrored';
  /** The form's name of the joint it speaks of; of several, joined by blanks. */
  readonly joint?: string;
  /** Identities of the edges it speaks of. */
  readonly edges: readonly string[];
  /** Place in the part's plane, mm. */
  readonly at?: { readonly x: number; readonly y: number };
  /** One or two sentences for the maker, numbers included. */
  readonly message: string;
  readonly measured?: Quantity;
  readonly limit?: Quantity;
  /** What would cure it. */
  readonly cure?: string;
  /** A figure that cures it, tried by computing again. */
  readonly set?: FigureToSet;
  /** A loose tenon or dowel made to measure that would fit where none of the maker's does, mm. */
  readonly fits?: {
    readonly kind: 'tenon' | 'dowel';
    readonly thickness: number;
    readonly width: number;
    readonly length: number;
  };
}
