import type { Box } from '../../geometry/index.ts';
import type { LengthStyle } from '../../measure/index.ts';
import { figureOf } from '../dimension/figure-of.ts';
import { type LaidPicture, type LineDrawing, layPicture, type Picture } from './picture.ts';

/** Room on the paper, or on a screen, mm. */
export interface Room {
  readonly width: number;
  readonly height: number;
}

export interface FittedPicture extends LaidPicture {
  /** mm on paper per mm of wood. */
  readonly scale: number;
  /** How many of its dimensions there was room for, the first ones; the others are among those left. */
  readonly shown: number;
}

export interface FitOptions {
  readonly room: Room;
  readonly lengths: LengthStyle;
  /** Height of figures, mm; 2.5 when absent. */
  readonly height?: number;
  /** Kept where the picture still fills the room well with it: a drawing that changes under one's hand stays as large as it is. */
  readonly near?: Pick<FittedPicture, 'scale' | 'shown'>;
}

/** A scale is kept while the picture takes at least this share of the room. */
const WELL_FILLED = 0.7;
/** Tries at the largest scale; figures past the ends of short lines move with it. */
const TRIES = 4;
const FINENESS = 1.02;
/** The wood takes at least this share of the room one way, or else some dimensions are left out: so many at a time. */
const LEAST_WOOD = 0.5;
const LEFT_OUT = 0.25;

type Fitted = LineDrawing & Partial<Pick<Picture, 'view'>>;

/**
 * A picture with its dimensions, as large as the room allows: what is lettered stays the same size, so only the wood is scaled. Where all
 * that is said would leave the wood too small to be seen, the last dimensions are left out.
 */
export function fitPicture(picture: Fitted, options: FitOptions): FittedPicture {
  const { room, near } = options;
  if (near !== undefined) {
    const kept = layAt(picture, near, options);
    const share = shareOf(kept.box, room);
    if (share <= 1 && share >= WELL_FILLED) return kept;
  }
  const start = firstGuess(picture, options);
  for (let shown = picture.dimensions.length; ; shown -= Math.ceil(LEFT_OUT * shown)) {
    const best = largest(picture, { scale: start, shown }, options);
    const isSeen = shareOf(best.core, room) >= LEAST_WOOD && shareOf(best.box, room) <= 1;
    if (shown === 0 || isSeen) return best;
  }
}

function largest(picture: Fitted, start: Start, options: FitOptions): FittedPicture {
  const { room } = options;
  let best = layAt(picture, start, options);
  for (let tried = 0; tried < TRIES; tried++) {
    const share = shareOf(best.box, room);
    if (share <= 1 && share >= 1 / FINENESS ** 2) break;
    best = layAt(picture, { ...start, scale: nextGuess(best, room) }, options);
  }
  return best;
}

type Start = Pick<FittedPicture, 'scale' | 'shown'>;

function layAt(picture: Fitted, { scale, shown }: Start, { lengths, height }: FitOptions): FittedPicture {
  const { dimensions } = picture;
  const laid = layPicture({ ...picture, dimensions: dimensions.slice(0, shown) }, scale, lengths, height);
  const others = dimensions
    .slice(shown)
    .map((dimension) => ({ dimension, figure: figureOf(dimension, lengths) }));
  return { ...laid, left: [...laid.left, ...others], scale, shown };
}

/** How much of the room is taken, the way that takes more of it. */
function shareOf({ minX, minY, maxX, maxY }: Box, room: Room): number {
  return Math.max((maxX - minX) / room.width, (maxY - minY) / room.height);
}

/** Usual room for dimensions on all sides together, mm. */
const BESIDE = 55;

/** From the size of the wood alone. */
function firstGuess(picture: Fitted, { room, lengths }: FitOptions): number {
  const laid = layPicture({ ...picture, dimensions: [] }, 1, lengths);
  const { minX, minY, maxX, maxY } = laid.core;
  const beside = { ...laid.core, maxX: maxX + BESIDE, maxY: maxY + BESIDE };
  return nextGuess({ core: { minX, minY, maxX, maxY }, box: beside, scale: 1 }, room);
}

/** The scale at which it would just fit if all beside the wood stayed as wide as it is. */
function nextGuess({ box, core, scale }: Pick<FittedPicture, 'box' | 'core' | 'scale'>, room: Room): number {
  const wide = core.maxX - core.minX;
  const tall = core.maxY - core.minY;
  const beside = { x: box.maxX - box.minX - wide, y: box.maxY - box.minY - tall };
  const least = 0.25;
  const x = Math.max(room.width - beside.x, least * room.width) / Math.max(wide, 1e-6);
  const y = Math.max(room.height - beside.y, least * room.height) / Math.max(tall, 1e-6);
  return (scale * Math.min(x, y)) / FINENESS;
}
