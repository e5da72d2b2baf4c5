import { isScalar, type Tree } from './source/place.ts';
import { readTree } from './source/read-tree.ts';

/** What a form says of itself before anything else. */
export interface FormHead {
  readonly title: string;
  readonly about: string;
}

const BODY = /^parameters\s*:/m;

/** Title and description of a sound form, without reading the rest: for a list of many. Nothing where its text does not begin with them. */
export function headOfForm(text: string): FormHead | undefined {
  const head = readTree(text.slice(0, BODY.exec(text)?.index), 'form');
  if (!head.ok) return undefined;
  const { title, about } = head.value.tree as Partial<Record<string, Tree>>;
  return isScalar(title) && isScalar(about) ? { title: title.text, about: about.text } : undefined;
}
