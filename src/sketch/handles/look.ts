import { ok } from '../../core/index.ts';
import {
  ANGLE_TOLERANCE,
  dot,
  dot3,
  norm,
  polar,
  scale,
  subtract,
  subtract3,
  type Vec,
  type Vec3,
} from '../../geometry/index.ts';
import type { Handle, ParameterValue } from '../api.ts';
import { type Desk, openDesk } from '../evaluate/desk.ts';
import { fillMessage } from '../evaluate/failed-checks.ts';
import { makeAll } from '../evaluate/make-all.ts';
import { makeHandle } from '../evaluate/make-handle.ts';
import type { Sheet } from '../evaluate/sheet.ts';
import type { Node } from '../expression/node.ts';
import type { Expression } from '../schema/expression.ts';
import type { Grip, Look, Seen } from './api.ts';

/** Looks at a handle with these parameters; nothing where its point cannot be made. `stepless`: without the steps of rounding. */
export function lookAt(
  { form, name, spec, order }: Grip,
  values: Readonly<Record<string, ParameterValue>>,
  seen: Seen | undefined,
  stepless: boolean,
): Look | undefined {
  const given = Object.entries(values).map(([key, value]) => [key, ok(value)] as const);
  const sheet: Sheet = {
    form,
    style: { unit: 'mm', decimals: 1 },
    thickness: {},
    stepless,
    values: new Map(given),
    edges: new Map(),
  };
  makeAll(sheet, order);
  const handle = makeHandle(name, spec, openDesk(sheet));
  if (handle === undefined) return undefined;
  const at = handle.of === 'part' ? handle.at : inPicture(handle.at, seen);
  const along = directionOf(handle, seen);
  const waysOf = (p: Vec): readonly number[] => (along === undefined ? [p.x, p.y] : [dot(p, along)]);
  const waysFrom = (target: Vec): readonly number[] => waysOf(subtract(at, target));
  return { at, ways: waysOf(at), waysFrom, ...checksIn(sheet) };
}

/** The only direction in which a handle is pulled, as it is seen; of a direction straight at the viewer nothing is left to pull. */
function directionOf(handle: Handle, seen: Seen | undefined): Vec | undefined {
  if (handle.along === undefined) return undefined;
  if (handle.of === 'part') return polar(handle.along);
  const inView = { x: dot3(handle.along, seen!.x), y: dot3(handle.along, seen!.y) };
  const long = norm(inView.x, inView.y);
  return long < ANGLE_TOLERANCE ? { x: 0, y: 0 } : scale(inView, 1 / long);
}

/** A check that holds by less than this hardly holds: the step that forms round their limits to, of lengths (mm), of angles (0.1°), of plain numbers. */
const HARDLY = { length: 0.1, angle: (0.1 * Math.PI) / 180, number: 0.01 } as const;

function checksIn(sheet: Sheet): Pick<Look, 'slacks' | 'tight' | 'broken'> {
  const slacks: number[] = [];
  const tight: string[] = [];
  let broken = false;
  for (const { needs, say, when } of sheet.form.data.checks ?? []) {
    const desk = openDesk(sheet);
    const applies = desk.holds(when) === true;
    if (applies && desk.holds(needs) !== true) broken = true;
    const own = comparisonsIn(needs.node).map((each) =>
      applies ? slackOf(each, needs, desk) : Number.POSITIVE_INFINITY,
    );
    slacks.push(...own);
    const isTight = comparisonsIn(needs.node).some((each, at) => own[at]! <= hardly(each, sheet) + 1e-9);
    if (isTight) tight.push(fillMessage(say, sheet));
  }
  return { slacks, tight, broken };
}

/** A place in the world as it is seen in a picture. */
function inPicture(at: Vec3, seen: Seen | undefined): Vec {
  if (seen === undefined) throw new RangeError('a handle of a base is pulled in a picture of it');
  const way = subtract3(at, seen.origin);
  return { x: dot3(way, seen.x), y: dot3(way, seen.y) };
}

type Comparison = Extract<Node, { type: 'binary' }>;

/** Comparisons that must all hold for the whole to hold. */
function comparisonsIn(node: Node): readonly Comparison[] {
  if (node.type !== 'binary') return [];
  if (node.operator === 'and') return [...comparisonsIn(node.left), ...comparisonsIn(node.right)];
  return ['<', '<=', '>', '>='].includes(node.operator) ? [node] : [];
}

/** By the kind of what is compared, as far as a name or a figure on one of its sides tells. */
function hardly({ left, right }: Comparison, { form }: Sheet): number {
  for (const node of [left, right]) {
    const kind = node.type === 'name' ? form.kinds.get(node.name) : undefined;
    if (kind?.type === 'quantity') {
      if (kind.length !== 0) return HARDLY.length;
      return kind.angle === 0 ? HARDLY.number : HARDLY.angle;
    }
  }
  return HARDLY.length;
}

function slackOf({ operator, left, right }: Comparison, { wanted, source }: Expression, desk: Desk): number {
  const [a, b] = [left, right].map(
    (node) => desk.value({ kind: 'expression', wanted, node, source }) as number | undefined,
  );
  if (a === undefined || b === undefined) return Number.POSITIVE_INFINITY;
  return operator === '<' || operator === '<=' ? b - a : a - b;
}
