import { batch, computed, signal } from '@preact/signals';
import type { Design } from '../../design/index.ts';
import { appendChange, readChanges } from '../store/change-log.ts';
import type { StoredDesign } from '../store/database.ts';
import { onTabNews, tellTabs } from '../store/tabs.ts';
import { applyEdits, type Edit } from './history/edit.ts';
import { type Change, type Folded, foldLog, redoOf, startLog, undoOf } from './history/fold-log.ts';
import { letGo } from './pulling.ts';

/** The design in hand: its log as the browser has it on disk, and the lines on their way there. */
interface Open {
  readonly id: string;
  /** As the log begins. */
  readonly base: Design;
  /** The lines that are on the disk, and what they make of it. */
  readonly log: readonly Change[];
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
  const log = await readChanges(stored.id);
  const kept = foldLog(startLog(stored.base), log);
  batch(() => {
    preview.value = [];
    open.value = { id: stored.id, base: stored.base, log, kept, waiting: [] };
  });
  return true;
}

/** Takes a design in hand that the browser cannot keep: it lives as long as the page. */
export function holdUnkept(held: Design): void {
  batch(() => {
    preview.value = [];
    open.value = { id: crypto.randomUUID(), base: held, log: [], kept: startLog(held), waiting: [] };
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

/** Takes back the last change; a pull that is not set yet is let go instead. */
export function undo(): void {
  if (letGo()) return;
  const line = folded.value && undoOf(folded.value);
  if (line !== undefined) write(line);
}

export function redo(): void {
  const line = folded.value && redoOf(folded.value);
  if (line !== undefined) write(line);
}

function write(said: Omit<Change, 'key' | 'time'>): void {
  const now = open.value;
  if (now === undefined) return;
  const line: Change = { ...said, key: crypto.randomUUID(), time: new Date().toISOString() };
  batch(() => {
    preview.value = [];
    open.value = { ...now, waiting: [...now.waiting, line] };
  });
  void keep(now.id, line);
}

/** Lines that did not get to the disk; what comes after them must wait for them. */
let stuck = false;
let last: Promise<void> = Promise.resolve();

/** Sends a line to the disk at once, without waiting for those before it: the browser keeps them in order. */
function keep(id: string, line: Change): Promise<void> {
  if (stuck) return last;
  last = appendChange(id, line).then(() => arrived(id, line), refused);
  return last;
}

function arrived(id: string, line: Change): void {
  const now = open.value;
  if (now?.id === id) {
    const waiting = now.waiting.filter(({ key }) => key !== line.key);
    const isKnown = now.log.some(({ key }) => key === line.key);
    open.value = isKnown ? { ...now, waiting } : withLines({ ...now, waiting }, [line]);
  }
  tellTabs({ kind: 'log', design: id });
}

function refused(cause: unknown): void {
  stuck = true;
  unkept.value = (cause as DOMException).name === 'QuotaExceededError' ? 'full' : 'broken';
}

/** Sends to the disk what waits still, after trouble; comes back once all of it is there, or there is trouble again. */
export async function keepWaiting(): Promise<void> {
  await last;
  if (!stuck) return;
  stuck = false;
  const now = open.value;
  for (const line of now?.waiting ?? []) {
    await keep(now!.id, line);
    if (stuck) return;
  }
  unkept.value = undefined;
}

/** The log with more lines at its end. */
function withLines(now: Open, lines: readonly Change[]): Open {
  return { ...now, kept: foldLog(now.kept, lines), log: [...now.log, ...lines] };
}

onTabNews(async (news) => {
  if (news.kind !== 'log' || open.value?.id !== news.design) return;
  const lines = await readChanges(news.design);
  const now = open.value;
  if (now?.id !== news.design) return;
  const isSame = now.log.every(({ key }, at) => lines[at]?.key === key);
  const keys = new Set(lines.map(({ key }) => key));
  const waiting = now.waiting.filter(({ key }) => !keys.has(key));
  // Lines that two tabs wrote at once come to both in the order of the disk.
  open.value = isSame
    ? withLines({ ...now, waiting }, lines.slice(now.log.length))
    : { ...now, waiting, log: lines, kept: foldLog(startLog(now.base), lines) };
});
