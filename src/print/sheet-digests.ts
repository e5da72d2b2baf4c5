import { clipScene, type Mark, type Pattern, transformScene } from '../drawing/index.ts';
import type { Vec } from '../geometry/index.ts';
import type { PartFacts, Sheet, SheetPlan } from './api.ts';
import { digestOfText } from './digest-of-text.ts';
import { leaveOutCut } from './leave-out.ts';
import { partWords } from './page/strip.ts';
import { type MarkedSeam, markSeams } from './seam-marks.ts';
import { nameOfSheet } from './seams.ts';
import { layoutOf } from './sheets-of-plan.ts';

/** Places that differ by less than this, mm, are printed as one. */
const ROUNDING = 1e-4;

/**
 * For each sheet of a plan, in order, a fingerprint of what is printed on it of the pattern, its name, its seams and
 * marks, which part, hand and how many it is for, and how it is scaled. A sheet whose fingerprint is unchanged need not be printed again. The revision and the
 * count of pages do not enter: they change on every sheet at once.
 */
export function sheetDigests(plan: SheetPlan, pattern: Pattern, facts: PartFacts): readonly string[] {
  const { window } = layoutOf(plan);
  const { scene } = leaveOutCut(pattern, plan);
  const seams = markSeams(plan, pattern);
  const { page, paper } = plan;
  const shared = [page.width, page.height, paper.overlap, paper.calibration.long, paper.calibration.short];
  return plan.sheets.map((sheet) => {
    const shown = clipScene(transformScene(scene, sheet.toPage), window);
    const words = [
      ...shared.map(rounded),
      nameOfSheet(sheet),
      // On the strip at the foot of every sheet.
      partWords(facts),
      ...seams.filter((seam) => seam.sheets.includes(sheet)).flatMap((seam) => wordsOfSeam(seam, sheet)),
      ...shown.marks.map(wordsOfMark),
    ];
    return digestOfText(words.join('\n'));
  });
}

function wordsOfSeam(seam: MarkedSeam, sheet: Sheet): string[] {
  const others = seam.sheets.filter((other) => other !== sheet).map(nameOfSheet);
  return [seam.name, ...others, ...seam.marks.map(({ name, at }) => `${name} ${placed(at)}`)];
}

function wordsOfMark(mark: Mark): string {
  if (mark.kind === 'text') {
    const { text, at, height, angle, align, weight, role } = mark;
    return [text, placed(at), rounded(height), rounded(angle), align, weight, role].join(' ');
  }
  const edges = mark.edges.map((edge) =>
    edge.kind === 'line'
      ? `L ${placed(edge.from)} ${placed(edge.to)}`
      : `A ${placed(edge.from)} ${placed(edge.to)} ${placed(edge.centre)} ${edge.turn}`,
  );
  return [mark.role, mark.closed, mark.fill ?? '', ...edges].join(' ');
}

function placed({ x, y }: Vec): string {
  return `${rounded(x)},${rounded(y)}`;
}

function rounded(value: number): string {
  const steps = Math.round(value / ROUNDING);
  return String(steps === 0 ? 0 : steps);
}
