/** The outcome of a pure step for an object that never changes, kept as long as that object is. */
export function keptFor<K extends object, T>(step: (key: K) => T): (key: K) => T {
  const known = new WeakMap<K, { readonly outcome: T }>();
  return (key) => {
    const found = known.get(key) ?? { outcome: step(key) };
    known.set(key, found);
    return found.outcome;
  };
}
