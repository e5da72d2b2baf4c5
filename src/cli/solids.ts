import { loadSolids, type SolidKernel } from '../base/index.ts';
import type { Design } from '../design/index.ts';

/** What reckons with solids, where the design's form places parts in space; a form of parts alone is spared the wait. */
export async function solidsFor({ form }: Pick<Design, 'form'>): Promise<{ readonly solids?: SolidKernel }> {
  return form.text.some((line) => /^base\s*:/.test(line)) ? { solids: await loadSolids() } : {};
}
