import {
  basePicture,
  layPicture,
  partPictures,
  type ScreenScene,
  sceneForScreen,
} from '../../../drawing/index.ts';
import type { Answering } from './answering.ts';

export type Side = 'front' | 'left' | 'plan';

export interface PictureOptions {
  /** A side of the base, or one part alone. */
  readonly of: { readonly side: Side } | { readonly part: string };
  /** mm on the screen per mm of wood; how large it is to be. */
  readonly scale: number;
}

/** A view with its dimensions, laid out as on paper at a scale. */
export interface ScreenPicture {
  readonly name: string;
  readonly scale: number;
  readonly scene: ScreenScene;
}

/** What one sees of the base or of one part, dimensioned. */
export function picture({ computed }: Answering, { of, scale }: PictureOptions): ScreenPicture | undefined {
  const built = computed?.base;
  if (computed === undefined || built === undefined) return undefined;
  const drawn = 'side' in of ? basePicture(built.base, of.side) : pictureOfPart(built, of.part);
  if (drawn === undefined) return undefined;
  const { marks, box } = layPicture(drawn, scale, computed.lengths);
  return { name: drawn.name, scale, scene: sceneForScreen({ marks, box }) };
}

type Built = NonNullable<NonNullable<Answering['computed']>['base']>;

function pictureOfPart({ made, base }: Built, name: string) {
  const part = made.find((each) => each.name === name);
  const placed = base.parts.find(({ id }) => id === part?.members[0]?.part);
  return part && placed && partPictures(part, placed)[0];
}
