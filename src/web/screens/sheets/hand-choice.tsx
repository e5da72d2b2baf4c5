import type { Design } from '../../../design/index.ts';
import type { ListedPattern } from '../../engine/answers/sheets.ts';
import { change } from '../../state/current.ts';
import { Choice, choicesOf } from '../../ui/choice.tsx';
import { words } from '../../words/en.ts';

const said = words.sheets;

type Hands = keyof typeof said.hands;

interface HandChoiceProps {
  readonly design: Design;
  readonly pattern: ListedPattern;
  /** Told which hand of the part is there to be shown afterwards. */
  readonly onChosen: (mirrored: boolean) => void;
}

/** For which hands patterns of a part are printed: as it is drawn, turned over, or one of each. */
export function HandChoice({ design: { patterns }, pattern, onChosen }: HandChoiceProps) {
  const { part, view } = pattern;
  const isOwn = (each: Design['patterns'][number]): boolean => each.part === part && each.view === view;
  const own = patterns.filter(isOwn);
  // What follows from the base, such as a wedge for gluing, is asked for by no pattern of the design.
  if (own.length === 0) return null;
  const [isDrawn, isMirrored] = [false, true].map((over) => own.some(({ mirrored }) => mirrored === over));
  const chosen: Hands = isDrawn && isMirrored ? 'both' : isMirrored === true ? 'mirrored' : 'drawn';
  const choose = (hands: Hands): void => {
    const at = patterns.findIndex(isOwn);
    const made = MIRRORED[hands].map((mirrored) => ({ part, view, mirrored }));
    const others = (from: number, to?: number) => patterns.slice(from, to).filter((each) => !isOwn(each));
    change(said.handsLabel, [{ path: ['patterns'], to: [...others(0, at), ...made, ...others(at)] }]);
    onChosen(MIRRORED[hands][0]!);
  };
  return (
    <>
      <Choice label={said.handsLabel} options={choicesOf(said.hands)} chosen={chosen} onChoose={choose} />
      <p class="hint">{said.handsHelp}</p>
    </>
  );
}

const MIRRORED: Readonly<Record<Hands, readonly boolean[]>> = {
  drawn: [false],
  mirrored: [true],
  both: [false, true],
};
