import { findings } from './findings.ts';
import { form } from './form.ts';
import { handles } from './handles.ts';
import { parts } from './parts.ts';
import { picture } from './picture.ts';
import { sheetCount } from './sheet-count.ts';

/**
 * Every question that a screen may ask, by name: a function of what the engine found, that gives plain data for the page. A new question
 * is a file of its own here and a line in one of these lists; `useAnswer` asks it. These are what the first view asks.
 */
export const ANSWERS = { findings, form, handles, parts, picture, sheetCount };

/** The others are fetched when they are first asked. */
export const FURTHER = {
  book: async () => (await import('./book.ts')).book,
  boards: async () => (await import('./wood.ts')).boards,
  comb: async () => (await import('./comb.ts')).comb,
  figures: async () => (await import('./figures.ts')).figures,
  figureSheet: async () => (await import('./figures.ts')).figureSheetInHand,
  figureView: async () => (await import('./figures.ts')).figureView,
  joints: async () => (await import('./joints.ts')).joints,
  meshes: async () => (await import('./meshes.ts')).meshes,
  patches: async () => (await import('./patches.ts')).patches,
  pattern: async () => (await import('./pattern.ts')).pattern,
  patternList: async () => (await import('./sheets.ts')).patternList,
  patternScene: async () => (await import('./sheets.ts')).patternScene,
  routing: async () => (await import('./routing.ts')).routing,
  sheets: async () => (await import('./sheets.ts')).sheets,
  thumbnail: async () => (await import('./thumbnail.ts')).thumbnail,
  woodChapters: async () => (await import('./wood.ts')).woodChapters,
};
