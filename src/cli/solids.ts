import { loadSolids, type Solids } from '../base/index.ts';
import type { Design } from '../design/index.ts';
import { isBaseForm } from '../sketch/index.ts';

/** What reckons with solids, where the design's form places parts in space; a form of parts alone is spared the wait. */
export async function solidsFor({ form }: Pick<Design, 'form'>): Promise<{ readonly solids?: Solids }> {
  return isBaseForm(form.text.join('\n')) ? { solids: await loadSolids() } : {};
}
