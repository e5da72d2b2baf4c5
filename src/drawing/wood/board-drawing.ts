import {
  type Box,
  boundsOfRegions,
  type Region,
  type Similarity,
  STAY,
  transformPoint,
  transformRegion,
  type Vec,
  vec,
} from '../../geometry/index.ts';
import { formatAngle, type LengthStyle } from '../../measure/index.ts';
import type { BoardAccount, DefectKind } from '../../wood/index.ts';
import type { Mark, Scene } from '../api.ts';
import { createDrawing, type Drawing, letter, pathMark, textMark } from '../layout/drawing.ts';
import { writeLength } from '../layout/figures.ts';
import { narrowHead, polygon, strokes } from '../layout/strokes.ts';
import { hatch } from '../pattern/residue.ts';
import { boundsOfMarks } from '../scene/bounds-of-marks.ts';
import { drawName, nameIn } from './board-names.ts';
import { boardSizes } from './board-sizes.ts';

/** The board is drawn as large as this length on paper, mm, lets it be. */
const USUAL_ROOM = 270;
/** Offcuts drawn with their sizes: the most useful ones. */
const MOST_OFFCUTS = 4;
const LETTERS = 2.5;
const SMALL = 1.8;

/** Scales of ISO 5455, largest first. */
const SCALES = [
  [1, '1:1'],
  [0.5, '1:2'],
  [0.2, '1:5'],
  [0.1, '1:10'],
  [0.05, '1:20'],
  [0.02, '1:50'],
] as const;

export interface BoardDrawingOptions {
  readonly lengths: LengthStyle;
  /** Length that the board may take on paper, mm. */
  readonly room?: number;
  /** Defects that parts may lie over: drawn, not hatched. */
  readonly allowed?: readonly DefectKind[];
  /** How a piece is named on the wood; its identity where nothing is said. */
  readonly nameOf?: (piece: string) => string;
}

export interface BoardDrawing {
  readonly scene: Scene;
  /** As lettered: `1:10`. */
  readonly scale: string;
  /** mm on paper per mm of board; the board's near left corner lies at the origin. */
  readonly factor: number;
}

/**
 * A board to scale with all that is laid on it, its upper face up and its marked end to the left: parts by their true outline with the
 * saw line round them, the arrow of each pointing to its head end, pieces by name and by leaf where several come from one place;
 * defects hatched and named, offcuts worth keeping with their sizes, and the grain.
 */
export function boardDrawing(account: BoardAccount, options: BoardDrawingOptions): BoardDrawing {
  const { board, laid, offcuts } = account;
  const { room = USUAL_ROOM, allowed = [], lengths, nameOf = (piece) => piece } = options;
  const [scale, name] = SCALES.find(([each]) => each * board.length <= room) ?? SCALES.at(-1)!;
  const by: Similarity = { ...STAY, scale };
  const drawing = createDrawing(room * 1.5);
  const corner = vec(board.length * scale, board.width * scale);
  drawing.draw([pathMark('part', polygon([vec(0, 0), vec(corner.x, 0), corner, vec(0, corner.y)]), true)]);
  drawing.draw(boardSizes(board, scale, lengths));
  drawing.draw(grainMarks(board.grain, corner));
  for (const { blank } of laid) drawing.drawUnder(outlineOf('saw-line', transformRegion(blank, by)));
  for (const { region } of laid) drawing.draw(outlineOf('visible', transformRegion(region, by)));
  for (const { kind, region } of board.defects) {
    drawDefect(drawing, kind, transformRegion(region, by), allowed.includes(kind));
  }
  for (const each of laid) drawName(drawing, each, by, nameOf);
  for (const { rectangle } of offcuts.slice(0, MOST_OFFCUTS)) {
    if (rectangle !== undefined) drawOffcut(drawing, rectangle, by, lengths);
  }
  const kind = board.kind === 'sheet' ? 'Sheet' : 'Board';
  const title = `${kind} ${board.name}, ${writeLength(board.thickness, lengths)} thick, upper face, scale ${name}`;
  drawing.draw([
    textMark(title, vec(0, corner.y + 14), { height: LETTERS, weight: 'semibold', role: 'dimension' }),
  ]);
  const marks = drawing.marks();
  return { scene: { marks, box: boundsOfMarks(marks) }, scale: name, factor: scale };
}

function outlineOf(
  role: 'saw-line' | 'visible' | 'hidden' | 'thin',
  { outer, holes }: Region,
): readonly Mark[] {
  return [outer, ...holes].map(({ edges }) => pathMark(role, edges, true));
}

/** Knots are hatched both ways, splits and all else one way, sapwood the other; what parts may lie over has a dashed line and no hatching. */
function drawDefect(drawing: Drawing, kind: DefectKind, region: Region, isAllowed: boolean): void {
  drawing.draw(outlineOf(isAllowed ? 'hidden' : 'thin', region));
  const rising = Math.PI / 4;
  const angles = isAllowed
    ? []
    : kind === 'knot'
      ? [rising, -rising]
      : [kind === 'sapwood' ? -rising : rising];
  for (const angle of angles) drawing.drawUnder([pathMark('hatch', hatch([region], angle))]);
  const { minX, minY, maxX, maxY } = boundsOfRegions([region]);
  const middle = vec((minX + maxX) / 2, (minY + maxY) / 2);
  const words = kind === 'other' ? 'defect' : kind;
  const beside = [
    [vec(maxX + 1, middle.y - SMALL / 2), 'left'],
    [vec(minX - 1, middle.y - SMALL / 2), 'right'],
    [vec(middle.x, maxY + 1), 'middle'],
    [vec(middle.x, minY - 1 - SMALL), 'middle'],
  ] as const;
  letter(
    drawing,
    beside.map(([at, align]) => textMark(words, at, { height: SMALL, align, role: 'thin' })),
  );
}

function drawOffcut(
  drawing: Drawing,
  { minX, minY, maxX, maxY }: Box,
  by: Similarity,
  lengths: LengthStyle,
): void {
  const corners = [vec(minX, minY), vec(maxX, minY), vec(maxX, maxY), vec(minX, maxY)].map((p) =>
    transformPoint(p, by),
  );
  drawing.draw([pathMark('phantom', polygon(corners), true)]);
  const size = `${writeLength(maxX - minX, lengths)} × ${writeLength(maxY - minY, lengths)}`;
  const own = { outer: { edges: polygon(corners) }, holes: [] };
  const angle = maxX - minX >= maxY - minY ? 0 : Math.PI / 2;
  nameIn(drawing, own, [`offcut ${size}`, size], angle);
}

/** Over the board: two arrows along the grain. */
function grainMarks(grain: number, corner: Vec): readonly Mark[] {
  const middle = vec(corner.x / 2, corner.y + 8);
  const head = { x: Math.cos(grain), y: Math.sin(grain) };
  const at = (ahead: number): Vec => vec(middle.x + head.x * ahead, middle.y + head.y * ahead);
  const words =
    grain === 0 ? 'grain' : `grain, ${formatAngle(grain, { unit: 'deg', decimals: 1 })} off the edge`;
  return [
    pathMark('grain', strokes([at(-14), at(14)])),
    narrowHead('grain', at(14), head),
    narrowHead('grain', at(-14), { x: -head.x, y: -head.y }),
    textMark(words, vec(middle.x + 17, middle.y - LETTERS / 2), { height: LETTERS, role: 'grain' }),
  ];
}
