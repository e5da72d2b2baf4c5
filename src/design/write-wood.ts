import { matrix2d, projectionOfSimilarity, type Similarity } from '../geometry/index.ts';
import type { BoardAccount, MovingPart } from '../wood/index.ts';
import type { Computed } from './computed.ts';
import { layoutOfDesign } from './lay/lay-design.ts';
import { layFaultWords } from './lay/lay-fault-words.ts';
import { roundNumber, writePoint, writeRegion } from './region-schema.ts';
import type { WrittenResult } from './result-schema.ts';
import type { ComputedMatch, ComputedWood } from './wood-of-design.ts';

type WrittenWood = NonNullable<WrittenResult['wood']>;

/** The wood of a base as other programs read it: movement, leaves, boards with what lies on them. */
export function writeWood(computed: Computed, { parts, top, matches }: ComputedWood): WrittenWood {
  const laid = layoutOfDesign(computed);
  const layout = laid.ok ? laid.value : undefined;
  const [first] = parts;
  return {
    ...(first === undefined
      ? {}
      : {
          moisture: {
            made: roundNumber(top.made),
            driest: roundNumber(first.across.driest),
            dampest: roundNumber(first.across.dampest),
          },
        }),
    movement: parts.map(({ part, wood, sawn, width, across, through }) => ({
      part,
      wood: wood.name,
      sawn,
      width: roundNumber(width),
      across: movementOf(across),
      through: movementOf(through),
    })),
    top: movementOf(top.movement),
    matches: matches.map(matchOf),
    boards: layout?.account.boards.map(boardOf) ?? [],
    unlaid:
      layout?.unlaid.map((id) => {
        const { part, pieces } = layout.toLay.find((each) => each.id === id)!;
        return { part, pieces };
      }) ?? [],
    faults: layout?.faults.map(layFaultWords) ?? [],
  };
}

function movementOf({ shrinks, swells, range, method }: MovingPart['across']): WrittenWood['top'] {
  return {
    shrinks: roundNumber(shrinks),
    swells: roundNumber(swells),
    range: roundNumber(range),
    method,
  };
}

function matchOf({ map, stack, drift }: ComputedMatch): WrittenWood['matches'][number] {
  const { plan } = stack;
  return {
    name: map.match.name,
    arrangement: map.match.arrangement,
    resaw: {
      name: plan.name,
      leaves: plan.leaves,
      rough: roundNumber(plan.rough),
      asSawn: roundNumber(stack.asSawn),
      thinnest: roundNumber(stack.thinnest),
      reaches: roundNumber(stack.reaches),
      finished: roundNumber(plan.finished),
    },
    frames: map.frames.map(({ name, pieces }) => ({ name, pieces })),
    leaves: map.places.map(({ toBoard, ...place }) => ({ ...place, toBoard: matrixOf(toBoard) })),
    drift: drift.map(({ a, b, kind, apart, mostApart }) => ({
      between: [a.piece, b.piece],
      kind,
      ...(apart === undefined ? {} : { apart: roundNumber(apart) }),
      ...(mostApart === undefined ? {} : { mostApart: roundNumber(mostApart) }),
    })),
  };
}

function boardOf({ board, laid, offcuts, ...account }: BoardAccount): WrittenWood['boards'][number] {
  const { price, currency } = account;
  return {
    name: board.name,
    kind: board.kind,
    length: roundNumber(board.length),
    width: roundNumber(board.width),
    thickness: roundNumber(board.thickness),
    yield: roundNumber(account.yield),
    boardFeet: roundNumber(account.boardFeet),
    cubicMetres: roundNumber(account.cubicMetres),
    ...(price === undefined ? {} : { price: roundNumber(price) }),
    ...(currency === undefined ? {} : { currency }),
    laid: laid.map(({ toLay, region, toBoard }) => ({
      part: toLay.part,
      pieces: toLay.pieces,
      outline: writeRegion(region),
      toBoard: matrixOf(toBoard),
    })),
    offcuts: offcuts.map(({ area, rectangle }) => ({
      area: roundNumber(area),
      ...(rectangle === undefined
        ? {}
        : {
            rectangle: {
              from: writePoint({ x: rectangle.minX, y: rectangle.minY }),
              to: writePoint({ x: rectangle.maxX, y: rectangle.maxY }),
            },
          }),
    })),
  };
}

function matrixOf(toBoard: Similarity): [number, number, number, number, number, number] {
  const [a, b, c, d, e, f] = matrix2d(projectionOfSimilarity(toBoard));
  return [roundNumber(a), roundNumber(b), roundNumber(c), roundNumber(d), roundNumber(e), roundNumber(f)];
}
