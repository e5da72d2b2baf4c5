import { describe, expect, it } from 'vitest';
import { moveBy } from '../../src/geometry/index.ts';
import { lengthWords } from '../../src/routing/index.ts';
import {
  checkLeaves,
  figureShift,
  type LeafByHand,
  type LeafMap,
  leafMap,
  leavesByHand,
  matchDrift,
  type ResawPlan,
  resawStack,
} from '../../src/wood/index.ts';
import { matchedPieces, matchOf } from './matched-pieces.ts';

const PLAN: ResawPlan = {
  name: 'leaves',
  rough: 50.8,
  flattening: 4,
  kerf: 1.2,
  leaves: 4,
  planing: { sawn: 0.8, outer: 0.4 },
  drying: 1.6,
  backing: 24,
  glued: 1,
  lastPlaning: { show: 0.5, back: 0.5 },
  drift: 0.4,
  finished: 30,
};
const STACK = resawStack(PLAN);
const say = lengthWords();
const legs = matchedPieces('shallow-v-trestle', 'leg');

/** `FL 1 lower up near`: piece, leaf, face that shows, where the marked end points, edge towards the middle. */
const lines = ({ places, pieces }: LeafMap): readonly string[] =>
  places.map(({ piece, board, leaf, face, shows, markedEnd, inner }) => {
    const { name } = pieces.find(({ id }) => id === piece)!;
    return `${name} ${face} ${board}/${leaf} ${shows} ${markedEnd} ${inner}`;
  });
const codes = (map: LeafMap, stack = STACK): readonly string[] =>
  checkLeaves(map, stack, say).map(({ code }) => code);

describe('a leaf map', () => {
  it('opens neighbours like pages: the legs of each end show the faces that met at the saw', () => {
    // Facing the left end, BL stands at the left. With the marked end up, an upper face has its near edge at the left: towards the middle it is
    // that of a lower face.
    expect(lines(leafMap(matchOf('leg'), legs, 4))).toEqual([
      'BL face 1/1 lower up near',
      'FL face 1/2 upper up near',
      'FR face 1/3 lower up near',
      'BR face 1/4 upper up near',
    ]);
  });

  it('turns every leaf over when the other edge is wanted at the middle', () => {
    expect(lines(leafMap(matchOf('leg', { centre: 'far' }), legs, 4))).toEqual([
      'FL face 1/1 lower up far',
      'BL face 1/2 upper up far',
      'BR face 1/3 lower up far',
      'FR face 1/4 upper up far',
    ]);
  });

  it('follows the pattern where that is placed on the board: head to tail the marked end points down', () => {
    const placed = new Map([['leg', { ...moveBy(500, 20), turn: Math.PI / 2 }]]);
    const [first] = leafMap(matchOf('leg'), legs, 4, placed).places;
    const turned = new Map([['leg', { ...placed.get('leg')!, turn: -Math.PI / 2 }]]);
    const [other] = leafMap(matchOf('leg'), legs, 4, turned).places;
    expect(new Set([first!.markedEnd, other!.markedEnd])).toEqual(new Set(['up', 'down']));
  });

  it('never parts the leaves of a frame: what one board cannot give whole comes from the next', () => {
    const map = leafMap(matchOf('leg', { boards: ['A', 'B'] }), legs, 3);
    expect(map.places.map(({ board, leaf }) => `${board}${leaf}`)).toEqual(['A1', 'A2', 'B1', 'B2']);
    const stack = resawStack({ ...PLAN, leaves: 3 });
    expect(codes(map, stack)).toEqual([]);
    expect(codes(leafMap(matchOf('leg', { boards: ['A'] }), legs, 3), stack)).toEqual([
      'wood.too-few-leaves',
    ]);
  });

  it('slips leaves off one another all the same way up, and the figure repeats', () => {
    const map = leafMap(matchOf('leg', { arrangement: 'slip' }), legs, 4);
    expect(new Set(map.places.map(({ shows }) => shows)).size).toBe(1);
    expect(map.places.map(({ leaf }) => leaf)).toEqual([1, 2, 3, 4]);
    // A figure that repeats has the near edge inwards on one leg of a frame and outwards on the other.
    expect(
      map.places
        .slice(0, 2)
        .map(({ inner }) => inner)
        .toSorted(),
    ).toEqual(['far', 'near']);
    expect(codes(map)).toEqual([]);
  });

  it('leads leaves round the base, each turned over from the one before', () => {
    const map = leafMap(matchOf('leg', { arrangement: 'radial' }), legs, 4);
    const nameOf = (id: string) => legs.find((each) => each.id === id)!.name;
    expect(map.places.map(({ piece, leaf }) => `${nameOf(piece)}${leaf}`)).toEqual([
      'FL1',
      'FR2',
      'BR3',
      'BL4',
    ]);
    const shows = map.places.map((each) => each.shows);
    expect(shows[0]).toBe(shows[2]);
    expect(shows[1]).toBe(shows[3]);
    expect(shows[0]).not.toBe(shows[1]);
    expect(codes(map)).toEqual([]);
  });

  it('speaks of left and right on level pieces', () => {
    const feet = matchedPieces('arched-trestle', 'foot');
    const { places } = leafMap(matchOf('foot'), feet, 4);
    for (const { markedEnd } of places) expect(['left', 'right']).toContain(markedEnd);
  });
});

describe('the check of a leaf map', () => {
  const map = leafMap(matchOf('leg', { boards: ['A'] }), legs, 4);
  const hand = (changes: readonly Partial<LeafByHand>[]): LeafMap =>
    leavesByHand(
      map,
      map.places.map((place, at) => ({
        ...place,
        board: 'A',
        piece: legs.find(({ id }) => id === place.piece)!.name,
        ...changes[at],
      })),
    );

  it('has nothing to say of the map itself, typed in by hand', () => {
    expect(hand([])).toEqual(map);
    expect(codes(hand([]))).toEqual([]);
  });

  it('finds a leaf used twice, one that the board does not give, and a face without', () => {
    expect(codes(hand([{}, { leaf: 1 }]))).toContain('wood.leaf-twice');
    expect(codes(hand([{}, {}, {}, { leaf: 5 }]))).toContain('wood.no-such-leaf');
    const three = leavesByHand(map, [
      { leaf: 1, piece: 'FL', face: 'face', shows: 'lower', markedEnd: 'up' },
      { leaf: 2, piece: 'BL', face: 'face', shows: 'upper', markedEnd: 'up' },
      { leaf: 3, piece: 'BR', face: 'face', shows: 'lower', markedEnd: 'up' },
    ]);
    expect(codes(three)).toEqual(['wood.too-few-leaves']);
  });

  it('finds leaves that match but lay far apart, and by how much', () => {
    const swapped = hand([{ leaf: 2 }, { leaf: 1 }]);
    const [found] = checkLeaves(swapped, STACK, say);
    expect(found!.code).toBe('wood.match-apart');
    // Outer faces of the first two leaves: two leaves and a kerf less what is planed off outside.
    const { asSawn } = STACK;
    const upper = 0.4 + 0.8 + 0.5;
    const lower = 0.8 + 0.8 + 0.5;
    expect(found!.measured!.value).toBeCloseTo(2 * asSawn + 1.2 - upper - lower, 9);
  });

  it('tells a frame that is matched in itself but not like the other', () => {
    const over = { BR: 'upper', FR: 'lower' } as const;
    const both = hand([{}, {}, { shows: over.BR }, { shows: over.FR }]);
    expect(codes(both)).toContain('wood.frames-differ');
    expect(codes(both)).not.toContain('wood.leaf-turned');
  });
});

describe('the drift of a match', () => {
  it('is what saw and plane took, and shifts the figure the more the flatter its rings lie', () => {
    const [mates] = matchDrift(leafMap(matchOf('leg'), legs, 4), STACK);
    expect(mates!.kind).toBe('mates');
    // By hand: the kerf, and off each face its planing, half the cup and the last planing.
    expect(mates!.apart).toBeCloseTo(1.2 + 2 * (0.8 + 0.8 + 0.5), 9);
    expect(figureShift(mates!.apart!, Math.PI / 4)).toBeCloseTo(5.4, 9);
    expect(figureShift(mates!.apart!, Math.PI / 2)).toBeCloseTo(0, 9);
    // A ring at 15° to the face runs 1 : tan 15° = 3.73 along it.
    expect(figureShift(1, (15 * Math.PI) / 180)).toBeCloseTo(3.732, 3);
  });

  it('between the frames is two leaves more', () => {
    const between = matchDrift(leafMap(matchOf('leg'), legs, 4), STACK).filter(
      ({ kind }) => kind === 'frames',
    );
    for (const { apart } of between) expect(apart).toBeCloseTo(2 * (STACK.asSawn + 1.2), 9);
  });
});
