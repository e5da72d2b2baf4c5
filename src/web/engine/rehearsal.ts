import { type Design, lookAtDesign } from '../../design/index.ts';
import { createAhead } from './ahead.ts';
import { ANSWERS } from './answers/index.ts';
import type { AskedQuestion } from './protocol.ts';

/** Changes after which a browser has compiled nearly all that a change runs through. */
const ROUNDS = 40;
/** mm by which each round differs from the one before: nothing of it is known already. */
const STEP = 0.02;

/** Computes what nobody asked for, so that the first changes of a maker are answered as quickly as later ones. */
export interface Rehearsal {
  /** Goes through changes of a design until it has done enough or is stopped; the next time it goes on from there. Nothing is kept of them. */
  readonly go: (design: Design, questions: readonly AskedQuestion[]) => Promise<void>;
  readonly stop: () => void;
}

/** `pause` comes back once messages that wait have been heard. */
export function createRehearsal(pause: () => Promise<void>): Rehearsal {
  let rounds = 0;
  /** Counts what was begun and stopped: only the newest goes on. */
  let turn = 0;
  const ahead = createAhead(pause);
  return {
    go: async (design, questions) => {
      turn += 1;
      const own = turn;
      // Those of the first screens; the others are not fetched for this.
      const first = questions.filter(({ question }) => question in ANSWERS);
      while (rounds < ROUNDS) {
        await pause();
        if (turn !== own) return;
        const changed = changedBy(design, (rounds + 1) * STEP);
        if (changed === undefined) return;
        if ((await ahead.goThrough(changed, first, new Map())) === undefined) return;
        rounds += 1;
      }
    },
    stop: () => {
      turn += 1;
      ahead.stop();
    },
  };
}

/** The design with its longest length a little longer or shorter (mm), within its range; nothing where no length is decided. */
function changedBy(design: Design, by: number): Design | undefined {
  const seen = lookAtDesign(design, [], new Map());
  const form = seen.ok
    ? ANSWERS.form({ design, looked: seen.value, computed: undefined }, undefined)
    : undefined;
  const lengths = (form?.parameters ?? []).flatMap((parameter) => {
    const value = form?.values[parameter.name];
    return parameter.kind === 'length' && typeof value === 'number' ? [{ ...parameter, value }] : [];
  });
  const [longest] = lengths.sort((a, b) => b.value - a.value);
  if (longest === undefined) return undefined;
  const { name, value, most } = longest;
  const typed = `${(value + by <= most ? value + by : value - by).toFixed(2)} mm`;
  return { ...design, parameters: { ...design.parameters, [name]: typed } };
}
