/** The outcome of a step that is taken when first asked for, and kept. */
export function once<T>(step: () => T): () => T {
  let kept: { readonly outcome: T } | undefined;
  return () => {
    kept ??= { outcome: step() };
    return kept.outcome;
  };
}
