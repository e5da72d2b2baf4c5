import type { Box } from '../../geometry/index.ts';
import type { LineRole, PathMark, Scene, TextMark } from '../api.ts';
import { fontSizeOf } from '../lettering/metrics.ts';
import { pathData, placeFrom } from './path-data.ts';

/** Lines of a scene that a screen draws alike and names alike. */
export interface ScreenLine {
  readonly role: LineRole;
  /** SVG path data, y down, in the scene's own unit. */
  readonly data: string;
  readonly fill?: 'solid' | 'tint';
  /** In views: the part whose edge it is, and the edge. */
  readonly part?: string;
  readonly edge?: string;
}

export interface ScreenText {
  readonly role: LineRole;
  readonly text: string;
  /** y down. */
  readonly x: number;
  readonly y: number;
  /** Clockwise, degrees. */
  readonly turn: number;
  readonly size: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly bold: boolean;
}

/** A scene in a few strings, quick to hand to a screen and to draw. */
export interface ScreenScene {
  /** Of the scene, y down: `x y width height`, as a view box has it. */
  readonly box: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
  readonly lines: readonly ScreenLine[];
  readonly texts: readonly ScreenText[];
}

/** Decimals of a coordinate: a hundredth of a millimetre on paper is finer than any screen. */
const DECIMALS = 2;
const ORIGIN = { x: 0, y: 0 };
const ANCHORS = { left: 'start', middle: 'middle', right: 'end' } as const;

/** What a screen draws of a scene: lines that belong together in one path, in the order in which the first of them is drawn. */
export function sceneForScreen({ marks, box }: Scene): ScreenScene {
  return {
    box: boxForScreen(box),
    lines: linesForScreen(marks.filter((mark) => mark.kind === 'path')),
    texts: marks.filter((mark) => mark.kind === 'text').map(textForScreen),
  };
}

export function boxForScreen({ minX, minY, maxX, maxY }: Box): ScreenScene['box'] {
  return { x: minX, y: -maxY, width: maxX - minX, height: maxY - minY };
}

function linesForScreen(marks: readonly PathMark[]): readonly ScreenLine[] {
  const place = placeFrom(ORIGIN, DECIMALS);
  const lines = new Map<string, ScreenLine>();
  for (const { role, edges, closed, fill, part } of marks) {
    const edge = part === undefined ? undefined : edges[0]?.tag.id;
    const key = `${role} ${fill ?? ''} ${part ?? ''} ${edge ?? ''}`;
    const data = pathData(edges, closed, place, DECIMALS);
    const before = lines.get(key);
    lines.set(key, {
      role,
      data: before === undefined ? data : before.data + data,
      ...(fill === undefined ? {} : { fill }),
      ...(part === undefined ? {} : { part }),
      ...(edge === undefined ? {} : { edge }),
    });
  }
  return [...lines.values()];
}

function textForScreen({ role, text, at, height, angle, align, weight }: TextMark): ScreenText {
  return {
    role,
    text,
    x: at.x,
    y: -at.y,
    turn: (-angle * 180) / Math.PI,
    size: fontSizeOf(height),
    anchor: ANCHORS[align],
    bold: weight === 'semibold',
  };
}
