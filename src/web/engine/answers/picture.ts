import { partPictureOf, viewOf } from '../../../design/index.ts';
import {
  type FittedPicture,
  fitPicture,
  type ScreenScene,
  type ScreenText,
  sceneForScreen,
  valueOfDimension,
} from '../../../drawing/index.ts';
import { type Answering, madeOf } from './answering.ts';

export interface PictureOptions {
  readonly of: { readonly side: 'front' | 'left' | 'plan' } | { readonly part: string };
  /** mm on the screen that the drawing may take. */
  readonly room: { readonly width: number; readonly height: number };
  /** Height of the capitals of figures, mm on the screen. */
  readonly letters: number;
}

/** A dimension as it stands in the drawing, to be clicked and typed. */
export interface ScreenFigure {
  readonly name: string;
  /** As the form calls it where it says so. */
  readonly label: string;
  readonly kind: 'length' | 'angle' | 'radius';
  /** mm or rad. */
  readonly value: number;
  readonly text: ScreenText;
}

/** A view with its dimensions, laid out as on paper. */
export interface ScreenPicture {
  readonly name: string;
  /** mm on the screen per mm of wood. */
  readonly scale: number;
  /** Everything but the figures. Lines of a side of the base name parts as they stand in it (`ListedPart.placed`). */
  readonly scene: ScreenScene;
  readonly figures: readonly ScreenFigure[];
  /** Dimensions that found no room beside the drawing. */
  readonly left: readonly { readonly name: string; readonly figure: string }[];
}

/** How each picture was last shown, so that it stays as large as it is while figures change. */
const lastScales = new Map<string, Pick<FittedPicture, 'scale' | 'shown'>>();

/** What one sees of the base or of one part, dimensioned. */
export function picture(
  { looked, computed, isAhead = false }: Answering,
  options: PictureOptions,
): ScreenPicture | undefined {
  const { of, room, letters } = options;
  const drawn =
    'side' in of ? looked && viewOf(looked, of.side) : computed && partPictureOf(computed, of.part);
  const lengths = (looked ?? computed)?.lengths;
  if (drawn === undefined || lengths === undefined) return undefined;
  const key = JSON.stringify([options, lengths]);
  const { fitted, shown } = madeOf(drawn, key, () => {
    const near = lastScales.get(key);
    const made = fitPicture(drawn, {
      room,
      lengths,
      height: letters,
      ...(near === undefined ? {} : { near }),
    });
    const part = 'part' in of ? of.part : undefined;
    const called = part === undefined ? undefined : labelsIn(computed, part);
    return { fitted: made, shown: { name: drawn.name ?? '', ...onScreen(made, part, called) } };
  });
  if (!isAhead) lastScales.set(key, fitted);
  return shown;
}

/** What a form calls the dimensions of a part. */
function labelsIn(computed: Answering['computed'], part: string): ReadonlyMap<string, string> {
  const { base, sketch } = computed!;
  const member = base?.made.find(({ name }) => name === part)?.members[0]?.part;
  const drawn = base?.base.parts.find(({ id }) => id === member)?.drawn.name ?? part;
  const found = sketch.parts.find(({ name }) => name === drawn);
  return new Map(found?.dimensions.map(({ name, label }) => [name, label]));
}

/** `part`: what all wood in the picture is of, where one part alone is drawn. */
function onScreen(
  { marks, box, laid, left, scale }: FittedPicture,
  part: string | undefined,
  called: ReadonlyMap<string, string> | undefined,
): Omit<ScreenPicture, 'name'> {
  const figures = laid.flatMap(({ dimension, marks: own }): readonly ScreenFigure[] => {
    const value = valueOfDimension(dimension);
    const text = own.find((mark) => mark.kind === 'text');
    if (value === undefined || text === undefined || dimension.kind === 'note') return [];
    const { name } = dimension;
    const [shown] = sceneForScreen({ marks: [text], box }).texts;
    return [
      {
        name,
        label: called?.get(name) ?? name.replaceAll('_', ' '),
        kind: dimension.kind,
        value,
        text: shown!,
      },
    ];
  });
  const clickable = new Set(
    laid.flatMap(({ dimension, marks: own }) =>
      valueOfDimension(dimension) === undefined ? [] : own.filter(({ kind }) => kind === 'text'),
    ),
  );
  const others = marks
    .filter((mark) => !clickable.has(mark))
    .map((mark) => {
      if (mark.kind !== 'path' || part === undefined) return mark;
      const isWood = mark.role === 'visible' || mark.role === 'hidden' || mark.role === 'part';
      return isWood ? { ...mark, part } : mark;
    });
  return {
    scale,
    scene: sceneForScreen({ marks: others, box }),
    figures,
    left: left.map(({ dimension, figure }) => ({ name: dimension.name, figure })),
  };
}
