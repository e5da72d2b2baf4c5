import type { Result } from '../../core/index.ts';
import type { LengthStyle } from '../../measure/index.ts';
import type { Value } from '../expression/value-scope.ts';
import type { Form } from '../form/form.ts';
import type { DrawnEdge } from '../outline/drawn-edge.ts';

/** A form while it is evaluated: what has been made so far, each thing or the problems that kept it from being made. */
export interface Sheet {
  readonly form: Form;
  /** How lengths are written in messages. */
  readonly style: LengthStyle;
  /** Thicknesses, mm, that parts really came to, by name: they go before what the form says. */
  readonly thickness: Readonly<Record<string, number>>;
  /** `round`, `floor` and `ceil` leave figures as they are, for how things change from one step to the next. */
  readonly stepless?: boolean;
  readonly values: Map<string, Result<Value>>;
  /** Edges by `outline[2]`; `absent` when their condition does not hold. */
  readonly edges: Map<string, Result<DrawnEdge | 'absent'>>;
}
