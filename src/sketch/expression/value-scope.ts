import type { Vec } from '../../geometry/index.ts';
import type { SketchedPlane as Plane } from '../api.ts';
import { LARGEST_FIGURE } from '../source/limits.ts';
import type { Node, Span } from './node.ts';

/** What an expression comes to: mm, rad, mm², … ; yes or no; the option chosen; a point; a plane. */
export type Value = number | boolean | string | Vec | Plane;

/** What an expression is computed with. */
export interface ValueScope {
  /** The value of part of the expression. */
  readonly compute: (node: Node) => Value | undefined;
  readonly text: string;
  /** Value of a declared name; nothing when it could not be computed, which has then been reported. */
  readonly valueOf: (name: string) => Value | undefined;
  /** `round`, `floor` and `ceil` leave a figure as it is. */
  readonly stepless?: boolean;
  readonly report: (span: Span, code: string, message: string, expected?: string) => void;
}

/** The figure, unless it is not one or beyond what any base needs. */
export function finite(value: number, node: Node, scope: ValueScope): number | undefined {
  if (Math.abs(value) <= LARGEST_FIGURE) return value;
  const text = scope.text.slice(node.from, node.to);
  const what = Number.isNaN(value) ? 'comes to no figure' : 'comes to a figure too large to use';
  scope.report(node, 'form.figure', `${text} ${what}`, `a figure up to ${LARGEST_FIGURE}`);
  return undefined;
}
