import type { SolidKernel } from '../../../base/index.ts';
import type { Computed, Design, Looked } from '../../../design/index.ts';

/** What an answer is made from: the design as it is typed and, where it can be used, what follows from it. */
export interface Answering {
  readonly design: Design;
  /** Its views, had long before all the rest. */
  readonly looked: Looked | undefined;
  readonly computed: Computed | undefined;
  /** Nobody sees the answer yet: it does not count as shown. */
  readonly isAhead?: boolean;
  /** Once they are loaded. */
  readonly solids?: SolidKernel;
}

const made = new WeakMap<object, Map<string, unknown>>();

/** What was made of an object of the engine before, or is made now: an answer that is the very same is not sent again. */
export function madeOf<T>(from: object, key: string, make: () => T): T {
  const own = made.get(from) ?? new Map<string, unknown>();
  made.set(from, own);
  if (!own.has(key)) own.set(key, make());
  return own.get(key) as T;
}
