import type { Result } from '../../core/index.ts';
import {
  distance,
  findFaults,
  locate,
  nearestOnEdges,
  POSITION_TOLERANCE,
  type Region,
  type Vec,
} from '../../geometry/index.ts';
import type { JointLine, KeyDimension, Piece, SketchedPart } from '../api.ts';
import type { AssembledOutline } from '../outline/assemble-outline.ts';
import type { MadeOpening } from '../outline/make-opening.ts';
import type { PartSpec } from '../schema/construction.ts';
import type { Expression } from '../schema/expression.ts';
import { type Desk, openDesk } from './desk.ts';
import { makeDimension } from './make-dimension.ts';
import type { Sheet } from './sheet.ts';
import { showPoint } from './show.ts';
import { thicknessOfPart } from './thickness-of-part.ts';

/** What parts are made of. */
export interface Stock {
  readonly outlineOf: (name: string) => Result<AssembledOutline>;
  readonly openingOf: (name: string) => Result<MadeOpening | 'absent'>;
}

/** One part of a form; `absent` when its condition does not hold. */
export function makePart(name: string, stock: Stock, sheet: Sheet): Result<SketchedPart | 'absent'> {
  const desk = openDesk(sheet);
  const spec = sheet.form.data.parts[name]!;
  const holds = desk.holds(spec.when);
  if (holds === false) return desk.close<SketchedPart | 'absent'>('absent');
  return desk.close(make(name, spec, stock, desk));
}

function make(name: string, spec: PartSpec, stock: Stock, desk: Desk): SketchedPart | undefined {
  const made = desk.take(stock.outlineOf(spec.outline.text));
  const openings = (spec.openings ?? []).flatMap((opening) => {
    const one = desk.take(stock.openingOf(opening.text));
    return one === undefined || one === 'absent' ? [] : [one];
  });
  const thickness = thicknessOfPart(name, desk);
  const [grain, up] = [desk.figure(spec.grain), desk.figure(spec.up)];
  const { quantity } = spec;
  // A part that the base places is counted there, once its copies have their hands.
  const [left, right] =
    quantity === undefined ? [1, 0] : [count(quantity.left, desk), count(quantity.right, desk)];
  const ends = apart(spec.centre_line, 'the centre line', desk);
  const joints = makeJoints(spec, desk);
  const pieces = makePieces(spec, desk);
  if (made === undefined || desk.problems.length > 0) return undefined;
  const region: Region = { outer: made.outline, holes: openings.map((opening) => opening.loop) };
  if (!openingsFit(name, region, openings, desk)) return undefined;
  const dimensions = makeDimensions(name, spec, region, desk);
  if (thickness === undefined || grain === undefined || up === undefined || ends === undefined)
    return undefined;
  if (left === undefined || right === undefined) return undefined;
  if (quantity !== undefined && left + right === 0) {
    return desk.refuse(
      quantity.left.source.place,
      'form.quantity',
      `${name} is made no times`,
      'at least one, or a condition on the part',
    );
  }
  return {
    name,
    label: spec.label,
    region,
    thickness,
    grain,
    ...(pieces.length === 0 ? {} : { pieces }),
    up,
    quantity: { left, right },
    corners: [...made.corners, ...openings.flatMap((opening) => opening.corners)],
    openings: openings.map(({ name: opening, label, plunge }, hole) => ({
      name: opening,
      label,
      hole,
      plunge,
    })),
    joints,
    dimensions,
    centreLine: { from: ends[0], to: ends[1] },
  };
}

function count(expression: Expression<'number'>, desk: Desk): number | undefined {
  const value = desk.figure(expression);
  if (value === undefined || (Number.isInteger(value) && value >= 0 && value <= 999)) return value;
  return desk.refuse(
    expression.source.place,
    'form.quantity',
    `a quantity of ${value} is not a whole number from 0 to 999`,
    'a whole number',
  );
}

function apart(
  points: readonly [Expression<'point'>, Expression<'point'>],
  what: string,
  desk: Desk,
): readonly [Vec, Vec] | undefined {
  const ends = desk.points(points);
  if (ends === undefined || distance(ends[0], ends[1]) > POSITION_TOLERANCE) return ends;
  return desk.refuse(
    points[0].source.place,
    'form.line',
    `the two ends of ${what} are the same place`,
    'two places apart',
  );
}

function makePieces(spec: PartSpec, desk: Desk): readonly Piece[] {
  return Object.entries(spec.pieces ?? {}).flatMap(([name, { label, left_of, grain: own, when }]) => {
    if (desk.holds(when) !== true) return [];
    const line = apart(left_of, `the line of piece ${name}`, desk);
    const grain = desk.figure(own);
    if (line === undefined || grain === undefined) return [];
    return [{ name, label, leftOf: { from: line[0], to: line[1] }, grain }];
  });
}

function makeJoints(spec: PartSpec, desk: Desk): readonly JointLine[] {
  return Object.entries(spec.joints ?? {}).flatMap(([name, { label, from, to, when }]) => {
    if (desk.holds(when) !== true) return [];
    const ends = apart([from, to], `joint ${name}`, desk);
    return ends === undefined ? [] : [{ name, label, from: ends[0], to: ends[1] }];
  });
}

function makeDimensions(part: string, spec: PartSpec, region: Region, desk: Desk): readonly KeyDimension[] {
  return Object.entries(spec.dimensions ?? {}).flatMap(([name, dimension]) => {
    if (desk.holds(dimension.when) !== true) return [];
    const { line, column } = spec.outline.place;
    const place = { line, column, path: `parts.${part}.dimensions.${name}` };
    const made = makeDimension(name, dimension, region, place, desk);
    return made === undefined ? [] : [made];
  });
}

/** Openings lie inside the part, and neither cross nor touch its edges or each other. */
function openingsFit(name: string, region: Region, openings: readonly MadeOpening[], desk: Desk): boolean {
  for (const [index, opening] of openings.entries()) {
    const { edges } = opening.loop;
    const others = [region.outer, ...region.holes.slice(0, index)];
    const [fault] = findFaults([
      { outer: region.outer, holes: [opening.loop, ...region.holes.slice(0, index)] },
    ]);
    const touched = others
      .flatMap((loop) => loop.edges)
      .find((other) => edges.some((edge) => touches(edge.from, [other])));
    if (fault !== undefined || touched !== undefined) {
      const at = fault?.at ?? edges[0]!.from;
      const all = others.flatMap((loop) => loop.edges);
      const near = all[nearestOnEdges(all, at).index]!.tag.id;
      const inside = locate([{ outer: region.outer, holes: [] }], edges[0]!.from) === 'inside';
      const what =
        inside || fault?.kind === 'crossing'
          ? `meets ${near} at ${showPoint(at, desk.sheet.style)}`
          : `lies outside ${name}`;
      desk.refuse(
        opening.place,
        'form.opening',
        `${opening.name} ${what}`,
        'an opening inside the part, clear of every other edge',
      );
      return false;
    }
  }
  return true;
}

function touches(p: Vec, edges: Region['outer']['edges']): boolean {
  return nearestOnEdges(edges, p).distance <= POSITION_TOLERANCE;
}
