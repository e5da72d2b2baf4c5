import type { Answering } from './answering.ts';

/** A part that is made, for lists: its patterns, routing and findings go by its name. */
export interface ListedPart {
  readonly name: string;
  readonly label: string;
  readonly count: number;
  /** Where it stands in the base, as marked; empty for forms of parts alone. */
  readonly marks: readonly string[];
}

export function parts({ computed }: Answering, _: undefined): readonly ListedPart[] | undefined {
  return computed?.parts.map(({ part }) => {
    const made = computed.base?.made.find(({ name }) => name === part.name);
    const count = part.quantity.left + part.quantity.right;
    const marks = made?.members.map(({ mark }) => mark).filter((mark) => mark !== '') ?? [];
    return { name: part.name, label: part.label, count, marks };
  });
}
