/** The part of opentype.js that the lettering uses; its own package has no types. */
declare module 'opentype.js/dist/opentype.mjs' {
  export interface PathCommand {
    readonly type: 'M' | 'L' | 'Q' | 'C' | 'Z';
    readonly x: number;
    readonly y: number;
    readonly x1: number;
    readonly y1: number;
    readonly x2: number;
    readonly y2: number;
  }
  export interface Glyph {
    readonly index: number;
    readonly advanceWidth: number;
    getPath(x: number, y: number, size: number): { readonly commands: readonly PathCommand[] };
  }
  export interface Font {
    readonly unitsPerEm: number;
    readonly tables: {
      readonly os2: { readonly sCapHeight: number };
      readonly cmap: { readonly glyphIndexMap: Readonly<Record<string, number>> };
    };
    readonly glyphs: { get(index: number): Glyph };
    readonly substitution: {
      getSingle(feature: string, script: string): readonly { readonly sub: number; readonly by: number }[];
    };
    charToGlyph(character: string): Glyph;
    getKerningValue(left: Glyph, right: Glyph): number;
  }
  export function parse(bytes: ArrayBuffer): Font;
}
