import { LINE_STYLES, type LineRole, TINT_STRENGTH } from '../../drawing/index.ts';
import { arc, circleOutline, vec } from '../../geometry/index.ts';
import { ACCENT, GRAPHITE, type Ink, type PageItem } from '../page/ink.ts';
import { filled, polyline } from '../page/items.ts';

/** Where a sign stands in the key, mm: its left end, its middle line, and its room. */
interface Room {
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

const TAG = { id: 'sign', role: 'left' } as const;
/** Half the height that a sign may take, mm. */
const HALF = 1.2;

/** What stands on the pattern as a sign, small; nothing for what is a line there. */
export function signOf(role: LineRole, room: Room): readonly PageItem[] | undefined {
  const { width, ink: inkName } = LINE_STYLES[role];
  const ink = inkName === 'accent' ? ACCENT : GRAPHITE;
  const { x, y } = room;
  const middle = x + room.width / 2;
  const stroke = (...points: readonly (readonly [number, number])[]): PageItem =>
    polyline(
      points.map(([px, py]) => vec(px, py)),
      width,
      ink,
    );
  const edge = polyline([vec(x, y + HALF / 2), vec(x + room.width, y + HALF / 2)], LINE_STYLES.part.width);
  const eachTick = (lean: number, deep: number): PageItem[] =>
    [2, 6, 10].map((at) => stroke([x + at + lean, y + HALF / 2], [x + at, y + HALF / 2 - deep]));
  switch (role) {
    case 'keep-side':
      return [edge, ...eachTick(0, 1)];
    case 'against':
      return [edge, ...eachTick(1.6, 1.6)];
    case 'grain':
      return [stroke([x, y], [x + room.width, y]), head(x, y, 1, ink), head(x + room.width, y, -1, ink)];
    case 'feed':
      return [stroke([x, y], [x + room.width, y]), head(x + room.width, y, -1, ink)];
    case 'station':
      return [
        polyline([vec(x, y), vec(x + room.width, y)], LINE_STYLES.centre.width),
        stroke([middle, y - HALF], [middle, y + HALF]),
      ];
    case 'check':
      return [
        stroke([middle - HALF, y], [middle + HALF, y]),
        stroke([middle, y - HALF], [middle, y + HALF]),
        diamond(middle, y, ink),
      ];
    case 'reference':
      return referenceSigns(middle, y, width);
    case 'fixing':
      return [
        patch(x, x + 6, y),
        ring(middle + 2, y, width),
        stroke([middle + 2 - 0.6, y - 0.8], [middle + 2 + 0.6, y + 0.8]),
      ];
    default:
      return undefined;
  }
}

function head(x: number, y: number, back: 1 | -1, ink: Ink): PageItem {
  return filled([vec(x, y), vec(x + back * 2, y + 0.5), vec(x + back * 2, y - 0.5)], ink);
}

function diamond(x: number, y: number, ink: Ink): PageItem {
  return filled([vec(x - 0.6, y), vec(x, y - 0.6), vec(x + 0.6, y), vec(x, y + 0.6)], ink);
}

function patch(from: number, to: number, y: number): PageItem {
  const corners = [vec(from, y - HALF), vec(to, y - HALF), vec(to, y + HALF), vec(from, y + HALF)];
  return filled(corners, { ...GRAPHITE, strength: 2 * TINT_STRENGTH });
}

function ring(x: number, y: number, width: number): PageItem {
  const { edges } = circleOutline(vec(x, y), 1, TAG, 1);
  return { kind: 'stroke', edges, closed: true, width, dash: [], ink: GRAPHITE };
}

/** The trade's marks: a loop whose tail runs to the edge on the face side, a V on the face edge. */
function referenceSigns(x: number, y: number, width: number): readonly PageItem[] {
  const foot = vec(x - 2.5, y - HALF);
  const top = vec(x - 2.5, y + 0.4);
  const centre = vec(x - 3.1, y + 0.4);
  const end = vec(x - 3.1, y - 0.2);
  const loop: PageItem = {
    kind: 'stroke',
    edges: [
      { kind: 'line', from: foot, to: top, tag: TAG },
      arc(top, end, centre, 1, TAG),
      { kind: 'line', from: end, to: vec(x - 1.6, y - 0.2), tag: TAG },
    ],
    closed: false,
    width: width * 0.7,
    dash: [],
    ink: GRAPHITE,
  };
  const v = polyline([vec(x + 1, y + HALF), vec(x + 2, y - HALF), vec(x + 3, y + HALF)], width * 0.7);
  return [loop, v];
}
