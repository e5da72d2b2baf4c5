import { middle as halfWay, polygonOutline, vec } from '../../geometry/index.ts';
import type { SketchedPart } from '../../sketch/index.ts';
import type { Caul, GlueStep } from './api.ts';
import { CAUL_THICKNESS, PAST } from './jaw-on.ts';

/** Wedges whose angle (rad) and sizes (mm) differ by less are made alike. */
const SAME_ANGLE = 0.0009;
const SAME_SIZE = 1;

/** The wedges that the clamps of all steps need, alike ones together. */
export function caulsOf(steps: readonly GlueStep[]): readonly Caul[] {
  const kinds: { readonly first: Caul['places'][number]; readonly places: Caul['places'][number][] }[] = [];
  for (const place of steps
    .flatMap(({ groups }) => groups)
    .flatMap(({ clamps }) => clamps)
    .flatMap(({ cauls }) => cauls)) {
    const kind = kinds.find(
      ({ first }) =>
        Math.abs(first.angle - place.angle) < SAME_ANGLE &&
        Math.abs(first.along - place.along) < SAME_SIZE &&
        Math.abs(first.across - place.across) < SAME_SIZE,
    );
    if (kind === undefined) kinds.push({ first: place, places: [place] });
    else kind.places.push(place);
  }
  return kinds.map(({ first, places }, at) => ({
    name: `caul-${at + 1}`,
    angle: first.angle,
    along: first.along + 2 * PAST,
    across: first.across,
    count: places.length,
    places,
  }));
}

/** A caul as a part to make a pattern of: its slope lies on the work, its flat side under the jaw, the grain along it, the thin end up. */
export function caulAsPart({ name, angle, along, across, count }: Caul): SketchedPart {
  const rise = along * Math.tan(angle);
  const a = vec(0, 0);
  const b = vec(CAUL_THICKNESS + rise, 0);
  const c = vec(CAUL_THICKNESS, along);
  const d = vec(0, along);
  const tags = ['end', 'slope', 'tip', 'jaw'].map((id) => ({ id, role: 'sawn' as const }));
  const middle = CAUL_THICKNESS / 2;
  return {
    name,
    label: `Caul ${name.replace(/^\D+/, '')}`,
    region: { outer: polygonOutline([a, b, c, d], tags), holes: [] },
    thickness: across,
    grain: Math.PI / 2,
    up: Math.PI / 2,
    quantity: { left: count, right: 0 },
    corners: [
      { name: 'heel', at: b },
      { name: 'toe', at: c },
    ],
    openings: [],
    joints: [],
    dimensions: [
      { kind: 'length', name: 'jaw', label: 'Under the jaw', from: a, to: d, value: along },
      { kind: 'length', name: 'heel', label: 'Thick end', from: a, to: b, value: CAUL_THICKNESS + rise },
      { kind: 'length', name: 'toe', label: 'Thin end', from: d, to: c, value: CAUL_THICKNESS },
      { kind: 'angle', name: 'slope', label: 'Slope, on the work', at: halfWay(b, c), value: angle },
    ],
    onlySawn: true,
    centreLine: { from: vec(middle, 0), to: vec(middle, along) },
  };
}
