import type { CheckLength, JointNote, LineRole, ToolFact } from '../api.ts';
import { writeFine, writeLength } from '../layout/figures.ts';
import { LINE_STYLES } from '../styles.ts';
import { finest, precisionWords } from './check-precision.ts';
import type { DimensionRow } from './dimensions.ts';
import { figureRows, gapRow, lineRow, type NoteBlock, noteBlock, tableRow, wordRows } from './note-block.ts';
import { type PatternSource, showsDifferences, showsPart, showsTemplate } from './source.ts';
import { handOf, mirroredWords, quantityOf, VIEW_WORDS } from './words.ts';

/** What the notes say beside what follows from the part itself: checks, sizes that found no room, tools. */
interface Noted {
  readonly checks: readonly CheckLength[];
  readonly left: readonly DimensionRow[];
  readonly facts: readonly ToolFact[];
  readonly jointNotes: readonly JointNote[];
}

/** The blocks of notes beside a pattern, in the order in which they are placed. */
export function noteBlocks(
  source: PatternSource,
  { checks, left, facts, jointNotes }: Noted,
): readonly NoteBlock[] {
  return [
    titleNotes(source),
    ...(checks.length === 0 ? [] : [checkNotes(source, checks)]),
    ...(facts.length === 0 ? [] : [toolNotes(facts)]),
    ...(jointNotes.length === 0
      ? []
      : [
          noteBlock(
            'Joints by number',
            jointNotes.flatMap(({ mark, label }) => figureRows(label, mark)),
          ),
        ]),
    keyNotes(source),
    ...(left.length === 0
      ? []
      : [
          noteBlock(
            showsPart(source) ? 'Further sizes' : 'Sizes of the part',
            left.flatMap(({ label, figure }) => figureRows(label, figure)),
          ),
        ]),
  ];
}

function titleNotes(source: PatternSource): NoteBlock {
  const { part, options } = source;
  const { here, other } = quantityOf(source);
  const hand = handOf(source);
  const mirrored = mirroredWords(source);
  const unit = options.lengths.unit === 'mm' ? 'millimetres' : 'inches';
  return noteBlock(part.label, [
    ...(mirrored === undefined ? [] : wordRows(mirrored, 'against')),
    ...wordRows(options.design),
    ...wordRows(revisionWords(options)),
    ...(hand === undefined ? [] : wordRows(`${hand}, seen from its show face`)),
    ...figureRows('make from this pattern', String(here)),
    ...(other === 0 ? [] : figureRows('and of the other hand, turned over', String(other))),
    ...figureRows('thickness', writeLength(part.thickness, options.lengths)),
    ...wordRows(`Shows ${VIEW_WORDS[options.view]}. Full size, 1:1; lengths in ${unit}.`),
  ]);
}

function revisionWords({ revision, date }: PatternSource['options']): string {
  const parts = [revision === '' ? '' : `revision ${revision}`, date];
  return parts.filter((words) => words !== '').join(' \u00b7 ');
}

/** Room to write by hand wants taller rows. */
const WRITE_ROW = 7;
const CHECK_COLUMNS = [8, 18, 16, 16] as const;

function checkNotes(source: PatternSource, checks: readonly CheckLength[]): NoteBlock {
  const { lengths } = source.options;
  return noteBlock('Check lengths', [
    tableRow(
      ['', `should be${precisionWords(lengths)}`, 'after taping', 'after gluing'],
      CHECK_COLUMNS,
      4.2,
      true,
    ),
    ...checks.map((check) =>
      tableRow([check.name, writeFine(check.nominal, finest(lengths)), '', ''], CHECK_COLUMNS, WRITE_ROW),
    ),
    gapRow(2.5),
    ...wordRows(
      'From cross to cross. Mating faces are cut to the figures or to the part, never to paper alone.',
    ),
  ]);
}

function toolNotes(facts: readonly ToolFact[]): NoteBlock {
  return noteBlock(
    'Routing',
    facts.flatMap(({ words, figure, grave }) =>
      figure === undefined ? wordRows(words, grave === true ? 'against' : 'mark') : figureRows(words, figure),
    ),
  );
}

/** Only the lines that this pattern has. */
function keyNotes(source: PatternSource): NoteBlock {
  const { routing, part } = source;
  const has: readonly (readonly [LineRole, boolean])[] = [
    ['part', showsPart(source)],
    ['template', showsTemplate(source) && routing.template.length > 0],
    [
      'as-routed',
      showsDifferences(source) && (source.options.view === 'as-routed' || routing.differences.length > 0),
    ],
    ['residue', showsDifferences(source) && routing.differences.length > 0],
    ['saw-line', showsPart(source) && routing.blank.length > 0],
    ['joint', part.joints.length > 0],
    ['centre', true],
  ];
  const roles = has.filter(([, shown]) => shown).map(([role]) => role);
  const tape = routing.fixings.some(({ kind }) => kind === 'tape');
  const screws = routing.fixings.some(({ kind }) => kind !== 'tape');
  const hasAgainst = routing.feed.some(({ grain }) => grain === 'against');
  return noteBlock('Lines', [
    ...roles.flatMap((role) => lineRow(role, LINE_STYLES[role].words)),
    ...wordRows('Short ticks stand in the waste: keep the other side.'),
    ...(hasAgainst && showsPart(source)
      ? wordRows('Leaning teeth: cut against the grain; turn the work over.')
      : []),
    ...(showsTemplate(source) && tape ? wordRows('Grey patches: tape the template down.') : []),
    ...(showsTemplate(source) && screws ? wordRows('Ring with a slot: screw.') : []),
    ...wordRows('Figures at the ticks: distance from the centre line.'),
  ]);
}
