import type { Design } from '../../../design/index.ts';
import type { SheetsInHand } from '../../engine/answers/sheets.ts';
import { PrintProgress } from '../../print/print-progress.tsx';
import { printToFile } from '../../print/printer.ts';
import { change } from '../../state/current.ts';
import { Button } from '../../ui/button.tsx';
import { words } from '../../words/en.ts';

interface PrintPanelProps {
  readonly design: Design;
  readonly sheets: SheetsInHand;
  readonly picked: SheetsInHand['sheets'][number] | undefined;
}

/** Makes the PDF, whole or one sheet of it. What is printed stays pinned where it lies, so that later prints fit it. */
export function PrintPanel({ design, sheets, picked }: PrintPanelProps) {
  const said = words.sheets;
  const { pattern, grids, pinned } = sheets;
  const pin = (): Design => {
    if (pinned || grids === undefined) return design;
    change(said.kept, [{ path: ['grids', pattern], to: grids }]);
    return { ...design, grids: { ...design.grids, [pattern]: grids } };
  };
  return (
    <section aria-label={said.print}>
      <Button look="main" onClick={() => void printToFile(pin(), { kind: 'pattern', pattern })}>
        {said.print}
      </Button>
      {picked === undefined ? (
        <p class="hint">{said.pick}</p>
      ) : (
        <Button
          onClick={() =>
            void printToFile(pin(), { kind: 'sheet', pattern, row: picked.row, place: picked.place })
          }
        >
          {said.trial(picked.name)}
        </Button>
      )}
      <p class="hint">{said.printHelp}</p>
      <PrintProgress />
    </section>
  );
}
