import { signal } from '@preact/signals';
import type { Driver } from '../../design/index.ts';
import { patientDo } from '../engine/patient/patient-do.ts';
import type { Pull } from '../engine/protocol.ts';
import { design } from './current.ts';

/** Which parameters the figures of each picture follow; this hangs on the form and on what is chosen in it, hardly on its figures. */
const known = signal<ReadonlyMap<string, Readonly<Record<string, readonly Driver[]>>>>(new Map());
const asked = new Set<string>();

/** The parameters that the figures of a picture follow, once they are known. */
export function driversOfPicture(of: Pull['of']): Readonly<Record<string, readonly Driver[]>> | undefined {
  const inHand = design.value;
  if (inHand === undefined) return undefined;
  const { form, parameters, measured } = inHand;
  const chosen = Object.values(parameters).filter(
    (typed) => typeof typed !== 'number' && !/\d/.test(String(typed)),
  );
  const key = JSON.stringify([form.name, form.version, of, chosen, Object.keys(measured.parameters ?? {})]);
  const found = known.value.get(key);
  if (found === undefined && !asked.has(key)) {
    asked.add(key);
    void patientDo('drivers', { design: inHand, of }).then(
      (drivers) => {
        known.value = new Map(known.value).set(key, drivers);
      },
      () => asked.delete(key),
    );
  }
  return found;
}
