import { describe, expect, it } from 'vitest';
import { drawPattern, type Mark } from '../../src/drawing/index.ts';
import { routePart } from '../../src/routing/index.ts';
import { bearingTooling, partOf, rectangle } from '../routing/support/parts.ts';

const OPTIONS = {
  view: 'part',
  mirrored: false,
  design: 'Reading room',
  revision: 'A',
  date: '2026-03-09',
  lengths: { unit: 'mm', decimals: 1 },
} as const;

function patternOf(roles: Parameters<typeof rectangle>[2]): readonly Mark[] {
  const part = partOf(rectangle(120, 400, roles));
  return drawPattern(part, routePart(part, bearingTooling(12)), OPTIONS).scene.marks;
}
const said = (marks: readonly Mark[]) => marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));

describe('corners that blow out, on the pattern', () => {
  it('are told by the edges to cut first where the long edges are routed too', () => {
    const words = said(patternOf({}));
    expect(words.filter((text) => text.includes('CUT FIRST'))).toHaveLength(2);
    expect(words.filter((text) => text.includes('block'))).toEqual([]);
  });

  it('have a block drawn in the waste behind them where nothing is cut afterwards', () => {
    const marks = patternOf({ left: 'sawn', right: 'sawn' });
    const blocks = marks.filter((mark) => mark.kind === 'path' && mark.role === 'fixing' && mark.closed);
    const beside = blocks.map((mark) => {
      const xs = mark.kind === 'path' ? mark.edges.map(({ from }) => from.x) : [];
      return xs.every((x) => x > 120) ? 'right' : xs.every((x) => x < 0) ? 'left' : 'in the wood';
    });
    expect(beside.toSorted()).toEqual(['left', 'right']);
    expect(said(marks).filter((text) => text.includes('backing block'))).toHaveLength(2);
  });
});
