import type { EndCut, MarkedLine, Reading } from './api.ts';
import type { SawWay } from './ways-to-saw.ts';
import {
  CORNER,
  type CutStyle,
  END,
  SIDE,
  sayAngle,
  sayBoard,
  sayLength,
  sayRise,
  TEXT,
  USUAL_STYLE,
} from './words.ts';

/** Cells of a table, a row an array; lines of a cell are broken by `\n`. */
export interface CutTable {
  readonly heads: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** All that is set at the saw for a cut, a column for each way of holding the work. */
export function tableOfWays(ways: readonly SawWay[], style: CutStyle = USUAL_STYLE): CutTable {
  const { rows } = TEXT;
  return {
    heads: ['', ...ways.map(headOf)],
    rows: [
      [rows.lies, ...ways.map(({ lay }) => TEXT.lie(lay))],
      [
        rows.end,
        ...ways.map(({ stopEnd, waste }) => {
          const end = stopEnd === 'far' ? END.near : END.far;
          return `${TEXT.endTo(end, waste)}, ${TEXT.stopAt(END[stopEnd])}`;
        }),
      ],
      [rows.swing, ...ways.map(({ mitre }) => cellOf(mitre, TEXT.swingCell, TEXT.square0, style))],
      [rows.tilt, ...ways.map(({ tilt }) => cellOf(tilt, TEXT.tiltCell, TEXT.upright, style))],
    ],
  };
}

function headOf({ kind, lay }: SawWay): string {
  const { wayHeads } = TEXT;
  if (kind !== 'direct') return wayHeads[kind];
  return lay.down === 'left' || lay.down === 'right' ? wayHeads.edge : wayHeads.flat;
}

function cellOf(
  reading: Reading,
  text: (angle: string, to: string, other: string, rise: string) => string,
  none: string,
  style: CutStyle,
): string {
  if (sayAngle(reading.fromSquare, style) === sayAngle(0, style)) return none;
  return text(
    sayAngle(reading.fromSquare, style),
    reading.to!,
    sayAngle(reading.complement, style),
    sayRise(reading, style),
  );
}

/** The lines of a cut to mark on the part, and the lengths of its corners from the reference. */
export function linesToMark(cut: EndCut, style: CutStyle = USUAL_STYLE): CutTable {
  const lengthOf = new Map(cut.arrises.all.map(({ name, length }) => [name, sayLength(length, style)]));
  const { onFace, onBack } = cut.arrises;
  const long = ({ long: which, by }: typeof onFace): string =>
    which === 'even' ? 'even' : `${CORNER[which]}, by ${sayLength(by, style)}`;
  return {
    heads: [
      'On the',
      'Line to the length',
      'Runs along',
      `Bevel, over ${sayBoard(style)}`,
      'Left corner',
      'Right corner',
      'Long point',
    ],
    rows: [
      [
        SIDE.face,
        ...lineCells(cut.onFaceLine, style),
        lengthOf.get('face-left')!,
        lengthOf.get('face-right')!,
        long(onFace),
      ],
      [
        SIDE.back,
        ...lineCells(cut.onFaceLine, style),
        lengthOf.get('back-left')!,
        lengthOf.get('back-right')!,
        long(onBack),
      ],
      ['edges', ...lineCells(cut.onEdgeLine, style), '–', '–', '–'],
    ],
  };
}

function lineCells(line: MarkedLine, style: CutStyle): readonly string[] {
  if (sayAngle(line.angle, style) === sayAngle(0, style)) return ['square', '–', '–'];
  const struck = style.length.unit === 'mm' ? line.over100 : line.over4in;
  return [sayAngle(line.set, style), sayLength(line.drop, style), sayLength(struck, style)];
}
