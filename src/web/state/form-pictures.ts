import { type Signal, signal } from '@preact/signals';
import { patientDo } from '../engine/patient/patient-do.ts';
import type { Thumbnail } from '../store/database.ts';

const pictures = new Map<string, Signal<Thumbnail | undefined>>();

/** The picture of a form at its defaults; made once, beside everything else, and empty until then. */
export function pictureOfForm(form: string): Signal<Thumbnail | undefined> {
  const known = pictures.get(form);
  if (known !== undefined) return known;
  const picture = signal<Thumbnail>();
  pictures.set(form, picture);
  void patientDo('formPicture', form).then((made) => {
    picture.value = made;
  });
  return picture;
}
