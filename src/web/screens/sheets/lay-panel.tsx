import type { Design } from '../../../design/index.ts';
import type { SheetsInHand } from '../../engine/answers/sheets.ts';
import { Button } from '../../ui/button.tsx';
import { words } from '../../words/en.ts';
import { layMoved } from './lay.ts';

interface LayPanelProps {
  readonly sheets: SheetsInHand;
  readonly design: Design;
}

const QUARTER = Math.PI / 2;

/** Turns and shifts of the pattern on its sheets, by figure. */
export function LayPanel({ sheets, design }: LayPanelProps) {
  const said = words.sheets;
  const { grid } = sheets.plan;
  const degrees = (grid.turn * 180) / Math.PI;
  const middle = middleOf(sheets);
  const turnBy = (turn: number): void => void layMoved(design, sheets, { turn, about: middle }, said.turned);
  return (
    <section aria-label={said.lie}>
      <h2>{said.lie}</h2>
      <p class="hint">{sheets.pinned ? said.pinned : said.searched}</p>
      <div class="turn-row">
        <label>
          {said.turn}
          <input
            type="number"
            step={0.5}
            value={Number(degrees.toFixed(2))}
            onChange={(event) => {
              const to = event.currentTarget.valueAsNumber;
              if (Number.isFinite(to)) turnBy((to * Math.PI) / 180 - grid.turn);
            }}
          />
        </label>
        <Button onClick={() => turnBy(QUARTER)}>+90°</Button>
        <Button onClick={() => turnBy(-QUARTER)}>−90°</Button>
      </div>
      <p class="hint">{said.moveHelp}</p>
      <Button disabled={!sheets.pinned} onClick={() => void layMoved(design, sheets, undefined, said.left)}>
        {said.search}
      </Button>
    </section>
  );
}

/** Middle of all sheets together, in their frame. */
function middleOf({ sheets }: SheetsInHand): { readonly x: number; readonly y: number } {
  const xs = sheets.flatMap(({ cell }) => [cell.minX, cell.maxX]);
  const ys = sheets.flatMap(({ cell }) => [cell.minY, cell.maxY]);
  return { x: (Math.min(...xs) + Math.max(...xs)) / 2, y: (Math.min(...ys) + Math.max(...ys)) / 2 };
}
