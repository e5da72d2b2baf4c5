import type { Severity } from '../../core/index.ts';
import type { Scene } from '../../drawing/index.ts';
import { compute } from '../compute.ts';
import type { Design } from '../design-schema.ts';
import type { Memo } from '../memo.ts';
import { type SmallSide, smallPicture } from './small-picture.ts';

/** A design of a study, looked at: small enough to lay beside many others. */
export type StudyLook =
  | {
      readonly kind: 'made';
      /** mm */
      readonly scene: Scene;
      /** How many findings of each kind. */
      readonly findings: Readonly<Record<Severity, number>>;
      /** The gravest, in words. */
      readonly gravest?: string;
    }
  /** Figures of which nothing can be made, and why. */
  | { readonly kind: 'unusable'; readonly why: string };

/** Computes one design of a study as far as its picture and its findings; how it weighs and stands is left out, which takes longest. */
export function lookAtCell(design: Design, side: SmallSide, memo: Memo = new Map()): StudyLook {
  const computed = compute(design, { memo, wanted: { patterns: [], standing: false } });
  if (!computed.ok) return { kind: 'unusable', why: computed.problems[0]?.message ?? '' };
  const { findings } = computed.value;
  const count = (severity: Severity): number => findings.filter((each) => each.severity === severity).length;
  const [gravest] = findings.filter(({ severity }) => severity !== 'note');
  return {
    kind: 'made',
    scene: smallPicture(computed.value, side),
    findings: { stop: count('stop'), caution: count('caution'), note: count('note') },
    ...(gravest === undefined ? {} : { gravest: gravest.message }),
  };
}
