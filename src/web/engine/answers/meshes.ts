import { meshesOfBase, type PartMesh } from '../../../base/index.ts';
import { type FacedMesh, facesOfMesh } from '../../../wood/index.ts';
import { type Answering, madeOf } from './answering.ts';

export interface MeshesInHand {
  /** `name` is that of the part as it is made; `mark` where it stands. */
  readonly parts: readonly (PartMesh & FacedMesh & { readonly name: string; readonly mark: string })[];
  /** The top that the base carries: mm, its underside at `under`. */
  readonly top: {
    readonly round: boolean;
    readonly length: number;
    readonly width: number;
    readonly thickness: number;
    readonly under: number;
  };
}

/** The base in space as triangles; nothing for parts alone, and nothing before solids are loaded. */
export function meshes({ computed, solids }: Answering, _: undefined): MeshesInHand | undefined {
  const built = computed?.base;
  if (built === undefined || solids === undefined) return undefined;
  return madeOf(built, 'meshes', () => {
    const memberOf = new Map(
      built.made.flatMap(({ name, members }) =>
        members.map(({ part, mark }) => [part, { name, mark }] as const),
      ),
    );
    const thick = new Map(built.base.parts.map(({ id, drawn }) => [id, drawn.thickness]));
    const { shape, length, width, thickness, level } = built.base.top;
    return {
      parts: meshesOfBase(solids, built).map((mesh) => ({
        ...mesh,
        ...facesOfMesh(mesh, thick.get(mesh.part) ?? 0),
        ...(memberOf.get(mesh.part) ?? { name: mesh.part, mark: '' }),
      })),
      top: { round: shape === 'round', length, width, thickness, under: level },
    };
  });
}
