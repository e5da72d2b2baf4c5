import type { Edge, Region } from '../../geometry/index.ts';
import { formatAngle, formatLength, MM_PER } from '../../measure/index.ts';
import type { Routing } from '../../routing/index.ts';
import type { SketchedPart } from '../../sketch/index.ts';
import type { PatternOptions } from '../api.ts';
import { setFractions } from '../lettering/fractions.ts';

/** What one pattern is drawn from: part and routing as they lie on the paper, mirrored already where asked for. */
export interface PatternSource {
  readonly part: SketchedPart;
  readonly routing: Routing;
  readonly options: PatternOptions;
  /** The outline that the pattern is about: of the part, the template, or what the cutter leaves. */
  readonly main: readonly Region[];
}

/** What each view shows. */
export function showsPart({ options }: PatternSource): boolean {
  return options.view === 'part' || options.view === 'all';
}

export function showsTemplate({ options }: PatternSource): boolean {
  return options.view === 'template' || options.view === 'all';
}

export function showsDifferences({ options }: PatternSource): boolean {
  return options.view === 'as-routed' || options.view === 'all';
}

/** Every edge of regions, outer loops and holes alike. */
export function edgesOf(regions: readonly Region[]): readonly Edge[] {
  return regions.flatMap(({ outer, holes }) => [outer, ...holes].flatMap(({ edges }) => edges));
}

/** A length as it is lettered: no unit and no idle zeros in mm, an inch mark in inches, fractions set as fractions. */
export function writeLength(mm: number, style: PatternOptions['lengths']): string {
  const text = formatLength(mm, style, false);
  switch (style.unit) {
    case 'mm':
      return text.replace(/(\.\d*?)0+$/, '$1').replace(/\.$/, '');
    case 'in':
      return setFractions(`${text}"`);
    case 'ft-in':
      return setFractions(text);
    default:
      return style satisfies never;
  }
}

/** A length to be read off a rule: to 0.1 mm; in inches to the fraction that all the rest is written to. */
export function writeFine(mm: number, style: PatternOptions['lengths']): string {
  return writeLength(mm, style.unit === 'mm' ? { unit: 'mm', decimals: Math.max(1, style.decimals) } : style);
}

/** A fraction of an inch farther than this, mm, from a tool's size is not its size. */
const SAME_SIZE = 0.005;

/**
 * The size of a tool or an offset made by tools, never rounded to the fraction of the design: to 0.01 mm; in inches an
 * exact fraction where there is one to 1/64, else to 0.001 with the millimetres, `0.236″ (6 mm)`.
 */
export function writeExact(mm: number, style: PatternOptions['lengths']): string {
  const inMm = writeLength(mm, { unit: 'mm', decimals: 2 });
  if (style.unit === 'mm') return inMm;
  const step = MM_PER.in / 64;
  if (Math.abs(Math.round(mm / step) * step - mm) <= SAME_SIZE) {
    return writeLength(mm, { ...style, denominator: 64 });
  }
  return setFractions(`${(mm / MM_PER.in).toFixed(3)}" (${inMm} mm)`);
}

export function writeAngle(rad: number): string {
  return formatAngle(rad, { unit: 'deg', decimals: 2 }).replace(/\.?0+°$/, '°');
}
