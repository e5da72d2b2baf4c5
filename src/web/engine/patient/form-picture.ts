import { compute, smallPicture } from '../../../design/index.ts';
import type { Thumbnail } from '../../store/database.ts';
import { beginDesign } from '../deeds/forms.ts';
import { known } from '../known.ts';
import { thumbnailOf } from '../thumbnail-of.ts';

/** What comes of a form of the program at its defaults. Throws where there is no such form. */
export function formPicture(form: string): Thumbnail {
  const design = beginDesign({ form, name: form, unit: 'mm', date: '' });
  const computed = compute(design, { memo: known, wanted: { patterns: [], standing: false } });
  if (!computed.ok) throw new RangeError(`${form} cannot be made at its defaults`);
  return thumbnailOf(smallPicture(computed.value, 'room'));
}
