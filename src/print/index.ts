export type * from './api.ts';
export type { BookBlock, BookChapter, ShopBook } from './book/api.ts';
export { renderShopBook } from './book/render-shop-book.ts';
export { calibrate, type PaperAxis } from './calibrate.ts';
export { calibrationBars, renderCalibrationSheet } from './calibration-sheet.ts';
export { paperNamed, paperNames, rollOf, SAFE_MARGIN, sheetOf, USUAL_OVERLAP } from './papers.ts';
export { planSheets } from './plan-sheets.ts';
export { renderPatternPdf } from './render-pattern-pdf.ts';
export { sheetDigests } from './sheet-digests.ts';
