import { book } from './book.ts';
import { comb } from './comb.ts';
import { figureSheetInHand, figures, figureView } from './figures.ts';
import { findings } from './findings.ts';
import { form } from './form.ts';
import { handles } from './handles.ts';
import { joints } from './joints.ts';
import { meshes } from './meshes.ts';
import { parts } from './parts.ts';
import { pattern } from './pattern.ts';
import { picture } from './picture.ts';
import { routing } from './routing.ts';
import { sheetCount } from './sheet-count.ts';
import { patternList, patternScene, sheets } from './sheets.ts';
import { thumbnail } from './thumbnail.ts';
import { boards, woodChapters } from './wood.ts';

/**
 * Every question that a screen may ask, by name: a function of what the engine found, that gives plain data for the page. A new question
 * is a file of its own here and a line in this list; `useAnswer` asks it.
 */
export const ANSWERS = {
  comb,
  figures,
  figureSheet: figureSheetInHand,
  figureView,
  findings,
  form,
  handles,
  joints,
  meshes,
  parts,
  pattern,
  picture,
  sheetCount,
  thumbnail,
  book,
  patternList,
  patternScene,
  routing,
  sheets,
  boards,
  woodChapters,
};
