import { SceneView } from '../../drawing/scene-view.tsx';
import type { FiguresInHand } from '../../engine/answers/figures.ts';
import { useAnswer } from '../../engine/use-answer.ts';
import { FigureCanvas } from '../../figure/figure-canvas.tsx';
import { moved } from '../../figure/moving.ts';
import { patchesOf } from '../../figure/paint-figures.ts';
import { boardPictures } from '../../photographs/board-pictures.ts';
import { words } from '../../words/en.ts';

const said = words.wood.figure;

/** The pieces side by side with the figure that they will carry, as one faces them; it follows what is moved on the boards. */
export function FigureSheetView({ figures }: { readonly figures: FiguresInHand }) {
  const sheet = useAnswer('figureSheet');
  if (sheet === undefined || figures.figures.length === 0) return <p class="hint figure-none">{said.none}</p>;
  return (
    <figure class="figure-sheet">
      <figcaption>
        <strong>{said.title}</strong> {said.help}
      </figcaption>
      <div class="figure-sheet-drawing">
        <SceneView
          scene={sheet.scene}
          label={said.label}
          under={(screen) => (
            <FigureCanvas
              screen={screen}
              patches={() => patchesOf(sheet.faces, figures.figures, boardPictures.value, moved.value)}
            />
          )}
        />
      </div>
    </figure>
  );
}
