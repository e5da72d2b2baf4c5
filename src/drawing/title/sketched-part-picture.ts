import type { KeyDimension, SketchedPart } from '../../sketch/index.ts';
import type { Dimension } from '../dimension/api.ts';
import { edgesOf } from '../layout/edges-of.ts';
import { writeAngle } from '../layout/figures.ts';
import type { LineDrawing, PictureLine } from './picture.ts';

/** A part as its form draws it, square to its face, with the figures that the form names and the radii of its arcs. */
export function sketchedPartPicture(part: SketchedPart): LineDrawing {
  const { region, joints, centreLine, dimensions } = part;
  const tag = { id: 'middle', role: 'left' } as const;
  const axes: readonly PictureLine[] = [centreLine, ...joints].map(({ from, to }) => ({
    role: 'axis',
    edges: [{ kind: 'line', from, to, tag }],
    past: 3,
  }));
  // Each edge for itself, so that it can be pointed at.
  const outline = edgesOf([region]).map((edge): PictureLine => ({ role: 'part', edges: [edge] }));
  return { lines: [...axes, ...outline], dimensions: dimensions.map((each) => dimensionOf(each, part)) };
}

function dimensionOf(key: KeyDimension, { region }: SketchedPart): Dimension {
  switch (key.kind) {
    case 'length': {
      const { name, from, to, along } = key;
      return { kind: 'length', name, from, to, ...(along === undefined ? {} : { along }) };
    }
    case 'angle':
      return { kind: 'note', name: key.name, at: key.at, words: writeAngle(key.value) };
    case 'radius': {
      const arc = edgesOf([region]).find(({ kind, tag }) => kind === 'arc' && tag.id === key.edge);
      const centre = arc?.kind === 'arc' ? arc.centre : { x: key.at.x - key.value, y: key.at.y };
      return { kind: 'radius', name: key.name, centre, at: key.at };
    }
    default:
      return key satisfies never;
  }
}
