import type { BuiltBase, PartCut } from '../../base/index.ts';
import { words } from './book-style.ts';

/** How the book calls the pieces, ends and faces of a base. */
export interface BookNames {
  /** Of a made part, by its name: `Side stretcher`. */
  readonly part: (name: string) => string;
  /** Of a placed piece, with its mark: `Leg FL`. */
  readonly piece: (id: string) => string;
  /** What kind of piece a placed one is. */
  readonly kind: (id: string) => string;
  /** Of a cut, by where the part ends there: `lower end, at the leg`. */
  readonly cut: (cut: Pick<PartCut, 'name' | 'cut'>) => string;
  /** Of a face or an end of a part, as joints name it: `end at the leg`, `inner edge`. */
  readonly face: (face: string) => string;
}

const FACES: Readonly<Record<string, string>> = { face: 'face side', back: 'back' };
/** Planes of the room that bases stand in, by the names that forms give them. */
const PLANES: Readonly<Record<string, string>> = { floor: 'floor', underside: 'top' };

export function bookNames({ base, made }: Pick<BuiltBase, 'base' | 'made'>): BookNames {
  const labels = new Map(made.map(({ name, label }) => [name, label]));
  const kinds = new Map(
    made.flatMap(({ label, members }) => members.map(({ part }) => [part, label] as const)),
  );
  const kind = (id: string): string => kinds.get(id) ?? base.parts.find((part) => part.id === id)!.label;
  const planes = new Set(base.parts.flatMap(({ cuts }) => cuts.map(({ name }) => name)));
  // Forms name the planes of a part's faces after the part.
  const places = [...new Map(base.parts.map(({ place, label }) => [place, label.toLowerCase()]))].toSorted(
    ([a], [b]) => b.length - a.length,
  );
  const at = (plane: string): string =>
    PLANES[plane] ??
    places.find(([place]) => plane === place || plane.startsWith(`${place}_`))?.[1] ??
    words(plane);
  return {
    part: (name) => labels.get(name) ?? name,
    piece: (id) => {
      const { mark } = base.parts.find((part) => part.id === id)!;
      return [kind(id).replace(/ \([^)]*\)$/, ''), mark].filter((word) => word !== '').join(' ');
    },
    kind,
    cut: ({ name, cut }) =>
      cut.kind === 'end'
        ? `${cut.end === 'far' ? 'upper' : 'lower'} end, at the ${at(name)}`
        : `along the ${at(name)}`,
    face: (face) => FACES[face] ?? (planes.has(face) ? `end at the ${at(face)}` : `${words(face)} edge`),
  };
}
