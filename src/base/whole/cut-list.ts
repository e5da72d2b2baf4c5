import type { MadePart } from '../made/api.ts';
import { extentAlong } from './extent-along.ts';

/** Wood beyond a finished part that its board needs, mm. */
export interface RoughAllowance {
  /** On each edge, and on each end. */
  readonly edge: number;
  readonly end: number;
  /** On the thickness as a whole, for planing. */
  readonly thickness: number;
}

/** A board to get out, all mm: length along the grain, even when that is the shorter way. */
export interface BoardSize {
  readonly thickness: number;
  readonly width: number;
  readonly length: number;
}

export interface CutListLine {
  /** Name of the made part. */
  readonly part: string;
  readonly label: string;
  readonly count: number;
  readonly hands: { readonly left: number; readonly right: number };
  readonly marks: readonly string[];
  readonly wood: string;
  readonly finished: BoardSize;
  readonly rough: BoardSize;
}

/** The boards of a base, thickest first and then longest, so that what comes from one board stands together. */
export function cutList(
  parts: readonly MadePart[],
  woodOf: (part: string) => string,
  allowance: RoughAllowance,
): readonly CutListLine[] {
  const lines = parts.map((made): CutListLine => {
    const { sketch, silhouette, members, name, label } = made;
    const { along, across } = extentAlong(silhouette, sketch.grain);
    const finished = {
      thickness: sketch.thickness,
      width: across.most - across.least,
      length: along.most - along.least,
    };
    return {
      part: name,
      label,
      count: members.length,
      hands: sketch.quantity,
      marks: members.map(({ mark }) => mark).filter((mark) => mark !== ''),
      wood: woodOf(sketch.name),
      finished,
      rough: {
        thickness: finished.thickness + allowance.thickness,
        width: finished.width + 2 * allowance.edge,
        length: finished.length + 2 * allowance.end,
      },
    };
  });
  return lines.toSorted(
    (a, b) =>
      b.finished.thickness - a.finished.thickness ||
      b.finished.length - a.finished.length ||
      a.part.localeCompare(b.part),
  );
}
