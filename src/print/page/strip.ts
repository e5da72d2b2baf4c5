import { widthOfText } from '../../drawing/index.ts';
import { type Box, vec } from '../../geometry/index.ts';
import type { PartFacts, PatternFacts, PrintMeta, Sheet, SheetPlan } from '../api.ts';
import { nameOfSheet } from '../seams.ts';
import { GRAPHITE, HAIR, PALE, type PageItem } from './ink.ts';
import { cornersOf, filled, polyline, rectangle, words, wordsWithin } from './items.ts';

const NAME_HEIGHT = 3.2;
const SMALL = 1.8;
/** Room of the small map, mm. */
const MAP = { width: 22, height: 8 } as const;

/** What the strip at the foot of a sheet has to say. */
export interface StripWords {
  readonly meta: PrintMeta;
  readonly facts: PatternFacts;
  readonly plan: SheetPlan;
  readonly sheet: Sheet;
  readonly pages: number;
  readonly calibration: SheetPlan['paper']['calibration'];
}

export function stripItems(
  box: Box,
  { meta, facts, plan, sheet, pages, calibration }: StripWords,
): PageItem[] {
  const top = box.minY + 5.6;
  const low = box.minY + 1.6;
  const mapBox = {
    minX: box.maxX - MAP.width,
    maxX: box.maxX,
    minY: low - 0.2,
    maxY: low - 0.2 + MAP.height,
  };
  const map = miniMap(mapBox, plan, sheet);
  const right = Math.min(...map.lefts) - 3;
  const name = nameOfSheet(sheet);
  const said = `page ${sheet.page} of ${pages}`;
  const taken = Math.max(widthOfText(name, NAME_HEIGHT, 'semibold'), widthOfText(said, SMALL, 'regular'));
  const left = right - taken - 4 - box.minX;
  return [
    polyline([vec(box.minX, box.maxY), vec(box.maxX, box.maxY)], HAIR, PALE),
    wordsWithin(partWords(facts), vec(box.minX, top), left, { height: NAME_HEIGHT, weight: 'semibold' }),
    wordsWithin(
      `print at 100\u00a0%, do not fit to page \u00b7 ${correctionWords(calibration)} \u00b7 ${meta.design} \u00b7 revision ${meta.revision} \u00b7 ${meta.date}`,
      vec(box.minX, low),
      left,
      { height: SMALL },
      1.4,
    ),
    words(name.replace(/^r/, 'R'), vec(right, top), {
      height: NAME_HEIGHT,
      weight: 'semibold',
      align: 'right',
    }),
    words(said, vec(right, low), { height: SMALL, align: 'right' }),
    ...map.items,
  ];
}

/** `Splayed leg · left hand · make 2 (and 2 right)`. */
export function partWords({ part, hand, quantity, other }: PartFacts): string {
  const also = other === undefined ? '' : ` (and ${other.quantity} ${other.hand.replace(/ hand$/, '')})`;
  return [part, hand, `make ${quantity}${also}`].filter((each) => each !== undefined).join(' \u00b7 ');
}

/** How the scale was corrected, in words. */
export function correctionWords({ long, short }: StripWords['calibration']): string {
  if (long === 1 && short === 1) return 'scale not corrected';
  return `scale corrected: long edge \u00d7\u00a0${long.toFixed(4)}, short edge \u00d7\u00a0${short.toFixed(4)}`;
}

/** All sheets as small boxes, this one solid, as large as the room allows. */
function miniMap(box: Box, plan: SheetPlan, here: Sheet): { items: PageItem[]; lefts: number[] } {
  const { width, height } = plan.page;
  const unit = Math.min(
    (box.maxX - box.minX) / (plan.places * width),
    (box.maxY - box.minY) / (plan.rows * height),
  );
  const cell = { x: unit * width, y: unit * height };
  const boxes = plan.sheets.map((sheet) => ({
    sheet,
    place: {
      minX: box.maxX - (plan.places - sheet.place + 1) * cell.x,
      maxX: box.maxX - (plan.places - sheet.place) * cell.x,
      minY: box.minY + (plan.rows - sheet.row) * cell.y,
      maxY: box.minY + (plan.rows - sheet.row + 1) * cell.y,
    },
  }));
  return {
    lefts: [box.maxX - plan.places * cell.x],
    items: boxes.flatMap(({ sheet, place }) => [
      ...(sheet === here ? [filled(cornersOf(place), GRAPHITE)] : []),
      rectangle(place, HAIR, GRAPHITE),
    ]),
  };
}
