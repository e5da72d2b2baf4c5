import { grainAt } from '../../sketch/index.ts';
import type { Drawing } from '../layout/drawing.ts';
import { type OrientedBox, type TurnedShape, turnedShape } from '../layout/oriented-box.ts';
import { readable } from '../layout/strokes.ts';
import { edgeAngle, type Spot } from './inside-grid.ts';
import {
  coreOfLabel,
  type LabelBlock,
  type LabelWords,
  labelArrangements,
  labelWords,
} from './label-block.ts';
import type { PatternSource } from './source.ts';

/** White kept round a label, mm. */
const AIR = 1;

/** May a label stand in a box (its shape: the same box without its place)? */
export type IsAllowed = (box: OrientedBox, shape: TurnedShape) => boolean;

/** How labels of one drawing are placed. */
export interface Placing {
  readonly drawing: Drawing;
  readonly source: PatternSource;
  /** Direction of lettering along the centre line, rad. */
  readonly main: number;
  readonly coreAt: (height: number, angle: number, grain: number) => TurnedShape;
  readonly blocksAt: (height: number, angle: number, grain: number) => Arrangements;
}

/** The arrangements at one height and angle, with the room of each. */
interface Arrangements {
  readonly blocks: readonly { readonly block: LabelBlock; readonly room: TurnedShape }[];
  /** What all of them cover about their middle. */
  readonly core: TurnedShape;
}

/** `direction`: of the centre line, rad. */
export function placingOf(drawing: Drawing, source: PatternSource, direction: number): Placing {
  const words = new Map<number, LabelWords>();
  const wordsAt = (height: number): LabelWords => {
    const made = words.get(height) ?? labelWords(source, height);
    words.set(height, made);
    return made;
  };
  return {
    drawing,
    source,
    main: readable(direction),
    coreAt: kept((height, angle) => roomOf(coreOfLabel(wordsAt(height)), angle)),
    blocksAt: kept((height, angle, grain) => {
      const blocks = labelArrangements(wordsAt(height), {
        // What does not stand in the base has no way up.
        up: source.part.onlySawn === true ? undefined : source.part.up - angle,
        grain: grain - angle,
      });
      const width = blocks.reduce((least, block) => Math.min(least, block.width), Infinity);
      const high = blocks.reduce((least, block) => Math.min(least, block.height), Infinity);
      return {
        blocks: blocks.map((block) => ({ block, room: roomOf(block, angle) })),
        core: roomOf({ width, height: high }, angle),
      };
    }),
  };
}

function roomOf({ width, height }: Pick<LabelBlock, 'width' | 'height'>, angle: number): TurnedShape {
  return turnedShape(width / 2 + AIR, height / 2 + AIR, angle);
}

/**
 * Puts the first arrangement that fits at a spot, along the centre line or else along the nearest edge, and returns its room; says so
 * where one would fit, were it not across a border of what `isAllowed` keeps it off.
 */
export function placeLabel(
  { drawing, source, main, coreAt, blocksAt }: Placing,
  spot: Spot,
  height: number,
  isAllowed: IsAllowed,
): OrientedBox | 'across a border' | undefined {
  const { occupancy } = drawing;
  const { at, clearance } = spot;
  let isRefused = false;
  for (let i = 0; i < 2; i++) {
    const angle = i === 0 ? main : readable(edgeAngle(spot));
    // Every arrangement covers the name, in its middle: where that finds no room, none does.
    if (!occupancy.isFreeAt(coreAt(height, angle, 0), at)) continue;
    const { blocks, core } = blocksAt(height, angle, grainAt(source.part, at));
    if (core.halfHeight - AIR > clearance || !occupancy.isFreeAt(core, at)) continue;
    for (const { block, room } of blocks) {
      if (block.height / 2 > clearance || !occupancy.isFreeAt(room, at)) continue;
      const box = { centre: at, halfWidth: room.halfWidth, halfHeight: room.halfHeight, angle };
      if (!isAllowed(box, room)) {
        isRefused = true;
        continue;
      }
      drawing.draw(block.draw(at, angle));
      occupancy.addBox(box);
      return box;
    }
  }
  return isRefused ? 'across a border' : undefined;
}

/** Equal heights, angles and grains come back over and over: made once each. */
function kept<T>(
  make: (height: number, angle: number, grain: number) => T,
): (height: number, angle: number, grain: number) => T {
  const made = new Map<number, Map<number, T>>();
  return (height, angle, grain) => {
    // One number for height and grain: heights are tenths of a millimetre, grain lies within a few turns.
    const key = height * 1000 + grain;
    let ofAngle = made.get(angle);
    if (ofAngle === undefined) {
      ofAngle = new Map();
      made.set(angle, ofAngle);
    }
    let found = ofAngle.get(key);
    if (found === undefined) {
      found = make(height, angle, grain);
      ofAngle.set(key, found);
    }
    return found;
  };
}
