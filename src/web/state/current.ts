import { batch, computed, signal } from '@preact/signals';
import type { Design } from '../../design/index.ts';
import { appendChange, readChanges } from '../store/change-log.ts';
import type { StoredDesign } from '../store/database.ts';
import { onTabNews, tellTabs } from '../store/tabs.ts';
import { applyEdits, type Edit } from './history/edit.ts';
import { type Change, type Folded, foldLog, redoOf, startLog, undoOf } from './history/fold-log.ts';

/** The design in hand: its log as the browser has it on disk, and the lines on their way there. */
interface Open {
  readonly id: string;
  readonly kept: Folded;
  readonly waiting: readonly Change[];
}

const open = signal<Open | undefined>(undefined);

/** Why the last change could not be kept; the change itself stays in the page until it can. */
export const unkept = signal<'full' | 'broken' | undefined>(undefined);

const folded = computed(() => open.value && foldLog(open.value.kept, open.value.waiting));

/** Edits that are shown but not yet made: while something is being pulled. */
export const preview = signal<readonly Edit[]>([]);

export const currentId = computed(() => open.value?.id);
/** The design in hand as it is to be shown; nothing until one is opened. */
export const design = computed<Design | undefined>(() => {
  const now = folded.value?.design;
  return now && (preview.value.length === 0 ? now : applyEdits(now, preview.value));
});
/** What the next undo takes back and the next redo makes again, in words. */
export const undoWords = computed(() => folded.value?.done.at(-1)?.words);
export const redoWords = computed(() => folded.value?.undone.at(-1)?.words);

/** Takes a stored design in hand, with its whole history, once all of the one before is kept. False when that cannot be. */
export async function openDesign(stored: StoredDesign): Promise<boolean> {
  await keepWaiting();
  if ((open.value?.waiting.length ?? 0) > 0) return false;
  const kept = foldLog(startLog(stored.base), await readChanges(stored.id));
  batch(() => {
    preview.value = [];
    open.value = { id: stored.id, kept, waiting: [] };
  });
  return true;
}

/** Takes a design in hand that the browser cannot keep: it lives as long as the page. */
export function holdUnkept(held: Design): void {
  batch(() => {
    preview.value = [];
    open.value = { id: crypto.randomUUID(), kept: startLog(held), waiting: [] };
    unkept.value = 'broken';
  });
}

/** Lays the design in hand aside. */
export function closeDesign(): void {
  open.value = undefined;
}

/** Changes the design; shown at once, kept as soon as the disk has it. `words` name the change where it can be taken back. */
export function change(words: string, edits: readonly Edit[]): void {
  write({ kind: 'change', words, edits });
}

export function undo(): void {
  const line = folded.value && undoOf(folded.value);
  if (line !== undefined) write(line);
}

export function redo(): void {
  const line = folded.value && redoOf(folded.value);
  if (line !== undefined) write(line);
}

function write(line: Omit<Change, 'seq' | 'time'>): void {
  const now = open.value;
  if (now === undefined) return;
  const seq = now.kept.seq + now.waiting.length + 1;
  batch(() => {
    preview.value = [];
    open.value = { ...now, waiting: [...now.waiting, { ...line, seq, time: new Date().toISOString() }] };
  });
  void keepWaiting();
}

let keeping: Promise<void> | undefined;

/** Writes what waits to the disk, one line after the other; called again after trouble. */
export function keepWaiting(): Promise<void> {
  keeping ??= keepEach().finally(() => {
    keeping = undefined;
  });
  return keeping;
}

async function keepEach(): Promise<void> {
  try {
    for (let now = open.value; now !== undefined && now.waiting.length > 0; now = open.value) {
      const { id, kept, waiting } = now;
      const { seq: _, ...line } = waiting[0]!;
      const lines = await appendChange(id, line, kept.seq);
      take(id, lines, 1);
      tellTabs({ kind: 'log', design: id });
    }
    unkept.value = undefined;
  } catch (cause) {
    unkept.value = (cause as DOMException).name === 'QuotaExceededError' ? 'full' : 'broken';
  }
}

/** Takes over lines that are on the disk, `own` of them from what waited. */
function take(id: string, lines: readonly Change[], own: number): void {
  const now = open.value;
  if (now?.id !== id) return;
  const fresh = lines.filter(({ seq }) => seq > now.kept.seq);
  open.value = { id, kept: foldLog(now.kept, fresh), waiting: now.waiting.slice(own) };
}

onTabNews(async (news) => {
  const now = open.value;
  if (news.kind !== 'log' || now?.id !== news.design) return;
  take(now.id, await readChanges(now.id, now.kept.seq), 0);
});
