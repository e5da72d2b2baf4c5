import { widthOfText } from '../../drawing/index.ts';
import { type Box, type Edge, line, type Vec, vec } from '../../geometry/index.ts';
import { GRAPHITE, HAIR, type Ink, PALE, type PageItem, type TextItem, THIN } from './ink.ts';

const TAG = { id: 'sheet', role: 'left' } as const;

/** A line from point to point. */
export function polyline(points: readonly Vec[], width = THIN, ink: Ink = GRAPHITE): PageItem {
  return { kind: 'stroke', edges: edgesThrough(points), closed: false, width, dash: [], ink };
}

export function rectangle(box: Box, width = HAIR, ink: Ink = PALE): PageItem {
  return { kind: 'stroke', edges: edgesRound(cornersOf(box)), closed: true, width, dash: [], ink };
}

export function filled(corners: readonly Vec[], ink: Ink = GRAPHITE): PageItem {
  return { kind: 'fill', edges: edgesRound(corners), ink };
}

export function cornersOf({ minX, minY, maxX, maxY }: Box): Vec[] {
  return [vec(minX, minY), vec(maxX, minY), vec(maxX, maxY), vec(minX, maxY)];
}

function edgesThrough(points: readonly Vec[]): Edge[] {
  return points.slice(1).map((to, i) => line(points[i]!, to, TAG));
}

export function edgesRound(corners: readonly Vec[]): Edge[] {
  return corners.map((from, i) => line(from, corners[(i + 1) % corners.length]!, TAG));
}

type TextOptions = Partial<Omit<TextItem, 'kind' | 'text' | 'at'>>;

/** Lettering with its baseline at a point; 2.5 mm regular graphite unless said otherwise. */
export function words(text: string, at: Vec, options: TextOptions = {}): TextItem {
  return {
    kind: 'text',
    text,
    at,
    height: options.height ?? 2.5,
    angle: options.angle ?? 0,
    align: options.align ?? 'left',
    weight: options.weight ?? 'regular',
    ink: options.ink ?? GRAPHITE,
  };
}

/**
 * Lettering that keeps within a width, mm: in smaller letters down to `least`, and after that cut short with an
 * ellipsis.
 */
export function wordsWithin(
  text: string,
  at: Vec,
  width: number,
  options: TextOptions,
  least = 1.8,
): TextItem {
  const item = words(text, at, options);
  const full = widthOfText(text, item.height, item.weight);
  if (full <= width) return item;
  const height = Math.max(least, (item.height * width) / full);
  if (widthOfText(text, height, item.weight) <= width * 1.0001) return { ...item, height };
  let kept = [...text];
  while (kept.length > 0 && widthOfText(`${kept.join('')}\u2026`, height, item.weight) > width) {
    kept = kept.slice(0, -1);
  }
  return { ...item, text: `${kept.join('').trimEnd()}\u2026`, height };
}

/** The text broken into lines no wider than so many mm, at spaces. */
export function linesWithin(
  text: string,
  width: number,
  height: number,
  weight: TextItem['weight'],
): string[] {
  const lines: string[] = [];
  let current = '';
  for (const word of text.split(/\s+/).filter((part) => part !== '')) {
    const longer = current === '' ? word : `${current} ${word}`;
    if (current !== '' && widthOfText(longer, height, weight) > width) {
      lines.push(current);
      current = word;
    } else current = longer;
  }
  return current === '' ? lines : [...lines, current];
}
