import { smallPicture } from '../../../design/index.ts';
import type { Thumbnail } from '../../store/database.ts';
import { thumbnailOf } from '../thumbnail-of.ts';
import { type Answering, madeOf } from './answering.ts';

/** A small picture for the list of designs: the base as one sees it in the room, or the outlines of its parts. */
export function thumbnail({ computed }: Answering, _: undefined): Thumbnail | undefined {
  if (computed === undefined) return undefined;
  const stops = computed.findings.filter(({ severity }) => severity === 'stop').length;
  return madeOf(computed.base ?? computed.parts, `thumbnail ${stops}`, () => ({
    ...thumbnailOf(smallPicture(computed, 'room')),
    stops,
  }));
}
