import type { Design } from '../../../design/index.ts';
import { applyEdits, type Edit, inverseOf } from './edit.ts';

/**
 * One line of a design's log. Nothing in the log is ever changed or thrown away: taking back is a line of its own, so that two tabs
 * that write to one log lose nothing.
 */
export interface Change {
  /** Tells it from every other line, of this tab and of others. */
  readonly key: string;
  /** ISO 8601, with the time. */
  readonly time: string;
  /** For `undo` and `redo` the line that is taken back or made again. */
  readonly kind: 'change' | 'undo' | 'redo';
  readonly of?: string;
  /** What was changed, for the maker: `Splay`. */
  readonly words: string;
  readonly edits: readonly Edit[];
}

/** A change that can be taken back, or made again. */
export interface Step {
  /** Of the line that made the change. */
  readonly key: string;
  readonly words: string;
  readonly edits: readonly Edit[];
  /** What takes it back. */
  readonly inverse: readonly Edit[];
}

/** A design as its log leaves it. */
export interface Folded {
  readonly design: Design;
  /** What can be taken back, the last one first to go; and what can be made again. */
  readonly done: readonly Step[];
  readonly undone: readonly Step[];
}

export function startLog(design: Design): Folded {
  return { design, done: [], undone: [] };
}

/** The design after more lines of its log: of the same log and the very same lines it is the very same. */
export function foldLog(folded: Folded, changes: readonly Change[]): Folded {
  return changes.reduce(foldOnce, folded);
}

/** What a line made of a log before: a line that has come to the disk changes nothing of what the page shows already. */
const after = new WeakMap<Folded, WeakMap<Change, Folded>>();

function foldOnce(folded: Folded, change: Change): Folded {
  const lines = after.get(folded) ?? new WeakMap<Change, Folded>();
  after.set(folded, lines);
  const known = lines.get(change) ?? foldChange(folded, change);
  lines.set(change, known);
  return known;
}

function foldChange(folded: Folded, change: Change): Folded {
  const { design, done, undone } = folded;
  const { key, kind, of, words, edits } = change;
  const next = { design: applyEdits(design, edits) };
  switch (kind) {
    case 'change': {
      const step = { key, words, edits, inverse: inverseOf(design, edits) };
      return { ...next, done: [...done, step], undone: [] };
    }
    case 'undo': {
      // Of a line that another tab took back at the same moment nothing is left to take back.
      const step = done.find((each) => each.key === of);
      if (step === undefined) return folded;
      return { ...next, done: done.filter((each) => each !== step), undone: [...undone, step] };
    }
    case 'redo': {
      const step = undone.find((each) => each.key === of);
      if (step === undefined) return folded;
      const again = { ...step, inverse: inverseOf(design, edits) };
      return { ...next, done: [...done, again], undone: undone.filter((each) => each !== step) };
    }
    default:
      return kind satisfies never;
  }
}

/** The line that takes back the last change, without its key and time; nothing when there is none. */
export function undoOf({ done }: Folded): Omit<Change, 'key' | 'time'> | undefined {
  const step = done.at(-1);
  return step && { kind: 'undo', of: step.key, words: step.words, edits: step.inverse };
}

/** The line that makes the last change again that was taken back. */
export function redoOf({ undone }: Folded): Omit<Change, 'key' | 'time'> | undefined {
  const step = undone.at(-1);
  return step && { kind: 'redo', of: step.key, words: step.words, edits: step.edits };
}
