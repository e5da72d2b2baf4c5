import { join } from 'node:path';
import { type Computed, metaOf, resolvePaper } from '../../design/index.ts';
import {
  drillingPatterns,
  type Lettering,
  leafMapDrawing,
  resawDrawing,
  sceneToSvg,
} from '../../drawing/index.ts';
import { type PrintFonts, planSheets, renderPatternPdf } from '../../print/index.ts';
import type { FileToWrite } from '../write-together.ts';

/** What of the wood is printed and drawn beside the shop book: drilling patterns at full size, resaw plans and leaf maps. */
export async function woodFiles(
  computed: Computed,
  fonts: PrintFonts,
  lettering: Lettering,
): Promise<readonly FileToWrite[]> {
  const { wood, lengths, design } = computed;
  if (wood === undefined) return [];
  const drawing = (name: string, title: string, scene: Parameters<typeof sceneToSvg>[0]): FileToWrite => ({
    path: join('drawings', `${name}.svg`),
    content: sceneToSvg(scene, lettering, { title: `${design.name}, ${title}` }),
  });
  return [
    ...(await drillingFiles(computed, fonts)),
    ...wood.stacks.map((stack, at) =>
      drawing(`resaw-${at + 1}`, `resawing of ${stack.plan.name}`, resawDrawing(stack, lengths).scene),
    ),
    ...wood.matches.map(({ map }, at) =>
      drawing(`leaf-map-${at + 1}`, `leaf map of ${map.match.name}`, leafMapDrawing(map)),
    ),
  ];
}

/** Only where the design says how its top is held. */
async function drillingFiles(computed: Computed, fonts: PrintFonts): Promise<readonly FileToWrite[]> {
  const { wood, base, design, lengths } = computed;
  if (wood?.inserts === undefined || base === undefined || design.wood?.top === undefined) return [];
  const paper = resolvePaper(design.paper, design.units.length);
  if (!paper.ok) throw new Error('paper was resolved before');
  const labelOf = (id: string): string => {
    const part = base.base.parts.find((each) => each.id === id)!;
    return `${part.label} ${part.mark}`.trim();
  };
  const files: FileToWrite[] = [];
  for (const { pattern, parts } of drillingPatterns(wood.inserts, labelOf, lengths)) {
    const plan = planSheets(pattern, paper.value);
    if (!plan.ok) throw new Error(plan.problems[0]?.message);
    const facts = { part: pattern.title, quantity: parts.length, keyFacts: [] };
    const content = await renderPatternPdf(
      [{ pattern, plan: plan.value, facts }],
      { ...metaOf(computed), cautions: [] },
      fonts,
    );
    files.push({ path: `${pattern.name}.pdf`, content });
  }
  return files;
}
