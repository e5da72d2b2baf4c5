import { checkStored, readFile, writeFile } from './files.ts';
import { beginDesign, listForms } from './forms.ts';
import { designInLink, linkOf } from './links.ts';
import { beginOwnShape, strokesInSvg } from './own-shapes.ts';
import { calibrate, layPattern, listPapers, readBars } from './sheets.ts';
import { toUnits } from './units.ts';
import { usualGuide, usualSize } from './usuals.ts';

/** What the page may have done in the worker, by name; `engineDo` asks for it. A new one is a file here and a line in this list. */
export const DEEDS = {
  toUnits,
  beginOwnShape,
  designInLink,
  linkOf,
  strokesInSvg,
  beginDesign,
  checkStored,
  listForms,
  readFile,
  writeFile,
  calibrate,
  layPattern,
  listPapers,
  readBars,
  usualGuide,
  usualSize,
};
