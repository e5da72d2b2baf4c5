import type { OutlineSpec, PartSpec } from '../schema/construction.ts';
import type { FormData } from '../schema/form.ts';
import { edgeName } from './outline-names.ts';
import { own } from './own.ts';

/** What can be called a flat face of a part: its two faces, its straight edges and its chamfers, those of its openings as well. */
export function flatFacesOf(part: PartSpec, data: FormData): readonly string[] {
  const outline = own(data.outlines, part.outline.text);
  const openings = (part.openings ?? []).flatMap(({ text }) => {
    const opening = own(data.openings, text);
    if (opening === undefined || 'circle' in opening) return [];
    if ('slot' in opening) return [`${text}.left`, `${text}.right`];
    const drawn = own(data.outlines, opening.outline.text);
    return drawn === undefined ? [] : flatEdgesOf(drawn).map((edge) => `${text}.${edge}`);
  });
  return ['face', 'back', ...(outline === undefined ? [] : flatEdgesOf(outline)), ...openings];
}

function flatEdgesOf(outline: OutlineSpec): readonly string[] {
  const edges = outline.edges.filter((edge) => 'line' in edge).map((edge) => edgeName(edge).text);
  const chamfers = Object.entries(outline.corners ?? {}).flatMap(([name, corner]) =>
    'chamfer' in corner ? [name] : [],
  );
  const names = [...edges, ...chamfers];
  const suffix = outline.mirror?.suffix.text;
  return suffix === undefined ? names : [...names, ...names.map((name) => `${name}_${suffix}`)];
}
