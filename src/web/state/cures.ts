import { effect, signal } from '@preact/signals';
import type { FigureToSet } from '../../core/index.ts';
import type { Design } from '../../design/index.ts';
import { answerOf, foresee, problems, progress } from '../engine/engine.ts';
import { curesApart, stopCures } from '../engine/patient/cures-apart.ts';
import { patientDo } from '../engine/patient/patient-do.ts';
import { change, design } from './current.ts';
import type { Edit } from './history/edit.ts';

/** Figures that cure what is wrong, by `keyOfFinding` or, of problems, by their message; sought once the design is at rest, and against cautions once all of it is reckoned. */
export const cures = signal<Readonly<Record<string, FigureToSet>>>({});

/** The design that cures were sought for last. */
let sought: unknown;

/** ms without a key or a press before cures of cautions are sought: it takes a whole core for seconds. */
const STILL = 4000;
let still: ReturnType<typeof setTimeout> | undefined;
/** The design whose cautions are to be cured once the maker is still. */
let cautioned: Design | undefined;

function cureCautionsSoon(inHand: Design | undefined): void {
  clearTimeout(still);
  cautioned = inHand;
  if (inHand !== undefined) still = setTimeout(() => void seek(inHand, curesApart), STILL);
}

for (const kind of ['keydown', 'pointerdown'] as const) {
  addEventListener(
    kind,
    () => {
      if (cautioned === undefined) return;
      if (stopCures()) sought = undefined;
      if (sought !== cautioned) cureCautionsSoon(cautioned);
    },
    { capture: true, passive: true },
  );
}

effect(() => {
  const inHand = design.value;
  const isAtRest = progress.value !== 'reckoning';
  const findings = (answerOf('findings').value ?? []) as readonly { readonly severity: string }[];
  const isWrong = problems.value.length > 0 || findings.some(({ severity }) => severity === 'stop');
  if (inHand !== sought) stopCures();
  if (inHand !== cautioned) cureCautionsSoon(undefined);
  if (inHand === undefined || !isAtRest) return;
  if (isWrong) void seek(inHand, (from) => patientDo('cures', from));
  else if (progress.value === 'whole' && findings.some(({ severity }) => severity === 'caution'))
    cureCautionsSoon(inHand);
});

async function seek(
  inHand: Design,
  find: (from: Design) => Promise<Readonly<Record<string, FigureToSet>>>,
): Promise<void> {
  if (sought === inHand) return;
  sought = inHand;
  const found = await find(inHand).catch(() => ({}));
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
  // Names of parameters may hold points; those of tools lead downwards.
  const within = section === 'tooling' ? names : [names.join('.')];
  return [{ path: [section!, ...within], to: value }];
}
