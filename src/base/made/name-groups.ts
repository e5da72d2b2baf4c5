import type { MadeGroup } from './group.ts';

interface Named {
  readonly name: string;
  readonly label: string;
}

/**
 * What each group is called: as the part it is drawn from. Where that makes several different pieces, or the group holds pieces of several drawn
 * parts, they are numbered by name and told apart on paper by the labels of their places, or else by the marks of the pieces.
 */
export function nameGroups(groups: readonly Pick<MadeGroup, 'members'>[]): readonly Named[] {
  const drawnOf = (group: (typeof groups)[number]) => group.members[0]!.part.drawn;
  const taken = new Set(groups.map((group) => drawnOf(group).name));
  const names = groups.map((group, at) => {
    const { name } = drawnOf(group);
    const before = groups.slice(0, at).filter((other) => drawnOf(other).name === name).length;
    return before === 0 ? name : freeName(name, before + 1, taken);
  });
  const first = groups.map((group) => {
    const { name, label } = drawnOf(group);
    const isOnly = groups.filter((other) => drawnOf(other).name === name).length === 1;
    const isShared = group.members.some(({ part }) => part.drawn.name !== name);
    return isOnly && !isShared ? label : placesOf(group);
  });
  return groups.map((group, at) => {
    const isOnly = first.filter((label) => label === first[at]).length === 1;
    const marks = group.members.map(({ part }) => part.mark).filter((mark) => mark !== '');
    const told = isOnly ? first[at]! : `${first[at]} (${marks.length > 0 ? marks.join(', ') : names[at]})`;
    return { name: names[at]!, label: told };
  });
}

function freeName(name: string, from: number, taken: Set<string>): string {
  let number = from;
  while (taken.has(`${name}-${number}`)) number++;
  taken.add(`${name}-${number}`);
  return `${name}-${number}`;
}

/** What the places of its pieces are called: by what their names have in common at their ends, `Long seat rail` and `End seat rail` being seat rails. */
function placesOf({ members }: Pick<MadeGroup, 'members'>): string {
  const labels = [...new Set(members.map(({ part }) => part.label))];
  const [first, ...others] = labels.map((label) => label.split(' ').toReversed());
  if (others.length === 0) return labels[0]!;
  const differs = first!.findIndex((word, at) =>
    others.some((other) => other[at]?.toLowerCase() !== word.toLowerCase()),
  );
  const common = (differs < 0 ? first! : first!.slice(0, differs)).toReversed().join(' ');
  return common === '' ? labels.join(', ') : common.charAt(0).toUpperCase() + common.slice(1);
}
