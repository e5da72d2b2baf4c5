import type { OnScreen } from '../drawing/scene-view.tsx';
import type { FigureViewOptions } from '../engine/answers/figures.ts';
import { useAnswer } from '../engine/use-answer.ts';
import { boardPictures } from '../photographs/board-pictures.ts';
import { FigureCanvas } from './figure-canvas.tsx';
import { moved } from './moving.ts';
import { patchesOf } from './paint-figures.ts';
import { useFigures } from './use-figures.ts';

interface ViewFiguresProps {
  readonly of: FigureViewOptions['of'];
  readonly screen: OnScreen;
  /** Units of the scene per mm of wood. */
  readonly scale: number;
}

/** Under a view of the base or of a part: the figure that its pieces will carry. */
export function ViewFigures({ of, screen, scale }: ViewFiguresProps) {
  const figures = useFigures();
  const view = useAnswer('figureView', { of });
  if (figures === undefined || view === undefined || figures.figures.length === 0) return null;
  return (
    <FigureCanvas
      screen={screen}
      scale={scale}
      patches={() => patchesOf(view.faces, figures.figures, boardPictures.value, moved.value)}
    />
  );
}
