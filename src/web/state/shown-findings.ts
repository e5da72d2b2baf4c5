import { computed, effect, signal } from '@preact/signals';
import type { Finding } from '../../core/index.ts';
import { answerOf, progress } from '../engine/engine.ts';
import { currentId } from './current.ts';
import { keyOfFinding } from './key-of-finding.ts';

export interface ShownFinding {
  readonly finding: Finding;
  /** Found before the last change, and not yet looked into anew: what weights and standing tell comes later than the rest. */
  readonly awaited: boolean;
}

const findings = computed(() => (answerOf('findings').value ?? []) as readonly Finding[]);

/** What was found early of the design in hand, and what came later beside it when all was reckoned last. */
let early: ReadonlySet<string> = new Set();
const late = signal<readonly Finding[]>([]);

effect(() => {
  void currentId.value;
  late.value = [];
});

effect(() => {
  const far = progress.value;
  const found = findings.peek();
  if (far === 'settled') early = new Set(found.map(keyOfFinding));
  if (far === 'whole') late.value = found.filter((each) => !early.has(keyOfFinding(each)));
});

/** All findings in view: none goes away for the moment in which it is only waited for. */
export const shownFindings = computed((): readonly ShownFinding[] => {
  const now = findings.value.map((finding) => ({ finding, awaited: false }));
  if (progress.value === 'whole') return now;
  const known = new Set(findings.value.map(keyOfFinding));
  const before = late.value.filter((finding) => !known.has(keyOfFinding(finding)));
  return [...now, ...before.map((finding) => ({ finding, awaited: true }))].toSorted(
    (a, b) => GRAVITY.indexOf(a.finding.severity) - GRAVITY.indexOf(b.finding.severity),
  );
});

const GRAVITY: readonly Finding['severity'][] = ['stop', 'caution', 'note'];
