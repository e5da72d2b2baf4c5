import { edgeNames } from '../checks/index.ts';
import type { Finding } from '../core/index.ts';
import type { Computed } from '../design/index.ts';
import { quantityWords } from './quantity-words.ts';
import { textTable } from './text-table.ts';

/** A design's findings as a table, or one line saying that there are none. */
export function findingsTable({ findings, lengths, parts }: Computed, width: number): string {
  if (findings.length === 0) return 'No findings.';
  return textTable<Finding>(
    [
      { head: 'severity', cell: ({ severity }) => severity },
      { head: 'part', cell: ({ part }) => part ?? '' },
      { head: 'where', cell: (finding) => placeWords(finding, parts) },
      {
        head: 'measured',
        cell: ({ measured }) => (measured ? quantityWords(measured, lengths) : ''),
        align: 'right',
      },
      { head: 'limit', cell: ({ limit }) => (limit ? quantityWords(limit, lengths) : ''), align: 'right' },
      {
        head: 'finding',
        cell: ({ message, cure, set }) =>
          [message, cure, set && `${set.words} would do.`].filter((each) => each !== undefined).join(' '),
        wrapped: true,
      },
    ],
    findings,
    width,
  );
}

/** How many of each severity: `1 stop, 2 cautions, 3 notes`. */
export function countFindings(findings: readonly Finding[]): string {
  const counts = (['stop', 'caution', 'note'] as const).flatMap((severity) => {
    const count = findings.filter((finding) => finding.severity === severity).length;
    return count === 0 ? [] : [`${count} ${severity}${count === 1 ? '' : 's'}`];
  });
  return counts.length === 0 ? 'no findings' : counts.join(', ');
}

/** Characters for the names of edges, so that the finding itself keeps its room. */
const PLACE_WIDTH = 22;

function placeWords({ edges, part: of }: Finding, parts: Computed['parts']): string {
  const openings = parts.find(({ part }) => part.name === of)?.part.openings ?? [];
  const names = edgeNames(edges, { openings });
  const apart = names.some((name) => name.includes(',')) ? '; ' : ', ';
  const [first, ...others] = names;
  if (first === undefined) return '';
  const shown = [first];
  for (const name of others) {
    if ([...shown, name].join(apart).length > PLACE_WIDTH) break;
    shown.push(name);
  }
  return shown.length < names.length ? `${shown.join(apart)} …` : shown.join(apart);
}
