import { jointsChapter } from '../../../design/index.ts';
import { type Answering, madeOf } from './answering.ts';
import { blockForScreen, type ScreenBlock } from './book.ts';

/** A kind of joint of the base, with all that is to be marked out for it. */
export interface ShownJoint {
  /** The form's name of it; findings go by it. */
  readonly name: string;
  readonly label: string;
  readonly count: number;
  /** Marks of the parts that it joins, of each pair. */
  readonly between: readonly string[];
  readonly blocks: readonly ScreenBlock[];
}

/** Every kind of joint of the base, as the shop book marks it out; nothing for parts that belong to no base. */
export function joints(
  { computed }: Answering,
  _: undefined,
): readonly ShownJoint[] | 'parts alone' | undefined {
  if (computed === undefined) return undefined;
  const { base: built, lengths } = computed;
  if (built === undefined) return 'parts alone';
  return madeOf(built, `joints ${JSON.stringify(lengths)}`, () => {
    const { joints: all } = built.joints;
    const { intro, groups } = groupsOf(jointsChapter(built, { lengths }).blocks.map(blockForScreen));
    const names = [...new Set(all.map(({ name }) => name))];
    return names.map((name, at) => {
      const own = all.filter((joint) => joint.name === name);
      const between = own.map(({ sides }) => sides.map(({ part }) => markOf(part)).join(' – '));
      return {
        name,
        label: own[0]!.label,
        count: own.length,
        between,
        blocks: [...(groups[at] ?? []), ...intro],
      };
    });
    function markOf(id: string): string {
      const part = built?.base.parts.find((each) => each.id === id);
      return part === undefined ? id : `${part.label} ${part.mark}`.trim();
    }
  });
}

/** The chapter has a heading before each joint, and says before the first what holds for all. */
function groupsOf(blocks: readonly ScreenBlock[]) {
  const starts = blocks.flatMap(({ kind }, at) => (kind === 'heading' ? [at] : []));
  return {
    intro: blocks.slice(0, starts[0]),
    groups: starts.map((from, i) => blocks.slice(from + 1, starts[i + 1])),
  };
}
