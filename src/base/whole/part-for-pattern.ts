import {
  angleOf,
  directionAt,
  distance,
  type Edge,
  middle,
  norm,
  pointToWorld,
  polygonOutline,
  type Region,
  subtract,
  type Vec,
  vec,
} from '../../geometry/index.ts';
import type { JointLine, KeyDimension, LayoutMark, SketchedPart } from '../../sketch/index.ts';
import type { Bore, JointWork, Tenon } from '../joints/api.ts';
import { hullOf } from '../joints/hull.ts';
import { pointsRound } from '../joints/points-round.ts';
import type { MadePart } from '../made/api.ts';

/** Ends of face and back nearer to each other than this, mm, are drawn as one line. */
const SAME_LINE = 0.05;

/**
 * A made part as its pattern shows it: with where the back of a bevelled end runs, the outlines of mortises, holes, tenons and pockets
 * (hidden where they do not open on the face side), a centre line for each joint, and the figures by which its ends can be laid out by hand.
 */
export function partForPattern(made: MadePart, labelOf: (joint: string) => string): SketchedPart {
  const { sketch, work } = made;
  return {
    ...sketch,
    layouts: [...backEdges(made), ...work.flatMap((each) => layoutOf(each, labelOf(each.joint)))],
    joints: [...sketch.joints, ...centreLines(work, labelOf)],
    dimensions: [...sketch.dimensions, ...endDimensions(made)],
  };
}

/** The edges that cuts leave on the back, where they lie beside those on the face. */
function backEdges({ back, face, cuts }: MadePart): readonly LayoutMark[] {
  return cuts.flatMap(({ name }) => {
    const [behind, before] = [edgesOfCut(back, name), edgesOfCut(face, name)];
    const isSame = behind.every((edge) =>
      before.some((other) => distance(middleOf(edge), middleOf(other)) < SAME_LINE),
    );
    if (isSame) return [];
    return [{ name: `back ${name}`, label: 'Edge of the back', hidden: true, edges: behind, closed: false }];
  });
}

const edgesOfCut = (regions: readonly Region[], name: string): readonly Edge[] =>
  regions.flatMap(({ outer }) => outer.edges).filter(({ tag }) => tag.id === name);

const middleOf = ({ from, to }: Edge): Vec => middle(from, to);

function layoutOf(work: JointWork, label: string): readonly LayoutMark[] {
  const tag = { id: work.joint, role: 'joint' } as const;
  const mark = (points: readonly Vec[], hidden: boolean): LayoutMark => ({
    name: work.joint,
    label,
    hidden,
    edges: polygonOutline(points, tag).edges,
    closed: true,
  });
  switch (work.kind) {
    case 'mortise':
    case 'hole': {
      const round = pointsRound(work.outline);
      const ends = [0, work.depth].flatMap((z) => round.map((p) => pointToWorld(work.own, { ...p, z })));
      return [mark(hullOf(ends.map(({ x, y }) => vec(x, y))), !opensOnFace(work))];
    }
    case 'tenon': {
      const root = pointsRound(work.outline).map((p) => pointToWorld(work.own, { ...p, z: 0 }));
      const tip = pointsRound(work.outline).map((p) => pointToWorld(work.own, { ...p, z: work.length }));
      return [mark(hullOf([...root, ...tip].map(({ x, y }) => vec(x, y))), true)];
    }
    case 'pocket':
      return work.region.map(({ outer }) => ({
        name: work.joint,
        label,
        hidden: work.fromZ < 0,
        edges: outer.edges,
        closed: true,
      }));
    default:
      return work satisfies never;
  }
}

const opensOnFace = ({ own }: Bore): boolean => own.z.z < -0.9;

/** One centre line a joint: through the middles of what belongs to it, out to a little beyond. */
function centreLines(work: readonly JointWork[], labelOf: (joint: string) => string): readonly JointLine[] {
  const bores = work.filter((each): each is Bore | Tenon => each.kind !== 'pocket');
  return [...new Set(bores.map(({ joint }) => joint))].flatMap((joint) => {
    const own = bores.filter((each) => each.joint === joint);
    const [first] = own;
    if (first === undefined) return [];
    // On the part's plane the drilled line of an edge or end shows at its length, that of the face as a point.
    const depth = first.kind === 'tenon' ? first.length : first.depth;
    const along = norm(first.own.z.x, first.own.z.y) > 0.5;
    const lines = own.map((each) => {
      const far = pointToWorld(each.own, along ? { x: 0, y: 0, z: depth } : { x: 1, y: 0, z: 0 });
      return { from: vec(each.own.origin.x, each.own.origin.y), to: vec(far.x, far.y) };
    });
    if (along) return lines.slice(0, 1).map((ends) => ({ name: joint, label: labelOf(joint), ...ends }));
    const half = (first.kind === 'tenon' ? first.width : first.length) / 2 + 6;
    const [start, end] = [lines[0]!, lines.at(-1)!];
    const way = subtract(start.to, start.from);
    return [
      {
        name: joint,
        label: labelOf(joint),
        from: vec(start.from.x - way.x * half, start.from.y - way.y * half),
        to: vec(end.from.x + way.x * half, end.from.y + way.y * half),
      },
    ];
  });
}

/** From cut to cut along both long sides, corner to corner, and the angle at which each cut meets its neighbour. */
function endDimensions({ face, cuts, sketch }: MadePart): readonly KeyDimension[] {
  const edges = face.flatMap(({ outer }) => outer.edges);
  const names = new Set(cuts.map(({ name }) => name));
  const at = edges.flatMap((edge, i) => (names.has(edge.tag.id) ? [i] : []));
  const angles = at.flatMap((i): readonly KeyDimension[] => {
    const own = edges[i]!;
    const before = edges[(i + edges.length - 1) % edges.length]!;
    if (names.has(before.tag.id)) return [];
    const incoming = directionAt(before, 1);
    const outgoing = directionAt(own, 0);
    const value = Math.PI - turnBetween(incoming, outgoing);
    return [
      {
        kind: 'angle',
        name: `${own.tag.id} angle`,
        label: `${capital(own.tag.id)} to the edge`,
        at: own.from,
        value,
      },
    ];
  });
  const sides = at.flatMap((i, k): readonly KeyDimension[] => {
    const next = at[(k + 1) % at.length]!;
    const [from, to] = [edges[i]!.to, edges[next]!.from];
    if (next === i || distance(from, to) < 1) return [];
    const label =
      at.length === 2
        ? `Corner to corner, ${k === 0 ? 'one' : 'other'} edge`
        : `${capital(edges[i]!.tag.id)} to ${edges[next]!.tag.id.replaceAll('_', ' ')}`;
    return [{ kind: 'length', name: `side ${k + 1}`, label, from, to, value: distance(from, to) }];
  });
  const taken = new Set(sketch.dimensions.map(({ name }) => name));
  return eachNamed([...sides, ...angles]).filter(({ name }) => !taken.has(name));
}

/** A cut that leaves two feet has two angles: the second is numbered. */
function eachNamed(dimensions: readonly KeyDimension[]): readonly KeyDimension[] {
  return dimensions.map((each, at) => {
    const before = dimensions.slice(0, at).filter(({ name }) => name === each.name).length;
    return before === 0 ? each : { ...each, name: `${each.name} ${before + 1}` };
  });
}

/** rad, anticlockwise positive. */
function turnBetween(a: Vec, b: Vec): number {
  const turn = angleOf(b) - angleOf(a);
  return Math.atan2(Math.sin(turn), Math.cos(turn));
}

const capital = (name: string): string => {
  const words = name.replaceAll('_', ' ');
  return words.charAt(0).toUpperCase() + words.slice(1);
};
