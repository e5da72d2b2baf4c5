import type { Quantity } from '../../core/index.ts';
import { type Design, lengthStyleOf, type RenewalChange } from '../../design/index.ts';
import type { LengthStyle } from '../../measure/index.ts';
import { quantityWords } from '../quantity-words.ts';
import { textTable } from '../text-table.ts';

/** What a newer form changes, as a table: what, before, after. */
export function changesTable(changes: readonly RenewalChange[], design: Design, width: number): string {
  const lengths = lengthStyleOf(design);
  return textTable<Row>(
    [
      { head: 'where', cell: (row) => row.where },
      { head: 'what', cell: (row) => row.what, wrapped: true },
      { head: 'before', cell: (row) => row.before, align: 'right' },
      { head: 'after', cell: (row) => row.after, align: 'right' },
    ],
    changes.map((change) => rowOf(change, lengths)),
    width,
  );
}

interface Row {
  readonly where: string;
  readonly what: string;
  readonly before: string;
  readonly after: string;
}

function rowOf(change: RenewalChange, lengths: LengthStyle): Row {
  const words = (size: Quantity | undefined) => (size ? quantityWords(size, lengths) : '–');
  switch (change.kind) {
    case 'parameter-added':
      return {
        where: 'parameters',
        what: `${change.name}: ${change.label}`,
        before: '–',
        after: change.value,
      };
    case 'parameter-dropped':
      return {
        where: 'parameters',
        what: `${change.name}: ${change.label}`,
        before: change.value,
        after: '–',
      };
    case 'part-added':
      return { where: change.part, what: change.label, before: '–', after: 'new part' };
    case 'part-dropped':
      return { where: change.part, what: change.label, before: 'part', after: '–' };
    case 'size':
      return {
        where: change.part,
        what: change.label,
        before: words(change.before),
        after: words(change.after),
      };
    case 'outline':
      return {
        where: change.part,
        what: 'Outline',
        before: '',
        after: `${(change.area / 100).toFixed(1)} cm² differ`,
      };
    default:
      return change satisfies never;
  }
}
