import type { FromPatient, PatientDeed, PatientInput, PatientOutcome, ToPatient } from './deeds.ts';

interface Waiting {
  readonly done: (outcome: never) => void;
  readonly fail: (cause: Error) => void;
  readonly hear: ((share: number) => void) | undefined;
}

let worker: Worker | undefined;
let asked = 0;
const waiting = new Map<number, Waiting>();

/** A second engine for what takes many computations: it never keeps the drawing waiting. Begun when first needed. */
function patient(): Worker {
  if (worker !== undefined) return worker;
  const own = new Worker(new URL('./patient-worker.ts', import.meta.url), {
    type: 'module',
    name: 'patient',
  });
  own.addEventListener('message', ({ data }: MessageEvent<FromPatient>) => {
    const { id, share, outcome, fault } = data;
    if (share !== undefined) {
      waiting.get(id)?.hear?.(share);
      return;
    }
    if (fault === undefined) waiting.get(id)?.done(outcome as never);
    else waiting.get(id)?.fail(new Error(fault));
    waiting.delete(id);
  });
  worker = own;
  return own;
}

/** Has something done that takes many computations. `hear` is told how much of it is done, where that is known. Rejects on a fault of the program. */
export function patientDo<D extends PatientDeed>(
  deed: D,
  input: PatientInput<D>,
  hear?: (share: number) => void,
): Promise<PatientOutcome<D>> {
  asked += 1;
  const id = asked;
  patient().postMessage({ id, deed, input } satisfies ToPatient);
  return new Promise((done, fail) => waiting.set(id, { done, fail, hear }));
}
