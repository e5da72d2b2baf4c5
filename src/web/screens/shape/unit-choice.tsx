import type { Design } from '../../../design/index.ts';
import { engineDo } from '../../engine/engine-do.ts';
import { change, design } from '../../state/current.ts';
import { Choice } from '../../ui/choice.tsx';
import { words } from '../../words/en.ts';

/** In which unit the design writes its lengths and reads bare numbers; what was typed stays as it was. */
export function UnitChoice() {
  const inHand = design.value;
  if (inHand === undefined) return null;
  const set = async (unit: 'mm' | 'in'): Promise<void> => {
    const after = await engineDo('toUnits', { design: inHand, unit });
    const keys = Object.keys(after) as (keyof Design)[];
    const edits = keys.flatMap((key) => {
      const isSame = JSON.stringify(after[key]) === JSON.stringify(inHand[key]);
      return isSame ? [] : [{ path: [key], to: after[key] }];
    });
    if (edits.length > 0) change(words.shape.unit, edits);
  };
  return (
    <Choice
      label={words.shape.unit}
      options={[
        ['mm', 'mm'],
        ['in', 'in'],
      ]}
      chosen={inHand.units.length}
      onChoose={(unit) => void set(unit)}
      look="bare"
    />
  );
}
