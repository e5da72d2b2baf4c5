import { cross3, directionToWorld, dot3, pointToWorld, type Vec3 } from '../../../geometry/index.ts';
import { type SolidEdge, type SolidPiece, sharpEdgesOfPrism, smoothEdgesOfPrism } from './edges-of-prism.ts';
import { lineInPrism, type Stretches } from './line-in-prism.ts';
import { lineInPocket, lineInSolid, type SeatedPrism, type Solid } from './solid.ts';

/** Points tried round an edge, and how far from it, mm. */
const ROUND = 32;
const AWAY = 0.01;

/**
 * The edges of a solid in its own frame, its pockets among them; of those between facets of one curved wall only what `isDrawn` by the
 * normals there (out of the wood).
 */
export function edgesOfSolid(
  solid: Solid,
  isDrawn: (normals: SolidPiece['normals']) => boolean,
): readonly SolidEdge[] {
  const own = [...solid.sharp(), ...smoothEdgesOfPrism(solid.prism, isDrawn)];
  if (solid.pockets.length === 0) return own;
  const hollow = solid.pockets.flatMap((pocket) =>
    [
      ...sharpEdgesOfPrism(pocket.prism, {}),
      ...smoothEdgesOfPrism(pocket.prism, ([a, b]) => isDrawn([outOfWood(pocket, a), outOfWood(pocket, b)])),
    ].map((edge) => seated(edge, pocket)),
  );
  return [...own, ...hollow].map((edge) => ({
    ...edge,
    pieces: edge.pieces.flatMap((piece) => realPieces(solid, piece, edge.smooth)),
  }));
}

/** An edge of a pocket in the frame of its part: there the wood lies on the other side of its walls. */
function seated(edge: SolidEdge, pocket: SeatedPrism): SolidEdge {
  const { frame, name } = pocket;
  return {
    tag: { id: name, role: edge.tag.role },
    on: 'pocket',
    smooth: edge.smooth,
    pieces: edge.pieces.map(({ from, to, normals: [a, b] }) => ({
      from: pointToWorld(frame, from),
      to: pointToWorld(frame, to),
      normals: [outOfWood(pocket, a), outOfWood(pocket, b)],
    })),
  };
}

function outOfWood({ frame }: SeatedPrism, n: Vec3): Vec3 {
  const world = directionToWorld(frame, n);
  return { x: -world.x, y: -world.y, z: -world.z };
}

/** What of a piece is an edge of the wood that is left: cut where it enters or leaves part and pockets, each stretch tried. */
function realPieces(solid: Solid, piece: SolidPiece, smooth: boolean): readonly SolidPiece[] {
  const { from, to } = piece;
  const d = { x: to.x - from.x, y: to.y - from.y, z: to.z - from.z };
  const length = Math.sqrt(dot3(d, d));
  if (length < AWAY) return [];
  const ends = (stretches: Stretches): readonly number[] => stretches.flat();
  const places = [
    0,
    1,
    ...ends(lineInPrism(solid.prism, from, d)),
    ...solid.pockets.flatMap((pocket) => ends(lineInPocket(pocket, from, d))),
  ]
    .filter((t) => t >= 0 && t <= 1)
    .sort((a, b) => a - b);
  const at = (t: number): Vec3 => ({ x: from.x + t * d.x, y: from.y + t * d.y, z: from.z + t * d.z });
  return places.slice(1).flatMap((end, i) => {
    const start = places[i]!;
    if ((end - start) * length < AWAY || !isEdge(solid, at((start + end) / 2), d, smooth)) return [];
    return [{ ...piece, from: start === 0 ? from : at(start), to: end === 1 ? to : at(end) }];
  });
}

/** Is there wood round the point on one side only, and not just as on a flat surface? */
function isEdge(solid: Solid, p: Vec3, along: Vec3, smooth: boolean): boolean {
  const helper = Math.abs(along.x) < Math.abs(along.y) ? { x: 1, y: 0, z: 0 } : { x: 0, y: 1, z: 0 };
  const u = unit(cross3(along, helper));
  const v = unit(cross3(along, u));
  const inWood = Array.from({ length: ROUND }, (_, i) => {
    const angle = (2 * Math.PI * (i + 0.37)) / ROUND;
    const [c, s] = [AWAY * Math.cos(angle), AWAY * Math.sin(angle)];
    return isInWood(solid, {
      x: p.x + c * u.x + s * v.x,
      y: p.y + c * u.y + s * v.y,
      z: p.z + c * u.z + s * v.z,
    });
  });
  const changes = inWood.filter((here, i) => here !== inWood[(i + 1) % ROUND]).length;
  const many = inWood.filter((here) => here).length;
  if (changes === 0) return false;
  return smooth || changes > 2 || Math.abs(many - ROUND / 2) > 1;
}

const UP: Vec3 = { x: 0, y: 0, z: 1 };

function isInWood(solid: Solid, p: Vec3): boolean {
  return lineInSolid(solid, p, UP).some(([a, b]) => a < 0 && b > 0);
}

function unit(v: Vec3): Vec3 {
  const length = Math.sqrt(dot3(v, v));
  return { x: v.x / length, y: v.y / length, z: v.z / length };
}
