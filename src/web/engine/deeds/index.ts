/**
 * What the page may have done in the worker, by name; `engineDo` asks for it. Each is fetched when it is first asked for. A new one is a file here and a
 * line in this list.
 */
export const DEEDS = {
  toUnits: async () => (await import('./units.ts')).toUnits,
  beginOwnShape: async () => (await import('./own-shapes.ts')).beginOwnShape,
  strokesInSvg: async () => (await import('./own-shapes.ts')).strokesInSvg,
  designInLink: async () => (await import('./links.ts')).designInLink,
  linkOf: async () => (await import('./links.ts')).linkOf,
  beginDesign: async () => (await import('./forms.ts')).beginDesign,
  checkStored: async () => (await import('./files.ts')).checkStored,
  readFile: async () => (await import('./files.ts')).readFile,
  writeFile: async () => (await import('./files.ts')).writeFile,
  calibrate: async () => (await import('./sheets.ts')).calibrate,
  layPattern: async () => (await import('./sheets.ts')).layPattern,
  listPapers: async () => (await import('./sheets.ts')).listPapers,
  readBars: async () => (await import('./sheets.ts')).readBars,
  usualGuide: async () => (await import('./usuals.ts')).usualGuide,
  usualSize: async () => (await import('./usuals.ts')).usualSize,
};
