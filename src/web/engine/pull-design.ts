import {
  type Design,
  designAfterPull,
  type HeldHandle,
  holdHandle,
  pullHeld,
  settleHeld,
} from '../../design/index.ts';
import { CAMERAS } from '../../drawing/index.ts';
import { describeForm } from '../../sketch/index.ts';
import { known } from './known.ts';
import type { Pull, PulledTo } from './protocol.ts';

/** Pulls handles one after the other; what is held stays held while the same design is pulled by the same point. */
export interface Puller {
  readonly pull: (
    design: Design,
    pull: Pull,
  ) => { readonly design: Design; readonly to: PulledTo } | undefined;
}

export function createPuller(): Puller {
  let held: HeldHandle | undefined;
  let key = '';
  return {
    pull: (design, { handle, of, to, end }) => {
      const now = `${handle} ${JSON.stringify([design.parameters, design.measured, design.form.name])}`;
      if (now !== key) {
        const taken = holdHandle(design, handle, known);
        held = taken.ok ? taken.value : undefined;
        key = now;
      }
      if (held === undefined) return undefined;
      const seen = 'side' in of ? CAMERAS[of.side] : undefined;
      const free = pullHeld(held, to, seen);
      const led = free !== undefined && end ? settleHeld(held, free, to, seen) : free;
      if (led === undefined) return undefined;
      const after = designAfterPull(held, led);
      return { design: after, to: toldOf(held, after, led) };
    },
  };
}

function toldOf(
  { grip }: HeldHandle,
  { parameters }: Design,
  { reached, kept }: NonNullable<ReturnType<typeof pullHeld>>,
): PulledTo {
  const labels = new Map(describeForm(grip.form).parameters.map(({ name, label }) => [name, label]));
  return {
    parameters: Object.fromEntries(
      grip.movers.flatMap(({ name }) =>
        parameters[name] === undefined ? [] : [[name, parameters[name]] as const],
      ),
    ),
    reached,
    kept: [...kept.parameters.map((name) => labels.get(name) ?? name), ...kept.checks],
  };
}
