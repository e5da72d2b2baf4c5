import { type Font, type Glyph, type PathCommand, parse } from 'opentype.js/dist/opentype.mjs';
import { polar, type Vec } from '../../geometry/index.ts';
import type { TextMark } from '../api.ts';
import { setCharacters } from './fractions.ts';
import { fontSizeOf } from './metrics.ts';

/** One weight of the lettering, ready to be drawn. */
interface Face {
  readonly font: Font;
  /** Glyph index of a digit to that of its raised or lowered form. */
  readonly numerators: ReadonlyMap<number, number>;
  readonly denominators: ReadonlyMap<number, number>;
}

/** The lettering as shapes, for drawings whose text must be outlines. */
export interface Lettering {
  readonly regular: Face;
  readonly semibold: Face;
}

/** A stretch of a letter's contour in the drawing's plane, mm. */
export type ContourStep =
  | { readonly kind: 'move' | 'line'; readonly to: Vec }
  | { readonly kind: 'quadratic'; readonly control: Vec; readonly to: Vec }
  | { readonly kind: 'cubic'; readonly control1: Vec; readonly control2: Vec; readonly to: Vec }
  | { readonly kind: 'close' };

/**
 * The lettering made from the bytes of two woff or ttf files. Bytes that are no font throw: the fonts come with the
 * tool, not from the maker.
 */
export function readLettering(fonts: {
  readonly regular: Uint8Array;
  readonly semibold: Uint8Array;
}): Lettering {
  return { regular: readFace(fonts.regular), semibold: readFace(fonts.semibold) };
}

function readFace(bytes: Uint8Array): Face {
  const font = parse(new Uint8Array(bytes).buffer);
  const substitutes = (feature: string): ReadonlyMap<number, number> =>
    new Map(font.substitution.getSingle(feature, 'DFLT').map(({ sub, by }) => [sub, by]));
  return { font, numerators: substitutes('numr'), denominators: substitutes('dnom') };
}

/** Width of a text in mm as it is set, kerned, at a height of capitals in mm. */
export function widthAsSet(lettering: Lettering, mark: Pick<TextMark, 'text' | 'height' | 'weight'>): number {
  const face = lettering[mark.weight];
  return (layGlyphs(face, mark.text).width * fontSizeOf(mark.height)) / face.font.unitsPerEm;
}

/** Contours of a text mark in the drawing's plane: closed, to be filled by the nonzero rule. */
export function contoursOfText(lettering: Lettering, mark: TextMark): readonly ContourStep[] {
  const face = lettering[mark.weight];
  const size = fontSizeOf(mark.height);
  const laid = layGlyphs(face, mark.text);
  const share = mark.align === 'left' ? 0 : mark.align === 'middle' ? 0.5 : 1;
  const scale = size / face.font.unitsPerEm;
  const start = -share * laid.width * scale;
  const along = polar(mark.angle);
  // The font's contours run y down.
  const place = (x: number, y: number): Vec => ({
    x: mark.at.x + along.x * (start + x) + along.y * y,
    y: mark.at.y + along.y * (start + x) - along.x * y,
  });
  return laid.glyphs.flatMap(({ glyph, x }) =>
    glyph.getPath(x * scale, 0, size).commands.map((command) => stepOf(command, place)),
  );
}

function stepOf(command: PathCommand, place: (x: number, y: number) => Vec): ContourStep {
  switch (command.type) {
    case 'M':
      return { kind: 'move', to: place(command.x, command.y) };
    case 'L':
      return { kind: 'line', to: place(command.x, command.y) };
    case 'Q':
      return {
        kind: 'quadratic',
        control: place(command.x1, command.y1),
        to: place(command.x, command.y),
      };
    case 'C':
      return {
        kind: 'cubic',
        control1: place(command.x1, command.y1),
        control2: place(command.x2, command.y2),
        to: place(command.x, command.y),
      };
    case 'Z':
      return { kind: 'close' };
    default: {
      const never: never = command.type;
      throw new Error(`unknown step of a letter: ${never}`);
    }
  }
}

/** Glyphs of a text with their places along the baseline, kerned, in units of the font. */
function layGlyphs(
  face: Face,
  text: string,
): { readonly glyphs: readonly { readonly glyph: Glyph; readonly x: number }[]; readonly width: number } {
  const { font, numerators, denominators } = face;
  const glyphs: { readonly glyph: Glyph; readonly x: number }[] = [];
  let x = 0;
  let before: Glyph | undefined;
  for (const { character, as } of setCharacters(text)) {
    const plain = font.charToGlyph(character);
    const swap =
      as === 'plain' ? undefined : (as === 'numerator' ? numerators : denominators).get(plain.index);
    const glyph = swap === undefined ? plain : font.glyphs.get(swap);
    if (before !== undefined && as === 'plain') x += font.getKerningValue(before, glyph);
    glyphs.push({ glyph, x });
    x += glyph.advanceWidth;
    before = as === 'plain' ? glyph : undefined;
  }
  return { glyphs, width: x };
}
