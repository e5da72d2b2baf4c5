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
  { values, reached, kept }: NonNullable<ReturnType<typeof pullHeld>>,
): PulledTo {
  const described = describeForm(grip.form).parameters;
  /** Which end of its range a parameter has come to; by its label where several follow. */
  const sayEnd = (called: string): string => {
    const parameter = described.find(({ name }) => name === called);
    if (parameter === undefined || !('least' in parameter)) return called;
    const { label, least, most } = parameter;
    const isLeast = (values[called] as number) - least < most - (values[called] as number);
    const end = `${parameters[called] ?? label} is the ${isLeast ? 'least' : 'most'}`;
    return grip.movers.length === 1 ? end : `${label}: ${end}`;
  };
  return {
    parameters: Object.fromEntries(
      grip.movers.flatMap(({ name }) =>
        parameters[name] === undefined ? [] : [[name, parameters[name]] as const],
      ),
    ),
    reached,
    kept: [...kept.parameters.map(sayEnd), ...kept.checks],
  };
}
