import { useMemo } from 'preact/hooks';
import { projectTwice } from '../../geometry/index.ts';
import { moved } from '../figure/moving.ts';
import { figureShown, useFigures } from '../figure/use-figures.ts';
import { boardPictures } from '../photographs/board-pictures.ts';
import type { FigureInSpace } from './figure-textures.ts';

/** The figures that the faces of the base carry, ready for its space. */
export function useSpaceFigures(): readonly FigureInSpace[] {
  const figures = useFigures();
  const pictures = boardPictures.value;
  const by = moved.value;
  const isShown = figureShown.value;
  return useMemo(() => {
    if (!isShown) return [];
    return (figures?.figures ?? []).flatMap(({ piece, face, file, lying, toBoard }) => {
      const picture = pictures.get(file);
      if (picture === undefined) return [];
      const { width, height, fromBoard } = picture.plan;
      const onBoard = lying !== undefined && by?.lying === lying ? projectTwice(toBoard, by.by) : toBoard;
      const toPicture = projectTwice(projectTwice(onBoard, fromBoard), [
        1 / width,
        0,
        0,
        0,
        1 / height,
        0,
        0,
        0,
        1,
      ]);
      return [{ piece, face, picture, toPicture }];
    });
  }, [figures, pictures, by, isShown]);
}
