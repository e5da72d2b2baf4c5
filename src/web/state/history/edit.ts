import type { Design } from '../../../design/index.ts';

/** One value of a design set, or taken away where there is no `to`. An empty path stands for the design as a whole. */
export interface Edit {
  readonly path: readonly (string | number)[];
  readonly to?: unknown;
}

/** The design after some edits, one after the other. What they do not touch is shared. Missing maps on the way are made. */
export function applyEdits(design: Design, edits: readonly Edit[]): Design {
  return edits.reduce((now, { path, to }) => setAt(now, path, to) as Design, design);
}

/** What takes some edits back from the design that they were made to. */
export function inverseOf(design: Design, edits: readonly Edit[]): readonly Edit[] {
  const inverse: Edit[] = [];
  let now = design;
  for (const edit of edits) {
    inverse.unshift(restoring(now, edit.path));
    now = applyEdits(now, [edit]);
  }
  return inverse;
}

/** Sets what stands at the path now; where nothing does, takes away the outermost map that the edit would have to make. */
function restoring(design: Design, path: Edit['path']): Edit {
  let at: unknown = design;
  for (const [i, key] of path.entries()) {
    const next = memberOf(at, key);
    if (next === undefined) return { path: path.slice(0, i + 1) };
    at = next;
  }
  return { path, to: at };
}

function memberOf(value: unknown, key: string | number): unknown {
  if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
  return (value as Record<string | number, unknown>)[key];
}

function setAt(value: unknown, path: Edit['path'], to: unknown): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return to;
  const inner = setAt(memberOf(value, key), rest, to);
  if (Array.isArray(value)) {
    const copy = [...value];
    if (inner === undefined) copy.splice(Number(key), 1);
    else copy[Number(key)] = inner;
    return copy;
  }
  const { [key]: _, ...others } = (value ?? {}) as Record<string | number, unknown>;
  if (inner === undefined) return others;
  // Names keep their order, so that a change that is taken back leaves the file as it was.
  return memberOf(value, key) === undefined
    ? { ...others, [key]: inner }
    : { ...(value as Record<string | number, unknown>), [key]: inner };
}
