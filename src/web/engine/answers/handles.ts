import { CAMERAS } from '../../../drawing/index.ts';
import { pointToFrame } from '../../../geometry/index.ts';
import { type Answering, madeOf } from './answering.ts';
import type { PictureOptions } from './picture.ts';

/** A point that can be pulled, where it stands in a picture (mm of wood, y up). */
export interface ShownHandle {
  readonly name: string;
  readonly label: string;
  /** Labels of the parameters that follow. */
  readonly moves: readonly string[];
  readonly x: number;
  readonly y: number;
}

const VIEW_OF = { front: 'front', left: 'side', plan: 'plan' } as const;

/** The points of the form that can be pulled in a picture. */
export function handles(
  { looked, computed }: Answering,
  { of }: Pick<PictureOptions, 'of'>,
): readonly ShownHandle[] | undefined {
  if (looked === undefined) return [];
  const drawn = 'part' in of ? drawnName(computed, of.part) : undefined;
  return madeOf(looked.sketch, `handles ${JSON.stringify(of)} ${drawn}`, () =>
    (looked.sketch.handles ?? []).flatMap((handle): readonly ShownHandle[] => {
      const { name, label, moves } = handle;
      if (handle.of === 'part') return drawn === handle.part ? [{ name, label, moves, ...handle.at }] : [];
      if (!('side' in of) || !handle.views.includes(VIEW_OF[of.side])) return [];
      const { x, y } = pointToFrame(CAMERAS[of.side], handle.at);
      return [{ name, label, moves, x, y }];
    }),
  );
}

/** What the form calls a part that is made; of a form of parts alone they are the same. */
function drawnName(computed: Answering['computed'], made: string): string {
  const { base } = computed ?? {};
  const member = base?.made.find(({ name }) => name === made)?.members[0]?.part;
  return base?.base.parts.find(({ id }) => id === member)?.drawn.name ?? made;
}
