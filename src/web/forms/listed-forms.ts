import { compute, smallPicture } from '../../design/index.ts';
import { describeForm, isBaseForm } from '../../sketch/index.ts';
import { beginDesign, formNamed } from '../engine/deeds/forms.ts';
import { FORM_TEXTS } from '../engine/forms.ts';
import { thumbnailOf } from '../engine/thumbnail-of.ts';
import type { Thumbnail } from '../store/database.ts';

/** A form that comes with the program. */
export interface ListedForm {
  readonly name: string;
  readonly title: string;
  readonly about: string;
  /** Does it place its parts in space? */
  readonly isBase: boolean;
  /** What comes of it at its defaults. */
  readonly picture: Thumbnail;
}

/** The forms that come with the program, whole bases first, then parts: made when the app is built, so that the page has them at once. */
export function listedForms(): readonly ListedForm[] {
  return [...FORM_TEXTS]
    .map(([name, text]): ListedForm => {
      const { title, about } = describeForm(formNamed(name));
      return { name, title, about, isBase: isBaseForm(text), picture: pictureOf(name) };
    })
    .toSorted((a, b) => Number(b.isBase) - Number(a.isBase) || a.title.localeCompare(b.title));
}

function pictureOf(form: string): Thumbnail {
  const design = beginDesign({ form, name: form, unit: 'mm', date: '2000-01-01' });
  const computed = compute(design, { wanted: { patterns: [], standing: false } });
  if (!computed.ok) throw new RangeError(`${form} cannot be made at its defaults`);
  return thumbnailOf(smallPicture(computed.value, 'room'));
}
