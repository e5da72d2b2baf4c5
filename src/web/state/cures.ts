import { effect, signal } from '@preact/signals';
import type { FigureToSet } from '../../core/index.ts';
import { answerOf, foresee, problems, progress } from '../engine/engine.ts';
import { patientDo } from '../engine/patient/patient-do.ts';
import { change, design } from './current.ts';
import type { Edit } from './history/edit.ts';

/** Figures that cure what is wrong, by `keyOfFinding` or, of problems, by their message; sought once the design is at rest. */
export const cures = signal<Readonly<Record<string, FigureToSet>>>({});

effect(() => {
  const inHand = design.value;
  const isAtRest = progress.value !== 'reckoning';
  const findings = (answerOf('findings').value ?? []) as readonly { readonly severity: string }[];
  const isWrong = problems.value.length > 0 || findings.some(({ severity }) => severity === 'stop');
  if (inHand === undefined || !isAtRest || !isWrong) return;
  void seek(inHand);
});

let sought: unknown;

async function seek(inHand: NonNullable<typeof design.value>): Promise<void> {
  if (sought === inHand) return;
  sought = inHand;
  const found = await patientDo('cures', inHand).catch(() => ({}));
  if (design.peek() === inHand) cures.value = found;
}

/** Sets the figure that cures. */
export function takeCure(cure: FigureToSet): void {
  change(cure.words, editsOf(cure));
}

/** A maker is about to take it. */
export function foreseeCure(cure: FigureToSet): void {
  foresee(editsOf(cure));
}

function editsOf({ path, value }: FigureToSet): readonly Edit[] {
  const [section, ...names] = path.split('.');
  return [{ path: [section!, names.join('.')], to: value }];
}
