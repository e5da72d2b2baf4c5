import { signal } from '@preact/signals';
import { type FourCorners, type TruePhotograph, truePhotograph, type Vec } from '../../../geometry/index.ts';

/** A photograph under the drawing: its picture, and how it was made true. */
export interface Photograph {
  /** As it came. */
  readonly file: Blob;
  readonly url: string;
  readonly width: number;
  readonly height: number;
  /** Corners of the sheet marked so far, pixels. */
  readonly corners: readonly Vec[];
  readonly made: TruePhotograph | undefined;
  readonly why: string | undefined;
}

export const photograph = signal<Photograph | undefined>(undefined);

/** Lays a picture under the drawing. Rejects with an `EncodingError` where it is none. */
export async function layPhotograph(file: Blob): Promise<void> {
  const url = URL.createObjectURL(file);
  const image = new Image();
  image.src = url;
  try {
    await image.decode();
  } catch (cause) {
    URL.revokeObjectURL(url);
    throw cause;
  }
  const { naturalWidth: width, naturalHeight: height } = image;
  photograph.value = { file, url, width, height, corners: [], made: undefined, why: undefined };
}

interface Sheet {
  readonly name: string;
  readonly way: 'upright' | 'long';
  /** mm */
  readonly width: number;
  readonly height: number;
}

/** Sheets that most have at hand, either way: ISO 216 and ANSI/ASME Y14.1. */
export const SHEETS: readonly Sheet[] = [
  { name: 'A4', width: 210, height: 297 },
  { name: 'A3', width: 297, height: 420 },
  { name: 'Letter', width: 215.9, height: 279.4 },
].flatMap(({ name, width, height }) => [
  { name, way: 'upright', width, height },
  { name, way: 'long', width: height, height: width },
]);

export const sheet = signal<Sheet>(SHEETS[0]!);

/** One more corner of the sheet is marked in the picture; after the fourth it begins anew. */
export function markCorner(at: Vec): void {
  const now = photograph.value;
  if (now === undefined) return;
  markCorners(now.corners.length === 4 ? [at] : [...now.corners, at]);
}

/** Corners of the sheet, clockwise from the upper left one; four make the picture true. */
export function markCorners(corners: readonly Vec[]): void {
  const now = photograph.value;
  if (now === undefined) return;
  if (corners.length < 4) {
    photograph.value = { ...now, corners, made: undefined, why: undefined };
    return;
  }
  const found = truePhotograph(corners as unknown as FourCorners, sheet.value);
  photograph.value = found.ok
    ? { ...now, corners, made: found.value, why: undefined }
    : { ...now, corners: [], made: undefined, why: found.problems[0]?.message };
}

export const forgetCorners = (): void => markCorners([]);
