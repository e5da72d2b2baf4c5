import type { Paper } from '../api.ts';
import { layOutPage, type PageLayout } from '../page-layout.ts';

/** The first page of a roll is cut this long, mm. */
const ROLL_PAGE = 297;

/** Where things go on pages that are not sheets: the paper upright, without a window. */
export function firstLayout(paper: Paper): PageLayout {
  const length = paper.size.kind === 'roll' ? Math.min(ROLL_PAGE, paper.size.most) : undefined;
  const layout = layOutPage(paper, 'portrait', length);
  if (!layout.ok) throw new Error(layout.problems[0]?.message);
  return layout.value;
}
