import { formatLength, type LengthStyle } from '../../measure/index.ts';
import type { Layer, ResawStack } from '../../wood/index.ts';

/** A stretch of a stack, mm of wood from its top down, with what it is. */
export interface Band {
  readonly from: number;
  readonly to: number;
  readonly kind: Layer['kind'] | 'backing' | 'last';
  readonly words: string;
}

/** The rough board from its upper face down. */
export function boardBands({ layers, leaves, plan }: ResawStack): readonly Band[] {
  return layers.map(({ kind, from, to, leaf }): Band => {
    const own = leaves.find(({ number }) => number === leaf);
    const isSawn =
      own !== undefined &&
      ((from - own.sawn.from < 1e-9 && own.number > 1) ||
        (own.sawn.to - to < 1e-9 && own.number < plan.leaves));
    const words = {
      flattening: 'flattening, this face',
      kerf: 'kerf',
      planing: isSawn ? 'planing, sawn face' : 'planing, outer face',
      drying: 'drying out of true',
      leaf: `leaf ${leaf}`,
    }[kind];
    return { kind, from, to, words };
  });
}

/** From the face that shows down: last planing, leaf, backing, and a second leaf or none, last planing. */
export function pieceBands({ plan, thinnest }: ResawStack): readonly Band[] {
  const { backing, glued, lastPlaning } = plan;
  const bands: Band[] = [];
  let at = 0;
  const put = (kind: Band['kind'], thick: number, words: string): void => {
    if (thick > 0) bands.push({ kind, from: at, to: at + thick, words });
    at += Math.max(0, thick);
  };
  put('last', lastPlaning.show, 'last planing, show face');
  put('leaf', thinnest - lastPlaning.show - (glued === 1 && backing === 0 ? lastPlaning.back : 0), 'leaf');
  put('backing', backing - (glued === 1 ? lastPlaning.back : 0), 'backing');
  if (glued === 2) put('leaf', thinnest - lastPlaning.back, 'leaf on the back');
  put('last', lastPlaning.back, 'last planing, back');
  return bands;
}

/** A band's words and its figure. */
export function labelOf(
  { band, count }: { readonly band: Band; readonly count: number },
  lengths: LengthStyle,
): string {
  return `${band.words} ${formatLength(band.to - band.from, lengths)}${count > 1 ? ` (${count} ×)` : ''}`;
}

/** Bands that say the same are named once, by the first of them, with how many there are; every leaf by itself. */
export function namedOnce(
  bands: readonly Band[],
): readonly { readonly band: Band; readonly count: number }[] {
  const sameAs = (a: Band, b: Band): boolean =>
    a.words === b.words && Math.abs(a.to - a.from - (b.to - b.from)) < 1e-6;
  return bands
    .filter((band, at) => bands.findIndex((other) => sameAs(band, other)) === at)
    .map((band) => ({ band, count: bands.filter((other) => sameAs(band, other)).length }));
}
