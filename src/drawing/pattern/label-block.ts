import { type Edge, polar, type Vec } from '../../geometry/index.ts';
import type { Mark, PathMark, TextMark } from '../api.ts';
import { textMark } from '../layout/drawing.ts';
import { inFrame } from '../layout/oriented-box.ts';
import { openHead, polygon, step, stroke } from '../layout/strokes.ts';
import { widthOfText } from '../lettering/metrics.ts';
import { LETTER_HEIGHTS } from '../styles.ts';
import type { PatternSource } from './source.ts';
import { factsOf, manyWords, mirroredWords, nameLine } from './words.ts';

/** A word or an arrow in a row of a label; its size is what it takes in the label's own frame, mm. */
interface Item {
  readonly width: number;
  readonly height: number;
  readonly draw: (middle: Vec, angle: number) => readonly Mark[];
}

/** A label as it is put inside the outline: its size, and its marks about a middle. */
export interface LabelBlock {
  readonly width: number;
  readonly height: number;
  readonly draw: (middle: Vec, angle: number) => readonly Mark[];
}

/** Height of a row of text and the white between items of a row, in heights of capitals. */
const ROW = 1.5;
const ITEM_GAP = 1.2;
/** All in one line is no longer than this, mm, save in the smallest lettering: it would run over several sheets. */
const LONGEST_LINE = 120;
/** White between rows, mm. */
const ROW_GAP = 0.4;

/** What a label says at one height of lettering, measured: the same at every angle. */
export interface LabelWords {
  readonly height: number;
  /** Height of all but the name. */
  readonly small: number;
  readonly name: Item;
  /** That the pattern is mirrored, where it is. */
  readonly warning: readonly Item[];
  /** From the most words to the fewest: all in one item, or in two. */
  readonly facts: readonly { readonly all: Item; readonly first: Item; readonly rest: Item }[];
}

export function labelWords(source: PatternSource, height: number): LabelWords {
  const small = smallerThan(height);
  const item = (words: readonly string[]): Item => textItem(words.join(' \u00b7 '), small, 'regular', 'mark');
  const mirrored = mirroredWords(source);
  return {
    height,
    small,
    name: textItem(nameLine(source), height, 'semibold', 'mark'),
    warning: mirrored === undefined ? [] : [textItem(mirrored, small, 'semibold', 'against')],
    facts: manyWords(source).map((many) => {
      const said = factsOf(source, many);
      return { all: item(said), first: item(said.slice(0, 2)), rest: item(said.slice(2)) };
    }),
  };
}

/**
 * The label at one height of lettering, in each of its arrangements from the fullest to the flattest, first with the most
 * words and then with fewer. All of them carry
 * the name with the hand, what the paper is and how many, the show face, which way is up, the grain, and the word that the
 * pattern is mirrored. `up` and `grain`: directions from that of the label's baselines (rad), as its arrows show them.
 */
export function labelArrangements(
  { height, small, name, warning, facts }: LabelWords,
  { up, grain }: { readonly up: number | undefined; readonly grain: number },
): readonly LabelBlock[] {
  const arrows = [
    ...(up === undefined ? [] : arrowItems('up', up, small)),
    ...arrowItems('grain', grain, small),
  ];
  const above = warning.map((item) => [item]);
  return facts.flatMap(({ all, first, rest }, at) => {
    const rows = [
      [...above, [name], [first], [rest], arrows],
      [...above, [name], [all], arrows],
      [...above, [name, ...arrows], [all]],
    ].map((each) => stack(each, small));
    const flat = stack([[name, ...warning, all, ...arrows]], small);
    const isShort = flat.width <= LONGEST_LINE || height === LETTER_HEIGHTS[0];
    return at === facts.length - 1 && isShort ? [...rows, flat] : rows;
  });
}

/** The next smaller height of the series; the smallest stays. */
function smallerThan(height: number): number {
  return LETTER_HEIGHTS.findLast((other) => other < height) ?? LETTER_HEIGHTS[0];
}

function stack(rows: readonly (readonly Item[])[], height: number): LabelBlock {
  const gap = ITEM_GAP * height;
  const sizes = rows.map((row) => ({
    row,
    width: row.reduce((sum, item) => sum + item.width, (row.length - 1) * gap),
    height: row.reduce((most, item) => Math.max(most, item.height), 0),
  }));
  const width = Math.max(...sizes.map((size) => size.width));
  const total = sizes.reduce((sum, size) => sum + size.height, (sizes.length - 1) * ROW_GAP);
  return {
    width,
    height: total,
    draw: (middle, angle) => {
      const marks: Mark[] = [];
      let top = total / 2;
      for (const size of sizes) {
        let x = -size.width / 2;
        const y = top - size.height / 2;
        for (const item of size.row) {
          marks.push(...item.draw(inFrame(middle, angle, { x: x + item.width / 2, y }), angle));
          x += item.width + gap;
        }
        top -= size.height + ROW_GAP;
      }
      return marks;
    },
  };
}

function textItem(text: string, height: number, weight: TextMark['weight'], role: TextMark['role']): Item {
  return {
    width: widthOfText(text, height, weight),
    height: height * ROW,
    draw: (middle, angle) => [
      textMark(text, inFrame(middle, angle, { x: 0, y: -0.42 * height }), {
        height,
        angle,
        align: 'middle',
        weight,
        role,
      }),
    ],
  };
}

/** An arrow and its word. The arrow lies at its true angle, `turn` from the label's baseline. */
function arrowItems(what: 'up' | 'grain', turn: number, height: number): readonly Item[] {
  const long = what === 'up' ? 3.6 * height : 7 * height;
  const broad = 1.1 * height;
  const c = Math.abs(Math.cos(turn));
  const s = Math.abs(Math.sin(turn));
  const arrow: Item = {
    width: long * c + broad * s,
    height: long * s + broad * c,
    draw: (middle, angle) => {
      const direction = polar(angle + turn);
      return what === 'up' ? upArrow(middle, direction, long) : grainArrow(middle, direction, long);
    },
  };
  return [arrow, textItem(what, height, 'regular', what === 'up' ? 'mark' : 'grain')];
}

/** A shaft with a broad filled head. */
function upArrow(middle: Vec, direction: Vec, long: number): readonly PathMark[] {
  const tip = step(middle, direction, long / 2);
  const neck = step(middle, direction, long * 0.1);
  const half = long * 0.15;
  const head = polygon([tip, step(neck, direction, 0, half), step(neck, direction, 0, -half)]);
  return [
    { kind: 'path', role: 'mark', edges: [stroke(step(middle, direction, -long / 2), neck)], closed: false },
    { kind: 'path', role: 'mark', edges: head, closed: true, fill: 'solid' },
  ];
}

/** Grain has a direction but no sense: a line with barbs at both ends. */
function grainArrow(middle: Vec, direction: Vec, long: number): readonly PathMark[] {
  const ahead = step(middle, direction, long / 2);
  const behind = step(middle, direction, -long / 2);
  const back = { x: -direction.x, y: -direction.y };
  const size = long * 0.16;
  const lines: readonly Edge[][] = [
    [stroke(behind, ahead)],
    [...openHead(ahead, direction, size)],
    [...openHead(behind, back, size)],
  ];
  return lines.map((edges) => ({ kind: 'path', role: 'grain', edges, closed: false }));
}

/** What all arrangements at one height have in common about their middle: room for the name alone, mm. */
export function coreOfLabel({ name }: LabelWords): Pick<LabelBlock, 'width' | 'height'> {
  return name;
}
