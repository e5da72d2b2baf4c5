import {
  boundsOfRegions,
  centroidOfRegions,
  type Edge,
  locate,
  offsetRegions,
  POSITION_TOLERANCE,
  type Region,
} from '../../geometry/index.ts';
import type { Room } from './api.ts';
import { convexRoom, insetConvex } from './convex-room.ts';

/** A contact as rows of pieces are laid out in it. */
export interface ContactRoom {
  readonly whole: Room;
  readonly centroid: number;
  /** Does it bulge everywhere? Then no level of it is in pieces. */
  readonly isConvex: boolean;
  /** What lies at least so far (mm) inside the contact; nothing where none is left. Remembered. */
  readonly inset: (by: number) => Room | undefined;
}

const known = new WeakMap<readonly Region[], ContactRoom>();

/** Contacts that bulge everywhere, as almost all do, are reckoned in closed form, all others by offsets. Remembered for the very same contact. */
export function contactRoom(contact: readonly Region[]): ContactRoom {
  const found = known.get(contact) ?? newRoom(contact);
  known.set(contact, found);
  return found;
}

function newRoom(contact: readonly Region[]): ContactRoom {
  const convex = convexRoom(contact);
  const insets = new Map<number, Room | undefined>();
  const make = (by: number): Room | undefined =>
    convex === undefined ? roomOf(offsetRegions(contact, -by)) : insetConvex(convex, by);
  return {
    whole: (convex === undefined ? undefined : insetConvex(convex, 0)) ?? roomOf(contact)!,
    centroid: centroidOfRegions(contact).y,
    isConvex: convex !== undefined,
    inset: (by) => {
      if (!insets.has(by)) insets.set(by, make(by));
      return insets.get(by);
    },
  };
}

function roomOf(regions: readonly Region[]): Room | undefined {
  if (regions.length === 0) return undefined;
  const edges = regions.flatMap(({ outer, holes }) => [outer, ...holes].flatMap((loop) => loop.edges));
  return {
    box: boundsOfRegions(regions),
    stretchesAt: (y) => {
      const places = edges.flatMap((edge) => crossingsAt(edge, y)).sort((a, b) => a - b);
      const stretches: { readonly from: number; to: number }[] = [];
      let from = places[0] ?? 0;
      for (const to of places) {
        if (to - from <= POSITION_TOLERANCE) continue;
        const isIn = locate(regions, { x: (from + to) / 2, y }) !== 'outside';
        const last = stretches.at(-1);
        if (isIn && last?.to === from) last.to = to;
        else if (isIn) stretches.push({ from, to });
        from = to;
      }
      return stretches;
    },
  };
}

/** Where an edge, or the circle of an arc, crosses a level. */
function crossingsAt(edge: Edge, y: number): readonly number[] {
  const { from, to } = edge;
  if (edge.kind === 'arc') {
    const { centre, radius } = edge;
    const squared = (radius - (y - centre.y)) * (radius + (y - centre.y));
    if (!(squared >= 0)) return [];
    return [centre.x - Math.sqrt(squared), centre.x + Math.sqrt(squared)];
  }
  if (y < Math.min(from.y, to.y) || y > Math.max(from.y, to.y)) return [];
  if (from.y === to.y) return [from.x, to.x];
  return [from.x + ((y - from.y) / (to.y - from.y)) * (to.x - from.x)];
}
