import type { Finding } from '../../core/index.ts';
import {
  heightOver,
  nearestOnEdges,
  type Plane3,
  planeToWorld,
  pointToWorld,
  type Region,
  type Vec3,
} from '../../geometry/index.ts';
import { formatLength, type LengthStyle } from '../../measure/index.ts';
import type { Cut, PlacedPart, StandingBase } from '../api.ts';

/** A misfit below this, mm, is not worth a word: what a sharp plane takes in one pass. */
const LEAST_MISFIT = 0.1;

/** A base in which parts cut already keep the shape they were cut to, and what that does to it. */
export interface KeptBase {
  readonly base: StandingBase;
  readonly findings: readonly Finding[];
}

/**
 * The base as it is decided now, with the parts that are cut already as they were cut: each stands where the form now puts it, with the
 * outline, thickness and ends it was given by the base as it was decided `then`. Says where such a part is now too short, could be
 * cut again, or has another shape than the form would now give it. `cut` names parts of the form.
 */
export function keepCutParts(
  now: StandingBase,
  then: ReadonlyMap<string, StandingBase>,
  lengths: LengthStyle,
): KeptBase {
  const findings: Finding[] = [];
  const said = new Set<string>();
  const parts = now.parts.map((part): PlacedPart => {
    const before = then.get(part.drawn.name)?.parts.find(({ id }) => id === part.id);
    if (before === undefined) return part;
    const kept: PlacedPart = { ...before, frame: part.frame, mark: part.mark };
    for (const finding of [...endsOff(kept, part, lengths), ...shapeOff(kept, part, lengths)]) {
      const key = `${finding.code} ${finding.part} ${finding.message}`;
      if (!said.has(key)) findings.push(finding);
      said.add(key);
    }
    return kept;
  });
  return { base: { ...now, parts }, findings };
}

function endsOff(kept: PlacedPart, wanted: PlacedPart, lengths: LengthStyle): readonly Finding[] {
  return kept.cuts.flatMap((cut): readonly Finding[] => {
    const now = wanted.cuts.find(({ name }) => name === cut.name);
    if (now === undefined) return [];
    const off = farthestOff(kept, cut, planeToWorld(wanted.frame, now.plane));
    if (Math.abs(off) < LEAST_MISFIT) return [];
    const by = formatLength(Math.abs(off), lengths);
    const facts = {
      part: kept.drawn.name,
      edges: [cut.name],
      measured: { value: Math.abs(off), unit: 'mm' },
      limit: { value: LEAST_MISFIT, unit: 'mm' },
    } as const;
    return off < 0
      ? [
          {
            ...facts,
            code: 'base.cut-too-short',
            severity: 'stop',
            message: `${kept.label} is cut already and ends ${by} short of ${cut.name}.`,
            cure: `Make a new one, or go back to the figures it was cut to.`,
          },
        ]
      : [
          {
            ...facts,
            code: 'base.cut-again',
            severity: 'caution',
            message: `${kept.label} is cut already and stands ${by} over ${cut.name}.`,
            cure: `Cut its end again to the setting now given, then say anew that it is cut.`,
          },
        ];
  });
}

/** How far the cut's own section stands out of the plane now wanted, mm, at its farthest; less than 0 where it falls short. */
function farthestOff(kept: PlacedPart, cut: Cut, plane: Plane3): number {
  const corners = [
    ...cornersOf(kept.face, cut.name, 0),
    ...cornersOf(kept.back, cut.name, -kept.drawn.thickness),
  ].map((p) => heightOver(plane, pointToWorld(kept.frame, p)));
  if (corners.length === 0) return 0;
  const [least, most] = [Math.min(...corners), Math.max(...corners)];
  return -least > most ? least : most;
}

function cornersOf(regions: readonly Region[], name: string, z: number): readonly Vec3[] {
  return regions
    .flatMap(({ outer }) => outer.edges)
    .filter(({ tag }) => tag.id === name)
    .flatMap(({ from, to }) => [
      { ...from, z },
      { ...to, z },
    ]);
}

/** Where the form would now draw the part otherwise. */
function shapeOff(kept: PlacedPart, wanted: PlacedPart, lengths: LengthStyle): readonly Finding[] {
  const facts = { part: kept.drawn.name, edges: [], limit: { value: LEAST_MISFIT, unit: 'mm' } } as const;
  const thinner = kept.drawn.thickness - wanted.drawn.thickness;
  const thickness: readonly Finding[] =
    Math.abs(thinner) < LEAST_MISFIT
      ? []
      : [
          {
            ...facts,
            code: 'base.cut-thickness',
            severity: 'caution',
            measured: { value: Math.abs(thinner), unit: 'mm' },
            message: `${kept.label} is cut already and is ${formatLength(kept.drawn.thickness, lengths)} thick; the form now asks for ${formatLength(wanted.drawn.thickness, lengths)}.`,
            cure: 'Type the thickness that it has as measured.',
          },
        ];
  // Its own ends are where they were cut: only the edges between them are drawn by the form.
  const ends = new Set(kept.cuts.map(({ name }) => name));
  const drawn = kept.face.flatMap(({ outer }) => outer.edges).filter(({ tag }) => !ends.has(tag.id));
  const off = Math.max(
    0,
    ...drawn.flatMap(({ from, to }) => [from, to].map((p) => offOutline(p, wanted.drawn.region))),
  );
  if (off < LEAST_MISFIT) return thickness;
  return [
    ...thickness,
    {
      ...facts,
      code: 'base.cut-shape',
      severity: 'caution',
      measured: { value: off, unit: 'mm' },
      message: `${kept.label} is cut already; the form would now draw its edges up to ${formatLength(off, lengths)} elsewhere. It stays as it was cut.`,
      cure: 'Go back to the figures it was cut to where the difference shows.',
    },
  ];
}

const offOutline = (p: Region['outer']['edges'][number]['from'], region: Region): number =>
  nearestOnEdges(region.outer.edges, p).distance;
