import { signal } from '@preact/signals';
import { distance, type EdgeRole, type Stroke, type StrokeLoop, type Vec } from '../../../geometry/index.ts';

export type Tool = Stroke['kind'];

/** What is drawn so far: an outline being drawn, and closed ones. */
export interface Drawn {
  readonly closed: readonly StrokeLoop[];
  readonly start: Vec | undefined;
  readonly strokes: readonly Stroke[];
  /** Points of a stroke that takes several, before its last. */
  readonly waiting: readonly Vec[];
}

const NOTHING: Drawn = { closed: [], start: undefined, strokes: [], waiting: [] };

/** What was drawn before each step, to be taken back. */
export const past = signal<readonly Drawn[]>([]);
export const drawn = signal<Drawn>(NOTHING);
export const tool = signal<Tool>('line');
export const role = signal<EdgeRole>('routed');

export function setDrawn(next: Drawn): void {
  past.value = [...past.value, drawn.value];
  drawn.value = next;
}

export function takeBack(): void {
  const before = past.value.at(-1);
  if (before === undefined) return;
  past.value = past.value.slice(0, -1);
  drawn.value = before;
}

export const clear = (): void => setDrawn(NOTHING);
export const lay = (closed: readonly StrokeLoop[]): void => setDrawn({ ...NOTHING, closed });

/** A point is drawn, mm: the first begins an outline, one on the start closes it. */
export function addPoint(at: Vec): void {
  const now = drawn.value;
  const { start, waiting } = now;
  if (start === undefined) {
    setDrawn({ ...now, start: at });
    return;
  }
  const isEnd = waiting.length > 0 && distance(at, waiting.at(-1)!) < SAME;
  const isClosing = distance(at, start) < SAME && now.strokes.length + waiting.length > 0;
  const isOnItsWay =
    (tool.value === 'arc' && waiting.length === 0) || (tool.value === 'batten' && !isClosing && !isEnd);
  if (isOnItsWay) setDrawn({ ...now, waiting: [...waiting, at] });
  else add(strokeTo(at, isEnd ? waiting.slice(0, -1) : waiting), isClosing);
}

/** A batten ends at its last nail. */
export function endBatten(): void {
  const last = drawn.value.waiting.at(-1);
  if (last !== undefined) addPoint(last);
}

/** What is drawn is closed by a straight line, where it is not yet. */
export function close(): void {
  const { start, strokes } = drawn.value;
  if (start === undefined || strokes.length < 1) return;
  add({ kind: 'line', to: start, role: role.value }, true);
}

/** Points nearer than this, mm, are one: they were snapped. */
const SAME = 1e-6;

function strokeTo(to: Vec, between: readonly Vec[]): Stroke {
  const own = { to, role: role.value };
  if (between.length === 0) return { kind: 'line', ...own };
  if (tool.value === 'arc') return { kind: 'arc', through: between[0]!, ...own };
  return { kind: 'batten', nails: between, smooth: false, ...own };
}

function add(stroke: Stroke, isClosing: boolean): void {
  const now = drawn.value;
  const strokes = [...now.strokes, stroke];
  setDrawn(
    isClosing
      ? {
          closed: [...now.closed, { start: now.start!, strokes }],
          start: undefined,
          strokes: [],
          waiting: [],
        }
      : { ...now, strokes, waiting: [] },
  );
}
