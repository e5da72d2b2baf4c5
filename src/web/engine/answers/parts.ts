import { angleOf, distance, type Edge, lengthOf, subtract } from '../../../geometry/index.ts';
import type { SketchedPart } from '../../../sketch/index.ts';
import { type Answering, madeOf } from './answering.ts';

/** An edge of a part, as one would measure it. */
export interface ListedEdge {
  readonly name: string;
  /** mm along it. */
  readonly length: number;
  /** mm, of an arc. */
  readonly radius?: number;
  /** rad between a straight edge and what is upright once the part stands, 0 to 90°. */
  readonly lean?: number;
}

/** A part that is made, for lists: its patterns, routing and findings go by its name. */
export interface ListedPart {
  readonly name: string;
  readonly label: string;
  readonly count: number;
  /** Where it stands in the base, as marked; empty for forms of parts alone. */
  readonly marks: readonly string[];
  /** The same places by the identity that lines of views carry. */
  readonly placed: readonly string[];
  readonly edges: readonly ListedEdge[];
}

export function parts({ computed }: Answering, _: undefined): readonly ListedPart[] | undefined {
  if (computed === undefined) return undefined;
  return madeOf(computed.parts, 'parts', () =>
    computed.parts.map(({ part }) => {
      const made = computed.base?.made.find(({ name }) => name === part.name);
      const count = part.quantity.left + part.quantity.right;
      const marks = made?.members.map(({ mark }) => mark).filter((mark) => mark !== '') ?? [];
      const placed = made?.members.map((member) => member.part) ?? [];
      return { name: part.name, label: part.label, count, marks, placed, edges: edgesOf(part) };
    }),
  );
}

/** Edges by their names; a curve of many arcs is one edge. */
function edgesOf({ region, up }: SketchedPart): readonly ListedEdge[] {
  const byName = new Map<string, Edge[]>();
  for (const edge of [region.outer, ...region.holes].flatMap(({ edges }) => edges)) {
    byName.set(edge.tag.id, [...(byName.get(edge.tag.id) ?? []), edge]);
  }
  return [...byName].map(([name, edges]) => {
    const length = edges.reduce((sum, edge) => sum + lengthOf(edge), 0);
    const [first] = edges;
    if (edges.length > 1 || first === undefined) return { name, length };
    if (first.kind === 'arc') return { name, length, radius: first.radius };
    if (distance(first.from, first.to) === 0) return { name, length };
    return { name, length, lean: leanOf(angleOf(subtract(first.to, first.from)) - up) };
  });
}

/** An angle between two lines without direction, 0 to 90°. */
function leanOf(turn: number): number {
  return Math.acos(Math.min(1, Math.abs(Math.cos(turn))));
}
