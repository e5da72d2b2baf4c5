import {
  ClampToEdgeWrapping,
  LinearMipmapLinearFilter,
  MeshLambertMaterial,
  SRGBColorSpace,
  Texture,
} from 'three';
import { matrix2d, type Projection } from '../../geometry/index.ts';
import type { LeafFace } from '../../wood/index.ts';
import type { BoardPicture } from '../photographs/photo-protocol.ts';

/** A figure that a face of a piece carries. */
export interface FigureInSpace {
  readonly piece: string;
  readonly face: LeafFace;
  readonly picture: BoardPicture;
  /** From the piece's own plane to the picture, whose whole width and height are 1. */
  readonly toPicture: Projection;
}

/** Texels along a texture that all graphics hardware takes. */
const LONGEST = 4096;
/** Seen slantwise a figure stays sharp by so many samples. */
const SAMPLES = 8;

/** Faces lie a hair behind the edges that bound them, so that these are drawn whole. */
export const BEHIND_EDGES = { polygonOffset: true, polygonOffsetFactor: 1, polygonOffsetUnits: 1 };

/** Textures of boards, each sent to the graphics hardware once however many faces carry it. */
export function createTextures() {
  const known = new Map<BoardPicture, Texture>();
  const textureOf = (picture: BoardPicture): Texture => {
    const before = known.get(picture);
    if (before !== undefined) return before;
    const bitmap = picture.levels.find(({ width }) => width <= LONGEST) ?? picture.levels.at(-1)!;
    const texture = new Texture(bitmap);
    // The picture's first row is its v = 0.
    texture.flipY = false;
    texture.colorSpace = SRGBColorSpace;
    texture.wrapS = ClampToEdgeWrapping;
    texture.wrapT = ClampToEdgeWrapping;
    texture.minFilter = LinearMipmapLinearFilter;
    texture.anisotropy = SAMPLES;
    texture.needsUpdate = true;
    known.set(picture, texture);
    return texture;
  };
  return {
    materialOf: ({ picture, toPicture }: FigureInSpace, name: string): MeshLambertMaterial => {
      const texture = textureOf(picture);
      const map = texture.clone();
      const [a, b, c, d, e, f] = matrix2d(toPicture);
      // Ready as the first one is: its picture is not sent again.
      map.version = texture.version;
      map.matrixAutoUpdate = false;
      map.matrix.set(a, c, e, b, d, f, 0, 0, 1);
      const material = new MeshLambertMaterial({ map, ...BEHIND_EDGES });
      material.name = name;
      material.addEventListener('dispose', () => map.dispose());
      return material;
    },
    /** Lets go of the textures of all other boards. */
    keep: (pictures: readonly BoardPicture[]): void => {
      for (const [picture, texture] of known) {
        if (pictures.includes(picture)) continue;
        texture.dispose();
        known.delete(picture);
      }
    },
  };
}
