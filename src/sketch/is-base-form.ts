/** Does a form, as it is written, place its parts in space? Told without reading it whole, before solids are loaded for it. */
export function isBaseForm(text: string): boolean {
  return /^base\s*:/m.test(text);
}
