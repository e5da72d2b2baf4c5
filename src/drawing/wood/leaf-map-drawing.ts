import {
  type Box,
  clipEdgesToRegions,
  moveBy,
  norm,
  polygonOutline,
  type Region,
  type Vec,
  vec,
} from '../../geometry/index.ts';
import type { LeafMap, LeafPiece, LeafPlace, MatchedFrame } from '../../wood/index.ts';
import type { Mark, Scene } from '../api.ts';
import { pathMark, textMark } from '../layout/drawing.ts';
import { DRAWN, narrowHead, strokes } from '../layout/strokes.ts';
import { widthOfText } from '../lettering/metrics.ts';
import { boundsOfMarks } from '../scene/bounds-of-marks.ts';
import { transformMark } from '../scene/transform-scene.ts';
import { boxOf, outlinesOf, type SeenPiece } from './seen-pieces.ts';

/** Room for one frame on paper, mm, and what its words take below it. */
const ROOM = { width: 84, height: 78 } as const;
const LETTERS = 1.8;
const LINE = 3.1;
/** Between the pieces of a set, moved together, and between the words below them, mm. */
const JOINT = 2.5;
const BETWEEN = 4;
const GAP = 8;
const PER_ROW = 2;

/**
 * The leaf map: the pieces of every frame as they lean, moved together, seen by one who faces them, with the leaf of each piece, the face of it that shows, an arrow to the
 * board's marked end, and a triangle across the set that closes only while every leaf is where it belongs.
 */
export function leafMapDrawing(map: LeafMap): Scene {
  const faces = map.frames.flatMap((frame) =>
    (['face', 'back'] as const).flatMap((face) => {
      const places = map.places.filter((each) => frame.pieces.includes(each.piece) && each.face === face);
      return places.length === 0 ? [] : [{ frame, face, places }];
    }),
  );
  const scale = Math.min(...faces.map(({ frame, face }) => scaleOf(outlinesOf(map, frame, face))));
  const cells = faces.map((each) => cellOf(map, each, scale));
  let top = 0;
  const marks: Mark[] = [];
  for (let at = 0; at < cells.length; at += PER_ROW) {
    const row = cells.slice(at, at + PER_ROW);
    row.forEach((cell, column) => {
      const shift = moveBy(column * (ROOM.width + GAP), top - cell.high);
      marks.push(...cell.marks.map((mark) => transformMark(mark, shift)));
    });
    top -= Math.max(...row.map(({ high, low }) => high - low)) + GAP;
  }
  return { marks, box: boundsOfMarks(marks) };
}

interface FaceOfFrame {
  readonly frame: MatchedFrame;
  readonly face: LeafPlace['face'];
  readonly places: readonly LeafPlace[];
}

function scaleOf(seen: readonly SeenPiece[]): number {
  const boxes = seen.map(({ outline }) => boxOf(outline));
  const width = boxes.reduce((sum, { minX, maxX }) => sum + maxX - minX, 0);
  const height = Math.max(...boxes.map(({ minY, maxY }) => maxY - minY));
  return Math.min((ROOM.width - JOINT) / width, ROOM.height / height, 1);
}

/** The pieces of a set moved together, each as it leans, their lower ends level, on paper. */
function movedTogether(seen: readonly SeenPiece[], scale: number): readonly SeenPiece[] {
  const inOrder = seen.toSorted((a, b) => middleX(a) - middleX(b));
  const width = inOrder.reduce(
    (sum, { outline }) => {
      const { minX, maxX } = boxOf(outline);
      return sum + (maxX - minX) * scale;
    },
    JOINT * (inOrder.length - 1),
  );
  let left = (ROOM.width - width) / 2;
  return inOrder.map((each) => {
    const { minX, maxX, minY } = boxOf(each.outline);
    const start = left;
    left += (maxX - minX) * scale + JOINT;
    const outline = each.outline.map(({ x, y }) => vec((x - minX) * scale + start, (y - minY) * scale));
    return { ...each, outline };
  });
}

const middleX = ({ outline }: SeenPiece): number => {
  const { minX, maxX } = boxOf(outline);
  return (minX + maxX) / 2;
};

function cellOf(
  map: LeafMap,
  { frame, face, places }: FaceOfFrame,
  scale: number,
): { readonly marks: readonly Mark[]; readonly high: number; readonly low: number } {
  const seen = outlinesOf(map, frame, face);
  const drawn = movedTogether(seen, scale);
  const all = boxOf(drawn.flatMap(({ outline }) => outline));
  const regions = drawn.map(
    ({ outline }): Region => ({ outer: polygonOutline(withArea(outline), DRAWN), holes: [] }),
  );
  const title = `${capital(frame.name)}, ${face === 'face' ? 'face sides' : 'backs'}`;
  const marks: readonly Mark[] = [
    ...regions.map(({ outer }) => pathMark('part', outer.edges, true)),
    ...acrossTheSet(regions, all),
    ...drawn.flatMap(({ piece, outline, head }) => {
      const place = places.find((each) => each.piece === piece.id);
      return place === undefined ? [] : arrowToEnd(outline, head, place, piece);
    }),
    ...wordsBelow(map, drawn, places),
    textMark(title, vec(ROOM.width / 2, all.maxY + 4), {
      height: 2.5,
      align: 'middle',
      weight: 'semibold',
      role: 'dimension',
    }),
  ];
  const box = boundsOfMarks(marks);
  return { marks, high: box.maxY, low: box.minY };
}

/** Anticlockwise, as outlines run: a back is seen the other way about. */
function withArea(points: readonly Vec[]): readonly Vec[] {
  const doubled = points.reduce((sum, p, at) => {
    const next = points[(at + 1) % points.length]!;
    return sum + p.x * next.y - next.x * p.y;
  }, 0);
  return doubled >= 0 ? points : points.toReversed();
}

/** The triangle, drawn where there is wood: its point up, its sides across every piece of the set. */
function acrossTheSet(regions: readonly Region[], { minX, maxX, minY, maxY }: Box): readonly Mark[] {
  const [middle, high, wide] = [(minX + maxX) / 2, maxY - minY, maxX - minX];
  const [a, b, c] = [
    vec(middle, minY + 0.82 * high),
    vec(middle - 0.4 * wide, minY + 0.26 * high),
    vec(middle + 0.4 * wide, minY + 0.26 * high),
  ];
  return clipEdgesToRegions(strokes([a, b, c, a]), regions).map((edges) => pathMark('reference', edges));
}

/** An arrow in the piece, to where the board's marked end lies. */
function arrowToEnd(
  outline: readonly Vec[],
  head: Vec,
  { markedEnd, face }: LeafPlace,
  { level }: LeafPiece,
): readonly Mark[] {
  const isHead = level ? markedEnd === (face === 'face' ? 'left' : 'right') : markedEnd === 'up';
  const size = norm(head.x, head.y);
  const way = vec(((isHead ? 1 : -1) * head.x) / size, ((isHead ? 1 : -1) * head.y) / size);
  const { minX, maxX, minY, maxY } = boxOf(outline);
  const long = norm(maxX - minX, maxY - minY);
  const half = 0.11 * long;
  // Beside the triangle, towards the head.
  const off = (0.26 * long) / size;
  const middle = vec((minX + maxX) / 2 + off * head.x, (minY + maxY) / 2 + off * head.y);
  const tip = vec(middle.x + way.x * half, middle.y + way.y * half);
  return [
    pathMark('grain', strokes([vec(middle.x - way.x * half, middle.y - way.y * half), tip])),
    narrowHead('grain', tip, way, 2.4),
  ];
}

function wordsBelow(
  { frames }: LeafMap,
  drawn: readonly SeenPiece[],
  places: readonly LeafPlace[],
): readonly Mark[] {
  const inner = frames.flatMap((frame) => frame.inner);
  const columns = drawn.flatMap((each) => {
    const place = places.find(({ piece }) => piece === each.piece.id);
    if (place === undefined) return [];
    const { words } = inner.find(({ piece }) => piece === each.piece.id)!;
    const lines = [
      each.piece.name,
      place.board === undefined ? 'no leaf left' : `board ${place.board}, leaf ${place.leaf}`,
      `its ${place.shows} face shows`,
      `marked end ${place.markedEnd}`,
      `${place.inner} edge ${words}`,
    ];
    const width = Math.max(...lines.map((text) => widthOfText(text, LETTERS, 'regular')));
    return [{ x: middleX(each), lines, width }];
  });
  const [first, second] = columns;
  const wanted = first === undefined || second === undefined ? 0 : (first.width + second.width) / 2 + BETWEEN;
  const apart =
    first === undefined || second === undefined ? 0 : Math.max(0, wanted - (second.x - first.x)) / 2;
  return columns.flatMap(({ x, lines }, at) =>
    lines.map((text, line) =>
      textMark(text, vec(x + (at === 0 ? -apart : apart), -5 - line * LINE), {
        height: line === 0 ? 2.5 : LETTERS,
        align: 'middle',
        weight: line === 0 ? 'semibold' : 'regular',
        role: 'dimension',
      }),
    ),
  );
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
