import { signal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { FiguresInHand } from '../engine/answers/figures.ts';
import { useAnswer } from '../engine/use-answer.ts';
import { layPhotographs, photographs } from '../photographs/board-pictures.ts';
import { design } from '../state/current.ts';

/** Is the figure of the wood shown in views, where there is one? */
export const figureShown = signal(true);

/** Does any board of the design in hand have a photograph? Without one nothing is asked about figures. */
export function hasPhotographs(): boolean {
  return (design.value?.wood?.boards ?? []).some((board) => (board.photographs ?? []).length > 0);
}

/** The figures of the design in hand, their photographs on the way to be made true. */
export function useFigures(): FiguresInHand | undefined {
  const figures = useAnswer('figures');
  useEffect(() => {
    if (figures !== undefined) layPhotographs(figures.photographs);
  }, [figures, photographs.value]);
  return figures;
}
