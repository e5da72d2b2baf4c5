import { compute } from '../../src/design/index.ts';
import { type Bookmatch, type LeafPiece, piecesOfBase } from '../../src/wood/index.ts';
import { sampleDesign } from '../design/sample-design.ts';

/** Base forms, each with a part that it takes in mirror images. */
export const MATCHED: readonly (readonly [form: string, part: string])[] = [
  ['shallow-v-trestle', 'leg'],
  ['shallow-v-trestle', 'arm'],
  ['raked-table', 'leg'],
  ['arched-trestle', 'foot'],
  ['bench-base', 'panel'],
  ['stool-base', 'leg'],
];

/** The pieces of one part of a base form at its defaults. */
export function matchedPieces(form: string, part: string): readonly LeafPiece[] {
  const computed = compute(sampleDesign(form, [part]), { wanted: { patterns: [] } });
  if (!computed.ok) throw new Error(computed.problems.map(({ message }) => message).join('\n'));
  const { base } = computed.value;
  if (base === undefined) throw new Error(`${form} places no parts`);
  const pieces = piecesOfBase(base, [part]);
  if (pieces.length === 0) throw new Error(`no ${part}: ${base.made.map(({ name }) => name).join(', ')}`);
  return pieces;
}

export function matchOf(part: string, changes: Partial<Bookmatch> = {}): Bookmatch {
  return {
    name: 'set',
    arrangement: 'book',
    boards: [],
    parts: [{ part, faces: ['face'] }],
    centre: 'near',
    ...changes,
  };
}
