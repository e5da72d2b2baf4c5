export type * from './api.ts';
export { type Correction, calibrate, type PaperAxis } from './calibrate.ts';
export { type CalibrationBars, calibrationBars, renderCalibrationSheet } from './calibration-sheet.ts';
export { chooseGrid } from './choose-grid.ts';
export {
  allRound,
  paperNamed,
  paperNames,
  paperOf,
  rollOf,
  SAFE_MARGIN,
  sheetOf,
  USUAL_OVERLAP,
} from './papers.ts';
export { planSheets } from './plan-sheets.ts';
export { renderPatternPdf } from './render-pattern-pdf.ts';
export { sheetDigests } from './sheet-digests.ts';
