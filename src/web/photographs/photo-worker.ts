import '../engine/no-eval.ts';
import { projectTwice, stretchAt } from '../../geometry/index.ts';
import {
  boardPicturePlan,
  photographedBox,
  picturePyramid,
  resamplePicture,
  TILE,
} from '../../wood/index.ts';
import type { BoardPicture, FromPhotoWorker, PhotoAsk, PhotoFile, ToPhotoWorker } from './photo-protocol.ts';

interface Scope {
  postMessage(message: FromPhotoWorker, transfer: Transferable[]): void;
  addEventListener(kind: 'message', hear: (event: MessageEvent<ToPhotoWorker>) => void): void;
}
const scope = self as unknown as Scope;

/** The photograph decoded last: in full it takes four bytes a pixel, so there is one of them. */
let decoded: { readonly key: string; readonly bitmap: Promise<ImageBitmap> } | undefined;
/** One ask after the other: two photographs at once would take twice the room. */
let last: Promise<void> = Promise.resolve();

scope.addEventListener('message', ({ data }) => {
  last = last.then(async () => {
    try {
      const answer = await answerTo(data);
      scope.postMessage({ id: data.id, answer }, bitmapsIn(answer));
    } catch (cause) {
      scope.postMessage({ id: data.id, fault: cause instanceof Error ? cause.message : String(cause) }, []);
    }
  });
});

async function answerTo(ask: PhotoAsk) {
  const bitmap = await bitmapOf(ask.photo);
  switch (ask.kind) {
    case 'measure':
      return { width: bitmap.width, height: bitmap.height };
    case 'tile':
      return tileOf(bitmap, ask);
    case 'lay':
      return layOut(bitmap, ask);
    default:
      return ask satisfies never;
  }
}

function bitmapOf({ key, blob }: PhotoFile): Promise<ImageBitmap> {
  if (decoded?.key === key) return decoded.bitmap;
  void decoded?.bitmap.then((before) => before.close()).catch(() => undefined);
  const bitmap = createImageBitmap(blob);
  decoded = { key, bitmap };
  return bitmap;
}

function tileOf(bitmap: ImageBitmap, { level, column, row }: Extract<PhotoAsk, { kind: 'tile' }>) {
  const scale = 2 ** level;
  const [x, y] = [column * TILE * scale, row * TILE * scale];
  const width = Math.min(TILE * scale, bitmap.width - x);
  const height = Math.min(TILE * scale, bitmap.height - y);
  return createImageBitmap(bitmap, x, y, width, height, {
    resizeWidth: Math.max(1, Math.ceil(width / scale)),
    resizeHeight: Math.max(1, Math.ceil(height / scale)),
    resizeQuality: 'medium',
  });
}

/** Only what of the photograph the board is on is read, no finer than it is shown. */
async function layOut(
  bitmap: ImageBitmap,
  { laid, size, most }: Extract<PhotoAsk, { kind: 'lay' }>,
): Promise<BoardPicture | undefined> {
  const plan = boardPicturePlan(laid, size, most);
  const box = photographedBox(plan, bitmap);
  if (box === undefined) return undefined;
  const stretch = stretchAt({ x: plan.width / 2, y: plan.height / 2 }, plan.toPhotograph)?.least ?? 1;
  const scale = 2 ** Math.max(0, Math.floor(Math.log2(stretch)));
  const width = Math.max(1, Math.round(box.width / scale));
  const height = Math.max(1, Math.round(box.height / scale));
  const part = await createImageBitmap(bitmap, box.x, box.y, box.width, box.height, {
    resizeWidth: width,
    resizeHeight: height,
    resizeQuality: 'medium',
  });
  const canvas = new OffscreenCanvas(width, height);
  const context = canvas.getContext('2d', { willReadFrequently: true });
  if (context === null) throw new Error('no canvas');
  context.drawImage(part, 0, 0);
  part.close();
  const { data } = context.getImageData(0, 0, width, height);
  const [sx, sy] = [width / box.width, height / box.height];
  const toPart = projectTwice(plan.toPhotograph, [sx, 0, -sx * box.x, 0, sy, -sy * box.y, 0, 0, 1]);
  const source = picturePyramid({ width, height, data }, 4);
  const levels = picturePyramid(resamplePicture(source, toPart, plan.width, plan.height), 8);
  const bitmaps = levels.map((level) =>
    createImageBitmap(new ImageData(new Uint8ClampedArray(level.data), level.width, level.height)),
  );
  return { plan, levels: await Promise.all(bitmaps) };
}

function bitmapsIn(answer: Awaited<ReturnType<typeof answerTo>>): Transferable[] {
  if (answer === undefined) return [];
  if (answer instanceof ImageBitmap) return [answer];
  return 'levels' in answer ? [...answer.levels] : [];
}
