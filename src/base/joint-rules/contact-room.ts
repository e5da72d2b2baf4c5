import {
  type Box,
  boundsOfRegions,
  centroidOfRegions,
  clipEdgesToRegions,
  line,
  offsetRegions,
  type Region,
} from '../../geometry/index.ts';
import { convexRoom, insetConvex } from './convex-room.ts';

/** A stretch of a line along the joint, mm. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

export interface Room {
  readonly box: Box;
  /** The stretches of a level that lie in it. */
  readonly stretchesAt: (y: number) => readonly Stretch[];
}

/** A contact as rows of pieces are laid out in it. */
export interface ContactRoom {
  readonly whole: Room;
  readonly centroid: number;
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
    inset: (by) => {
      if (!insets.has(by)) insets.set(by, make(by));
      return insets.get(by);
    },
  };
}

function roomOf(regions: readonly Region[]): Room | undefined {
  if (regions.length === 0) return undefined;
  const box = boundsOfRegions(regions);
  return {
    box,
    stretchesAt: (y) => {
      const level = line({ x: box.minX - 1, y }, { x: box.maxX + 1, y }, { id: 'row', role: 'joint' });
      return clipEdgesToRegions([level], regions).map((chain) => ({
        from: chain[0]!.from.x,
        to: chain.at(-1)!.to.x,
      }));
    },
  };
}
