import type { Screen } from '../state/screen.ts';
import { book } from './en/book.ts';
import { designs } from './en/designs.ts';
import { joints } from './en/joints.ts';
import { link } from './en/link.ts';
import { notes } from './en/notes.ts';
import { ownShape } from './en/own-shape.ts';
import { routing } from './en/routing.ts';
import { shape } from './en/shape.ts';
import { sheets } from './en/sheets.ts';
import { study } from './en/study.ts';
import { trouble } from './en/trouble.ts';
import { wood } from './en/wood.ts';

/** Everything that the app says in its own name, in English. What the engine says (findings, problems, labels) comes from the engine. */
export const words = {
  app: 'Legwright',
  skip: (screen: string) => `To the screen: ${screen}`,
  screens: {
    shape: 'Shape',
    joints: 'Joints',
    wood: 'Wood',
    routing: 'Routing',
    sheets: 'Sheets',
    book: 'Shop book',
    study: 'Study',
    'own-shape': 'Own shapes',
    designs: 'Designs',
  } satisfies Record<Screen, string>,
  steps: 'Order of work, and what stands beside it',
  loading: 'One moment …',
  reckoning: 'reckoning …',
  later: 'weight and standing follow …',
  undo: 'Undo',
  redo: 'Redo',
  undoWhat: (what: string) => `Undo: ${what}`,
  redoWhat: (what: string) => `Redo: ${what}`,
  pulled: (what: string) => `${what} pulled`,
  cancel: 'Cancel',
  noDesign: 'No design is in hand. Begin one, or take one up.',
  sheetCount: (count: number) => (count === 1 ? '1 sheet of paper' : `${count} sheets of paper`),
  notes,
  titleBlock: { name: 'Design', form: 'Form', revision: 'Revision', unit: 'Unit', paper: 'Patterns' },
  drawing: {
    kind: 'drawing',
    larger: 'Larger',
    smaller: 'Smaller',
    all: 'Show all',
  },
  designs,
  joints,
  study,
  ownShape,
  link,
  trouble,
  shape,
  space: {
    tab: 'In space',
    label: 'The base in space. Arrow keys turn it, plus and minus zoom, 0 shows all.',
    missing: 'This browser cannot draw in space. The views tell the same.',
  },
  print: {
    making: (file: string) => `making ${file} …`,
    failed: 'It could not be printed.',
  },
  routing,
  sheets,
  book,
  wood,
} as const;
