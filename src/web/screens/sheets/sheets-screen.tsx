import { useState } from 'preact/hooks';
import type { PatternRequest } from '../../../design/index.ts';
import { useAnswer } from '../../engine/use-answer.ts';
import { design } from '../../state/current.ts';
import { Choice } from '../../ui/choice.tsx';
import { words } from '../../words/en.ts';
import { CalibrationPanel } from './calibration-panel.tsx';
import { HandChoice } from './hand-choice.tsx';
import { LayPanel } from './lay-panel.tsx';
import { PaperFields } from './paper-fields.tsx';
import { PrintPanel } from './print-panel.tsx';
import { TapedView } from './taped-view.tsx';

/** A pattern on its sheets as they will be taped; turned and shifted by hand where the maker likes; made into a PDF. */
export function SheetsScreen() {
  const patterns = useAnswer('patternList') ?? [];
  const [wanted, setWanted] = useState<PatternRequest>();
  const [sheet, setSheet] = useState<string>();
  const listed =
    patterns.find((each) => isSame(each, wanted)) ??
    patterns.find(({ part, view }) => part === wanted?.part && view === wanted.view) ??
    patterns[0];
  const name = listed?.name;
  const options = name === undefined ? {} : { pattern: name };
  const sheets = useAnswer('sheets', options);
  const scene = useAnswer('patternScene', options);
  const inHand = design.value;
  const said = words.sheets;
  if (inHand === undefined || sheets === undefined || scene === undefined) {
    return <p class="waiting">{words.loading}</p>;
  }
  const picked = sheets.sheets.find((each) => each.name === sheet);
  return (
    <div class="with-panel sheets-screen">
      <TapedView sheets={sheets} scene={scene} design={inHand} picked={picked?.name} onPick={setSheet} />
      <aside class="panel" aria-label={said.panel}>
        <Choice
          label={said.pattern}
          options={patterns.map((each) => [each.name, `${each.title} (${each.sheets})`])}
          chosen={name ?? ''}
          onChoose={(pattern) => {
            setWanted(patterns.find((each) => each.name === pattern));
            setSheet(undefined);
          }}
        />
        {listed === undefined ? null : (
          <HandChoice
            design={inHand}
            pattern={listed}
            onChosen={(mirrored) => {
              setWanted({ part: listed.part, view: listed.view, mirrored });
              setSheet(undefined);
            }}
          />
        )}
        <p class="count">{said.count(sheets.sheets.length, sheets.plan.rows, sheets.plan.places)}</p>
        <p class="hint">{said.all(patterns.reduce((sum, each) => sum + each.sheets, 0))}</p>
        <PrintPanel design={inHand} sheets={sheets} picked={picked} />
        <LayPanel sheets={sheets} design={inHand} />
        <PaperFields design={inHand} />
        <CalibrationPanel design={inHand} />
      </aside>
    </div>
  );
}

function isSame(a: PatternRequest, b: PatternRequest | undefined): boolean {
  return a.part === b?.part && a.view === b.view && a.mirrored === b.mirrored;
}
