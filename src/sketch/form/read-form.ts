import { fail, ok, type Result } from '../../core/index.ts';
import { formSchema } from '../schema/form.ts';
import { issuesToProblems } from '../schema/issue-to-problem.ts';
import { GRAMMAR_KEYS } from '../schema/keys.ts';
import { readTree } from '../source/read-tree.ts';
import { checkBase } from './check-base.ts';
import { checkCycles } from './check-cycles.ts';
import { checkHandles } from './check-handles.ts';
import { checkKinds } from './check-kinds.ts';
import { checkReferences } from './check-references.ts';
import { collectComplaints, inOrder } from './complaints.ts';
import type { Form } from './form.ts';

/** The forms read last, by their text: whoever has a design in hand asks for its form. */
const readLast = new Map<string, Form>();
const MOST_KEPT = 16;

/**
 * A form from the text of its file, checked as far as it can be before any parameter has a value: the grammar of README.md,
 * every name, every unit, no circles. Otherwise all problems found, at most 20, each with file, line and column. Bounded in time and
 * memory whatever the text.
 */
export function readForm(text: string, file: string): Result<Form> {
  const known = readLast.get(text);
  if (known !== undefined) return ok(known.file === file ? known : { ...known, file });
  const read = readAnew(text, file);
  if (!read.ok) return read;
  const [oldest] = readLast.keys();
  if (oldest !== undefined && readLast.size === MOST_KEPT) readLast.delete(oldest);
  readLast.set(text, read.value);
  return read;
}

function readAnew(text: string, file: string): Result<Form> {
  const source = readTree(text, file);
  if (!source.ok) return source;
  const { tree, places } = source.value;
  const read = formSchema.safeParse(tree);
  if (!read.success) return fail(...issuesToProblems(read.error.issues, places, file, GRAMMAR_KEYS));
  const { data } = read;
  const complaints = collectComplaints(file);
  checkReferences(data, places, complaints);
  checkBase(data, places, complaints);
  checkHandles(data, places, complaints);
  if (complaints.problems.length > 0) return fail(...inOrder(complaints.problems));
  const order = checkCycles(data, places, complaints);
  const kinds = order === undefined ? undefined : checkKinds(data, places, complaints, order);
  if (order === undefined || kinds === undefined || complaints.problems.length > 0)
    return fail(...inOrder(complaints.problems));
  const { form: name, version, title, about } = data;
  return ok({ name, version, title, about, file, data, places, kinds, order });
}
