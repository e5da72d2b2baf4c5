import type { Computed } from '../../design/index.ts';
import { say, type Terminal } from '../terminal.ts';

/** What became of one part between two computations of a design. */
export interface PartChange {
  readonly part: string;
  readonly label: string;
  readonly change: 'same' | 'changed' | 'new' | 'gone';
}

/** Which parts are made otherwise now: their outline, thickness or joints. */
export function changedParts(before: Computed, now: Computed): readonly PartChange[] {
  const was = new Map(before.parts.map(({ part }) => [part.name, part]));
  const is = new Set(now.parts.map(({ part }) => part.name));
  return [
    ...now.parts.map(({ part }): PartChange => {
      const { name, label } = part;
      const old = was.get(name);
      if (old === undefined) return { part: name, label, change: 'new' };
      return { part: name, label, change: print(old) === print(part) ? 'same' : 'changed' };
    }),
    ...[...was.values()]
      .filter(({ name }) => !is.has(name))
      .map(({ name, label }): PartChange => ({ part: name, label, change: 'gone' })),
  ];
}

/** mm: what rounding leaves is no change. */
const ROUNDING = 1e-4;

const print = (value: unknown): string =>
  JSON.stringify(value, (_, each: unknown) =>
    typeof each === 'number' ? Math.round(each / ROUNDING) || 0 : each,
  );

const WORDS = {
  same: 'stays as it is',
  changed: 'changes: print its pattern again (make --since prints only the sheets that change)',
  new: 'is new',
  gone: 'is no longer made',
} as const satisfies Record<PartChange['change'], string>;

/** A part that is cut keeps its outline: what may change is what joints take from it. */
const WORDS_WHEN_CUT = {
  ...WORDS,
  same: 'cut already, stays as it is',
  changed: 'cut already, keeps its outline; its joints or its thickness change: see check before going on',
} as const satisfies Record<PartChange['change'], string>;

/** Tells the maker which parts change, and which are cut already; `cut` names parts of the form. */
export function sayChangedParts(
  terminal: Terminal,
  changes: readonly PartChange[],
  cut: readonly string[],
): void {
  for (const { part, label, change } of changes) {
    const isCut = cut.some((name) => part === name || part.startsWith(`${name}-`));
    say(terminal, `  ${label}: ${(isCut ? WORDS_WHEN_CUT : WORDS)[change]}`);
  }
}
