/** Holds memory outside of what is collected as rubbish. */
interface Held {
  delete(): void;
}

/** Runs `use`; whatever it handed to `keep` is freed at the end, also when it throws. */
export function withScratch<T>(use: (keep: <H extends Held>(held: H) => H) => T): T {
  const held: Held[] = [];
  try {
    return use((each) => {
      held.push(each);
      return each;
    });
  } finally {
    for (const each of held) each.delete();
  }
}
