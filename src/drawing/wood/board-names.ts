import {
  boundsOfRegions,
  locate,
  type Region,
  type Similarity,
  transformRegion,
  type Vec,
  vec,
} from '../../geometry/index.ts';
import type { Laid } from '../../wood/index.ts';
import { type Drawing, letter, pathMark, textMark } from '../layout/drawing.ts';
import { boxOfText, cornersOf, type OrientedBox } from '../layout/oriented-box.ts';
import { narrowHead, stroke } from '../layout/strokes.ts';
import { drawLeader } from '../pattern/leader.ts';

const LETTERS = 2.5;
const SMALL = 1.8;

/** What it is and whose, inside the part along its length; an arrow points to its head end. */
export function drawName(
  drawing: Drawing,
  laid: Laid,
  by: Similarity,
  nameOf: (piece: string) => string,
): void {
  const { toLay, lying, region } = laid;
  const own = transformRegion(region, by);
  const { minX, minY, maxX, maxY } = boundsOfRegions([own]);
  const head = { x: Math.cos(lying.turned), y: Math.sin(lying.turned) };
  const leaves = toLay.pieces.map((piece, i) =>
    toLay.pieces.length > 1 ? `${nameOf(piece)} (leaf ${i + 1})` : nameOf(piece),
  );
  const names = toLay.pieces.map(nameOf).join(', ');
  const face = lying.mirrored ? ', face down' : '';
  const texts = [
    `${toLay.part} ${leaves.join(', ')}${face}`,
    `${toLay.part} ${names}${face}`,
    `${names}${face}`,
  ];
  nameIn(
    drawing,
    own,
    toLay.grain === undefined ? names.split(', ') : texts,
    maxX - minX >= maxY - minY ? 0 : Math.PI / 2,
  );
  if (toLay.grain !== undefined) drawHeadArrow(drawing, own, head);
}

/** Clear of the name, near the middle or to either side of it. */
function drawHeadArrow(drawing: Drawing, region: Region, head: Vec): void {
  const { minX, minY, maxX, maxY } = boundsOfRegions([region]);
  const middle = vec((minX + maxX) / 2, (minY + maxY) / 2);
  const long = Math.max(maxX - minX, maxY - minY);
  const half = Math.min(7, long / 10);
  for (const along of [0, long / 4, -long / 4, long / 3, -long / 3, long / 2.4, -long / 2.4]) {
    const at = vec(middle.x + head.x * along, middle.y + head.y * along);
    const box: OrientedBox = {
      centre: at,
      angle: Math.atan2(head.y, head.x),
      halfWidth: half,
      halfHeight: 0.8,
    };
    if (locate([region], at) !== 'inside' || !drawing.occupancy.isFree(box)) continue;
    const [tip, tail] = [1, -1].map((end) => vec(at.x + end * head.x * half, at.y + end * head.y * half)) as [
      Vec,
      Vec,
    ];
    drawing.draw([pathMark('grain', [stroke(tail, tip)]), narrowHead('grain', tip, head, 2)]);
    return;
  }
}

/** Letters the fullest of the texts that stands wholly inside; where none does, the last of them beside it with a leader. */
export function nameIn(drawing: Drawing, region: Region, texts: readonly string[], angle: number): void {
  const { minX, minY, maxX, maxY } = boundsOfRegions([region]);
  const middle = vec((minX + maxX) / 2, (minY + maxY) / 2);
  const long = Math.max(maxX - minX, maxY - minY);
  const isLettered = letter(drawing, within(region, texts, middle, angle, long));
  if (!isLettered) drawLeader(drawing, middle, texts.at(-1)!, { role: 'thin', end: 'none' });
}

function* within(region: Region, texts: readonly string[], at: Vec, angle: number, long: number) {
  for (const text of texts) {
    for (const height of [LETTERS, SMALL]) {
      for (const share of [0, 0.12, -0.12, 0.25, -0.25, 0.35, -0.35]) {
        for (const off of [-0.5, 0.1, -1.1, 0.8, -1.8, 1.6, -2.6]) {
          const [x, y] = [share * long, off * height];
          const place = vec(
            at.x + x * Math.cos(angle) - y * Math.sin(angle),
            at.y + x * Math.sin(angle) + y * Math.cos(angle),
          );
          const mark = textMark(text, place, { height, angle, align: 'middle', role: 'dimension' });
          if (cornersOf(boxOfText(mark)).every((corner) => locate([region], corner) === 'inside')) yield mark;
        }
      }
    }
  }
}
