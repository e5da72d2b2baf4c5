import { sceneToSvg } from '../../drawing/index.ts';
import { type Vec, vec } from '../../geometry/index.ts';
import { ACCENT, HAIR, PALE } from '../page/ink.ts';
import { linesWithin, polyline, words } from '../page/items.ts';
import { codeBlock } from '../square-code/code-block.ts';
import type { BookBlock } from './api.ts';
import { setTable } from './set-table.ts';
import type { Strip } from './strip.ts';

const BOOK_TEXT = 2.5;
const LEADING = 4.6;
const HEADING = 3.5;
const CAPTION = 1.8;
const ROOM_LINE = 8;
/** Lines of reading are no longer than this, mm, however wide the paper. */
const MEASURE = 185;

/** A block as strips that pages are filled with, one after another; a strip is never broken. */
export function setBlock(block: BookBlock, width: number, mostHeight: number): readonly Strip[] {
  switch (block.kind) {
    case 'heading':
      return [headingStrip(block.text, width)];
    case 'text':
      return textStrips(block.text, Math.min(width, MEASURE), 0);
    case 'list':
      return block.items.flatMap((item, at) =>
        hang(textStrips(item, Math.min(width, MEASURE) - 7, 7), block.numbered ? `${at + 1}` : '–'),
      );
    case 'table':
      return setTable(block.columns, block.rows, width);
    case 'drawing':
      return [drawingStrip(block, width, mostHeight)];
    case 'link': {
      const { height, draw } = codeBlock(block.link, block.design, width);
      return [{ height, draw: (corner) => ({ items: draw(corner) }) }];
    }
    case 'plate':
    case 'contents':
      throw new RangeError(`${block.kind}: laid by the book itself`);
    case 'room':
      return Array.from({ length: block.lines }, () => ({
        height: ROOM_LINE,
        draw: ({ x, y }: Vec) => ({
          items: [polyline([vec(x, y - ROOM_LINE), vec(x + width, y - ROOM_LINE)], HAIR, PALE)],
        }),
      }));
    default:
      return block satisfies never;
  }
}

function headingStrip(text: string, width: number): Strip {
  const lines = linesWithin(text, width, HEADING, 'semibold');
  return {
    height: 7 + 5.5 * lines.length,
    staysWithNext: true,
    draw: ({ x, y }) => ({
      items: lines.map((line, at) =>
        words(line, vec(x, y - 8 - 5.5 * at), { height: HEADING, weight: 'semibold', ink: ACCENT }),
      ),
    }),
  };
}

/** Each line a strip of its own, so that a paragraph may run over the end of a page; first and last lines keep company. */
function textStrips(text: string, width: number, indent: number): readonly Strip[] {
  const lines = linesWithin(text, width, BOOK_TEXT, 'regular');
  return lines.map((line, at) => ({
    height: at === lines.length - 1 ? LEADING + 1.8 : LEADING,
    staysWithNext: lines.length > 1 && (at === 0 || at === lines.length - 2),
    draw: ({ x, y }) => ({ items: [words(line, vec(x + indent, y - 3.4), { height: BOOK_TEXT })] }),
  }));
}

/** A sign in the margin of the first strip. */
function hang(strips: readonly Strip[], sign: string): readonly Strip[] {
  return strips.map((strip, at) =>
    at > 0
      ? strip
      : {
          ...strip,
          draw: (corner) => ({
            items: [
              ...strip.draw(corner).items,
              words(sign, vec(corner.x, corner.y - 3.4), { height: BOOK_TEXT, weight: 'semibold' }),
            ],
          }),
        },
  );
}

function drawingStrip(
  { scene, caption }: Extract<BookBlock, { kind: 'drawing' }>,
  width: number,
  mostHeight: number,
): Strip {
  const own = { width: scene.box.maxX - scene.box.minX, height: scene.box.maxY - scene.box.minY };
  const below = caption === undefined ? 3 : 8;
  const scale = Math.min(1, width / own.width, (mostHeight - below) / own.height);
  const size = { width: own.width * scale, height: own.height * scale };
  const svg = sceneToSvg(scene, undefined, { margin: 0 });
  return {
    height: size.height + below,
    draw: ({ x, y }) => {
      const left = x + (width - size.width) / 2;
      return {
        items:
          caption === undefined
            ? []
            : [
                words(caption, vec(x + width / 2, y - size.height - 4.4), {
                  height: CAPTION,
                  align: 'middle',
                }),
              ],
        pictures: [{ svg, left, top: y, ...size }],
      };
    },
  };
}
