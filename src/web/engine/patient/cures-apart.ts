import type { Design } from '../../../design/index.ts';
import type { FromPatient, PatientOutcome, ToPatient } from './deeds.ts';

type Found = PatientOutcome<'cautionCures'>;

let busy: Worker | undefined;

/**
 * Figures against cautions, sought in a worker of their own: what is drawn and weighed next never waits for them. A search that a
 * change has overtaken is broken off, and then finds nothing.
 */
export function curesApart(design: Design): Promise<Found> {
  stopCures();
  const own = new Worker(new URL('./patient-worker.ts', import.meta.url), { type: 'module', name: 'cures' });
  busy = own;
  return new Promise((done) => {
    const end = (found: Found): void => {
      own.terminate();
      if (busy === own) busy = undefined;
      done(found);
    };
    own.addEventListener('message', ({ data }: MessageEvent<FromPatient>) => {
      if (data.share === undefined) end(data.fault === undefined ? (data.outcome as Found) : {});
    });
    own.addEventListener('error', () => end({}));
    own.postMessage({ id: 0, deed: 'cautionCures', input: design } satisfies ToPatient);
  });
}

/** Breaks off what is sought; false when nothing was. */
export function stopCures(): boolean {
  const wasBusy = busy !== undefined;
  busy?.terminate();
  busy = undefined;
  return wasBusy;
}
