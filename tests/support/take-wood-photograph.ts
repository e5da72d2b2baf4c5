import type { Page } from 'playwright-core';
import { woodPhotograph } from './wood-photograph.ts';

export interface TakenPhotograph {
  readonly name: string;
  readonly mimeType: 'image/jpeg';
  readonly buffer: Buffer;
  /** Pixels. */
  readonly corners: readonly (readonly [number, number])[];
}

/** A JPEG of an invented board, made in the browser: `width` × two thirds of it. Where its corners lie in it is known. */
export async function takeWoodPhotograph(
  page: Page,
  ask: {
    readonly width: number;
    readonly board: { readonly length: number; readonly width: number };
    readonly seed: number;
  },
): Promise<TakenPhotograph> {
  const { width, board, seed } = ask;
  const height = Math.round((width * 2) / 3);
  const half = (0.44 * width * board.width) / board.length;
  const at = (x: number, y: number): readonly [number, number] => [x * width, 0.5 * height + y];
  const corners = [
    at(0.05, 1.15 * half),
    at(0.95, 1.0 * half),
    at(0.925, -0.9 * half),
    at(0.08, -0.95 * half),
  ];
  const given = { width, height, board, corners, seed };
  const text = await page.evaluate(
    async ({ make, given: own }) => {
      const draw = new Function(`return (${make})`)() as typeof woodPhotograph;
      const canvas = new OffscreenCanvas(own.width, own.height);
      const image = new ImageData(draw(own), own.width, own.height);
      canvas.getContext('2d')!.putImageData(image, 0, 0);
      const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.9 });
      const bytes = new Uint8Array(await blob.arrayBuffer());
      let binary = '';
      for (let at = 0; at < bytes.length; at += 32768)
        binary += String.fromCharCode(...bytes.subarray(at, at + 32768));
      return btoa(binary);
    },
    { make: woodPhotograph.toString(), given },
  );
  return { name: `board-${seed}.jpg`, mimeType: 'image/jpeg', buffer: Buffer.from(text, 'base64'), corners };
}
