import type { Severity } from '../../core/index.ts';
import { CAMERAS, type Mark, pictorialOf, type Scene } from '../../drawing/index.ts';
import {
  boundsOfEdges,
  boundsOfRegions,
  joinBoxes,
  moveBy,
  type Region,
  transformRegion,
  turnBy,
} from '../../geometry/index.ts';
import { compute } from '../compute.ts';
import type { Computed } from '../computed.ts';
import type { Design } from '../design-schema.ts';
import type { Memo } from '../memo.ts';

/** A design of a study, looked at: small enough to lay beside many others. */
export type StudyLook =
  | {
      readonly kind: 'made';
      /** The base from the front, or the outlines of the parts as they stand; mm, all of a study to one scale. */
      readonly scene: Scene;
      /** How many findings of each kind. */
      readonly findings: Readonly<Record<Severity, number>>;
      /** The gravest, in words. */
      readonly gravest?: string;
    }
  /** Figures of which nothing can be made, and why. */
  | { readonly kind: 'unusable'; readonly why: string };

/** Room between parts laid side by side, as a share of the widest. */
const BETWEEN = 0.15;

/** Computes one design of a study as far as its picture and its findings; how it weighs and stands is left out, which takes longest. */
export function lookAtCell(design: Design, memo: Memo = new Map()): StudyLook {
  const computed = compute(design, { memo, wanted: { patterns: [], standing: false } });
  if (!computed.ok) return { kind: 'unusable', why: computed.problems[0]?.message ?? '' };
  const { findings } = computed.value;
  const count = (severity: Severity): number => findings.filter((each) => each.severity === severity).length;
  const [gravest] = findings.filter(({ severity }) => severity !== 'note');
  return {
    kind: 'made',
    scene: sceneOf(computed.value),
    findings: { stop: count('stop'), caution: count('caution'), note: count('note') },
    ...(gravest === undefined ? {} : { gravest: gravest.message }),
  };
}

const LINE = { kind: 'path', role: 'visible' } as const;

function sceneOf({ base, parts }: Computed): Scene {
  const marks =
    base === undefined
      ? sideBySide(parts.map(({ part }) => transformRegion(part.region, turnBy(Math.PI / 2 - part.up))))
      : pictorialOf(base.base.parts, CAMERAS.front).view.lines.map(
          ({ edges }): Mark => ({ ...LINE, edges, closed: false }),
        );
  const boxes = marks.flatMap((mark) => (mark.kind === 'path' ? [boundsOfEdges(mark.edges)] : []));
  return { marks, box: boxes.reduce(joinBoxes) };
}

function sideBySide(regions: readonly Region[]): readonly Mark[] {
  const widest = Math.max(...regions.map((region) => widthOf(region)));
  let left = 0;
  return regions.flatMap((region) => {
    const { minX } = boundsOfRegions([region]);
    const moved = transformRegion(region, moveBy(left - minX, 0));
    left += widthOf(region) + BETWEEN * widest;
    return [moved.outer, ...moved.holes].map(({ edges }): Mark => ({ ...LINE, edges, closed: true }));
  });
}

function widthOf(region: Region): number {
  const { minX, maxX } = boundsOfRegions([region]);
  return maxX - minX;
}
