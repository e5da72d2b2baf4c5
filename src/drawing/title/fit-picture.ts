import type { LengthStyle } from '../../measure/index.ts';
import { type LaidPicture, type LineDrawing, layPicture, type Picture } from './picture.ts';

/** Room on the paper, or on a screen, mm. */
export interface Room {
  readonly width: number;
  readonly height: number;
}

export interface FittedPicture extends LaidPicture {
  /** mm on paper per mm of wood. */
  readonly scale: number;
}

export interface FitOptions {
  readonly room: Room;
  readonly lengths: LengthStyle;
  /** Height of figures, mm; 2.5 when absent. */
  readonly height?: number;
  /** Kept where the picture still fills the room well with it: a drawing that changes under one's hand stays as large as it is. */
  readonly near?: number;
}

/** A scale is kept while the picture takes at least this share of the room. */
const WELL_FILLED = 0.7;
/** Tries at the largest scale; figures past the ends of short lines move with it. */
const TRIES = 4;
const FINENESS = 1.02;

type Fitted = LineDrawing & Partial<Pick<Picture, 'view'>>;

/** A picture with its dimensions, as large as the room allows: what is lettered stays the same size, so only the wood is scaled. */
export function fitPicture(picture: Fitted, { room, lengths, height, near }: FitOptions): FittedPicture {
  const lay = (scale: number): FittedPicture => ({ ...layPicture(picture, scale, lengths, height), scale });
  const share = ({ box }: LaidPicture): number =>
    Math.max((box.maxX - box.minX) / room.width, (box.maxY - box.minY) / room.height);
  let best = lay(near ?? firstGuess(picture, room, lengths));
  if (near !== undefined && share(best) <= 1 && share(best) >= WELL_FILLED) return best;
  for (let tried = 0; tried < TRIES && (share(best) > 1 || share(best) < 1 / FINENESS ** 2); tried++) {
    best = lay(nextGuess(best, room));
  }
  return best;
}

/** Usual room for dimensions on all sides together, mm. */
const BESIDE = 55;

/** From the size of the wood alone. */
function firstGuess({ dimensions: _, ...wood }: Fitted, room: Room, lengths: LengthStyle): number {
  const laid = layPicture({ ...wood, dimensions: [] }, 1, lengths);
  const { minX, minY, maxX, maxY } = laid.core;
  const beside = { ...laid.core, maxX: maxX + BESIDE, maxY: maxY + BESIDE };
  return nextGuess({ ...laid, core: { minX, minY, maxX, maxY }, box: beside, scale: 1 }, room);
}

/** The scale at which it would just fit if all beside the wood stayed as wide as it is. */
function nextGuess({ box, core, scale }: FittedPicture, room: Room): number {
  const wide = core.maxX - core.minX;
  const tall = core.maxY - core.minY;
  const beside = { x: box.maxX - box.minX - wide, y: box.maxY - box.minY - tall };
  const least = 0.25;
  const x = Math.max(room.width - beside.x, least * room.width) / Math.max(wide, 1e-6);
  const y = Math.max(room.height - beside.y, least * room.height) / Math.max(tall, 1e-6);
  return (scale * Math.min(x, y)) / FINENESS;
}
