import type { BuiltBase, MadePart, PlacedPart } from '../../base/index.ts';
import {
  boundsOfRegions,
  directionToFrame,
  leftOf,
  norm,
  polar,
  type Region,
  type Similarity,
  STAY,
  scale,
  transformRegion,
  unit,
} from '../../geometry/index.ts';
import type { LeafPiece } from './api.ts';
import { compose, inverse } from './similarity.ts';

const TURN_OVER: Similarity = { ...STAY, mirrored: true };

/** Grain flatter than this to the floor, as a sine, belongs to a level piece. */
const LEVEL = Math.sin(Math.PI / 4);

/** The pieces of a base that are made as these parts, in the order in which the base places them. */
export function piecesOfBase(
  { base, made }: Pick<BuiltBase, 'base' | 'made'>,
  parts: readonly string[],
): readonly LeafPiece[] {
  return base.parts.flatMap((placed) => {
    const own = made.find(({ members }) => members.some(({ part }) => part === placed.id));
    return own === undefined || !parts.includes(own.name) ? [] : [pieceOf(placed, own)];
  });
}

function pieceOf(placed: PlacedPart, made: MadePart): LeafPiece {
  const { id, mark, frame, face, drawn } = placed;
  const member = made.members.find(({ part }) => part === id)!;
  const fromPattern = patternOnPiece(placed, made, member);
  const up = directionToFrame(frame, { x: 0, y: 0, z: 1 });
  const grain = polar(drawn.grain);
  const rise = grain.x * up.x + grain.y * up.y;
  const level = Math.abs(rise) < LEVEL;
  // On a piece that lies flat nothing is up: its length is.
  const flat = norm(up.x, up.y) < 1e-6;
  const wanted = flat ? { x: 0, y: 1 } : level ? leftOf(unit(up)) : up;
  const isTowards = grain.x * wanted.x + grain.y * wanted.y >= 0;
  return {
    id,
    name: mark === '' ? id : mark,
    part: made.name,
    label: made.label,
    frame,
    region: face,
    thickness: drawn.thickness,
    fromPattern,
    head: isTowards ? grain : scale(grain, -1),
    level,
  };
}

/** Turned over for a right hand, then turned so that the grain lies on the piece's, half a turn more where it stands so, and moved. */
function patternOnPiece(
  { drawn, face }: PlacedPart,
  { sketch, face: pattern }: MadePart,
  { hand, turned }: MadePart['members'][number],
): Similarity {
  const over = hand === 'right' ? TURN_OVER : STAY;
  const grainOver = hand === 'right' ? Math.PI - sketch.grain : sketch.grain;
  const toPattern = grainOver - drawn.grain;
  const turn = toPattern - Math.PI * Math.round(toPattern / Math.PI) + (turned ? Math.PI : 0);
  const moved = compose(inverse({ ...STAY, turn }), over);
  const [from, to] = [boundsOfRegions(moveAll(pattern, moved)), boundsOfRegions(face)];
  return { ...moved, shift: { x: to.minX - from.minX, y: to.minY - from.minY } };
}

const moveAll = (regions: readonly Region[], by: Similarity): readonly Region[] =>
  regions.map((region) => transformRegion(region, by));
