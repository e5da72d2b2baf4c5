import { fail, ok, type Problem, type Result } from '../../core/index.ts';
import { circleOutline, findFaults, polygonOutline, type Region, type Vec } from '../../geometry/index.ts';
import { parseAngle, parseQuarters, RAD_PER_DEGREE } from '../../measure/index.ts';
import type { Board, Defect, DefectKind, LayRules, Photograph, Price } from '../../wood/index.ts';
import type { Design, TypedLength, TypedWood } from '../design-schema.ts';
import { type MeasureReader, measureReader } from '../typed-measures.ts';

/** A board of the design with what else is said of it. */
export interface DesignBoard {
  readonly board: Board;
  /** Of the table; absent: the wood of the base. */
  readonly wood?: string;
  readonly photographs: readonly Photograph[];
}

/** What a search for a layout keeps to. */
export interface LaySearch {
  readonly rules: LayRules;
  readonly seed: number;
  readonly seconds: number;
}

/** Left out in a design: 2° off the grain, 3 mm of saw between two, half a minute. Common practice. */
const USUAL = { grainWithin: 2 * RAD_PER_DEGREE, between: 3, seconds: 30, seed: 1 };

const SIZE = { least: 10, most: 20_000 };
const THICK = { least: 1, most: 500 };
const PLACE = { least: 0, most: 20_000 };
const ROOM = { least: 0, most: 50 };

type TypedBoard = NonNullable<TypedWood['boards']>[number];
type TypedDefect = NonNullable<TypedBoard['defects']>[number];

/** The boards of a design and what a search keeps to, in mm and rad. Problem paths begin with `wood.`. */
export function resolveBoards({ wood = {}, units }: Pick<Design, 'wood' | 'units'>): Result<{
  readonly boards: readonly DesignBoard[];
  readonly search: LaySearch;
}> {
  const reader = measureReader(units.length);
  const problems: Problem[] = [];
  const boards = (wood.boards ?? []).map((typed, at) =>
    boardOf(typed, `wood.boards.${at}`, reader, units.length, problems),
  );
  const {
    seed = USUAL.seed,
    seconds = USUAL.seconds,
    grainWithin,
    between,
    allowed = [],
  } = wood.search ?? {};
  const search = {
    rules: {
      grainWithin:
        grainWithin === undefined
          ? USUAL.grainWithin
          : angleAt(grainWithin, 'wood.search.grainWithin', problems),
      between: between === undefined ? USUAL.between : reader.length(between, 'wood.search.between', ROOM),
      allowed,
    },
    seed,
    seconds,
  };
  const all = [...problems, ...reader.problems];
  return all.length > 0 ? fail(...all) : ok({ boards, search });
}

function boardOf(
  typed: TypedBoard,
  path: string,
  reader: MeasureReader,
  unit: Design['units']['length'],
  problems: Problem[],
): DesignBoard {
  const { name, kind = 'board', price, grain, defects = [], photographs = [] } = typed;
  const quarters = parseQuarters(String(typed.thickness), { unit });
  const thick = quarters.ok ? `${quarters.value} mm` : typed.thickness;
  const board: Board = {
    name,
    kind,
    length: reader.length(typed.length, `${path}.length`, SIZE),
    width: reader.length(typed.width, `${path}.width`, SIZE),
    thickness: reader.length(thick, `${path}.thickness`, THICK),
    defects: defects.flatMap((each, at) => defectOf(each, `${path}.defects.${at}`, reader, problems)),
    grain: grain === undefined ? 0 : angleAt(grain, `${path}.grain`, problems),
    ...(price === undefined ? {} : { price: priceOf(price) }),
  };
  const placeAt = placeReader(reader);
  return {
    board,
    ...(typed.wood === undefined ? {} : { wood: typed.wood }),
    photographs: photographs.map(({ file, face, leaf, points }, at) => ({
      file,
      face,
      ...(leaf === undefined ? {} : { leaf }),
      points: points.map(({ pixel, on }, k) => ({
        from: { x: pixel[0], y: pixel[1] },
        to: placeAt(on, `${path}.photographs.${at}.points.${k}.on`),
      })),
    })),
  };
}

function priceOf({ amount, per, currency }: NonNullable<TypedBoard['price']>): Price {
  return { amount, per, ...(currency === undefined ? {} : { currency }) };
}

type TypedPlace = readonly [TypedLength, TypedLength];

function placeReader(reader: MeasureReader): (place: TypedPlace, path: string) => Vec {
  return ([x, y], path) => ({
    x: reader.length(x, `${path}.0`, PLACE),
    y: reader.length(y, `${path}.1`, PLACE),
  });
}

/** Corners in any order of turning; what crosses itself is refused. */
function defectOf(typed: TypedDefect, path: string, reader: MeasureReader, problems: Problem[]): Defect[] {
  const placeAt = placeReader(reader);
  const tag = { id: typed.kind, role: 'left' } as const;
  const of = (region: Region): Defect[] => [{ kind: typed.kind as DefectKind, region }];
  if ('centre' in typed) {
    const at = placeAt(typed.centre, `${path}.centre`);
    const across = reader.length(typed.diameter, `${path}.diameter`, { least: 0.5, most: 2000 });
    return across > 0 ? of({ outer: circleOutline(at, across / 2, tag, 1), holes: [] }) : [];
  }
  const points = typed.points.map((place, at) => placeAt(place, `${path}.points.${at}`));
  const twice = points.reduce((sum, p, i) => {
    const q = points[(i + 1) % points.length]!;
    return sum + p.x * q.y - p.y * q.x;
  }, 0);
  const region = { outer: polygonOutline(twice < 0 ? points.toReversed() : points, tag), holes: [] };
  if (reader.problems.length > 0 || findFaults([region]).length === 0) return of(region);
  const expected = 'corners in order round the defect, so that its edge does not cross itself';
  problems.push({
    code: 'design.crossing-defect',
    message: `${path}.points: expected ${expected}.`,
    path: `${path}.points`,
    expected,
  });
  return [];
}

export function angleAt(typed: string | number, path: string, problems: Problem[]): number {
  const read = parseAngle(String(typed));
  if (read.ok) return read.value;
  const { column: _, ...problem } = read.problems[0]!;
  problems.push({ ...problem, path, message: `${path}: ${problem.message}` });
  return 0;
}
