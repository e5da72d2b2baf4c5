import type { Mark, Pattern, TextMark } from '../../src/drawing/index.ts';
import { boxOfText, cornersOf } from '../../src/drawing/layout/oriented-box.ts';
import type { Vec } from '../../src/geometry/index.ts';

export function textsOf(pattern: Pattern): readonly TextMark[] {
  return pattern.withNotes.marks.filter((mark): mark is TextMark => mark.kind === 'text');
}

/** Pairs of texts whose letters' boxes share some area: found by clipping one box with the other. */
export function overlappingTexts(pattern: Pattern): readonly string[] {
  const texts = textsOf(pattern).map((mark) => ({ mark, corners: cornersOf(boxOfText(mark)) }));
  const found: string[] = [];
  for (const [i, a] of texts.entries()) {
    for (const b of texts.slice(i + 1)) {
      if (Math.hypot(a.mark.at.x - b.mark.at.x, a.mark.at.y - b.mark.at.y) > 250) continue;
      if (sharedArea(a.corners, b.corners) > 1e-6) found.push(`${a.mark.text} / ${b.mark.text}`);
    }
  }
  return found;
}

/** Area that two anticlockwise convex polygons share (Sutherland and Hodgman's clipping). */
function sharedArea(a: readonly Vec[], b: readonly Vec[]): number {
  let polygon = [...a];
  for (const [i, from] of b.entries()) {
    const to = b[(i + 1) % b.length]!;
    const side = (p: Vec) => (to.x - from.x) * (p.y - from.y) - (to.y - from.y) * (p.x - from.x);
    const clipped: Vec[] = [];
    for (const [j, p] of polygon.entries()) {
      const q = polygon[(j + 1) % polygon.length]!;
      const [sp, sq] = [side(p), side(q)];
      if (sp >= 0) clipped.push(p);
      if (sp >= 0 !== sq >= 0) {
        const t = sp / (sp - sq);
        clipped.push({ x: p.x + t * (q.x - p.x), y: p.y + t * (q.y - p.y) });
      }
    }
    polygon = clipped;
  }
  return polygon.reduce((sum, p, i) => {
    const q = polygon[(i + 1) % polygon.length]!;
    return sum + (p.x * q.y - q.x * p.y) / 2;
  }, 0);
}

/** Every dimension as the drawing shows it: the distance between its two arrowheads, and the figure written on it. */
export function dimensionsDrawn(pattern: Pattern): readonly { drawn: number; figure: string }[] {
  const { marks } = pattern.scene;
  return marks.flatMap((mark, i) => {
    const next = marks[i + 1];
    if (!isHead(mark) || next === undefined || !isHead(next)) return [];
    const figure = marks.slice(i + 2).find((other) => other.kind === 'text');
    if (figure?.kind !== 'text') return [];
    const [a, b] = [mark.edges[0]!.from, next.edges[0]!.from];
    return [{ drawn: Math.hypot(a.x - b.x, a.y - b.y), figure: figure.text }];
  });
}

function isHead(mark: Mark): mark is Extract<Mark, { kind: 'path' }> {
  return mark.kind === 'path' && mark.role === 'dimension' && mark.fill === 'solid';
}
