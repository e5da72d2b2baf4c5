import type { Strip } from './strip.ts';
import type { BookStep } from './strips-of-book.ts';

type Plate = Extract<BookStep, { kind: 'plate' }>['plate'];

/** A page while the book is laid: strips from the top downwards, or a plate. */
export interface FilledPage {
  /** The chapter that its first line belongs to, and the chapters that begin on it. */
  readonly chapter: string;
  readonly begins: readonly string[];
  readonly strips: readonly { readonly strip: Strip; readonly top: number }[];
  readonly plate?: Plate;
  /** mm taken from above. */
  readonly filled: number;
}

/** A last page filled less than this is no page of its own: those before it give it of theirs. */
const LEAST_SHARE = 0.4;
/** Shares of the height that pages are filled to, the fullest first. */
const FULL = [1, 0.97, 0.94, 0.9, 0.86, 0.82, 0.78, 0.74, 0.7, 0.66, 0.62, 0.58, 0.54, 0.5] as const;
/** A chapter begins no lower on a page than this share of it from its foot. */
const CHAPTER_ROOM = 0.22;

/**
 * Strips on pages of a height (mm), in order, a heading never at the foot of a page, the head of a table again at the top of the next. Plates
 * are pages of their own. Of the text between two plates the pages are as few as can be, and filled so that the last one is no
 * near empty one.
 */
export function fillPages(steps: readonly BookStep[], height: number): readonly FilledPage[] {
  const pages: FilledPage[] = [];
  let chapter = '';
  let begins: string[] = [];
  for (const run of runsOf(steps)) {
    if (run.kind === 'plate') {
      chapter = begins.at(-1) ?? chapter;
      pages.push({ chapter, begins, strips: [], plate: run.plate, filled: height });
      begins = [];
      continue;
    }
    const own = fillRun([...begins.map(named), ...run.steps], chapter, height);
    // A chapter that begins with a plate is announced by it.
    begins = [...own.open];
    pages.push(...own.pages);
    chapter = own.chapter;
  }
  return pages;
}

const named = (title: string): BookStep => ({ kind: 'chapter', title, newPage: false });

type Run =
  | { readonly kind: 'text'; readonly steps: readonly BookStep[] }
  | Extract<BookStep, { kind: 'plate' }>;

/** Plates, and the text between them; what is to begin on a new page begins a new run. */
function runsOf(steps: readonly BookStep[]): readonly Run[] {
  const runs: Run[] = [];
  let text: BookStep[] = [];
  const close = (): void => {
    if (text.length > 0) runs.push({ kind: 'text', steps: text });
    text = [];
  };
  for (const step of steps) {
    if (step.kind === 'plate') {
      close();
      runs.push(step);
    } else {
      // A book without an opening has its own title over its first chapter.
      if (step.kind === 'chapter' && step.newPage && text.length > 1) close();
      text.push(step);
    }
  }
  close();
  return runs;
}

interface FilledRun {
  readonly pages: readonly FilledPage[];
  readonly chapter: string;
  /** Chapters that begin with what comes after the run. */
  readonly open: readonly string[];
}

function fillRun(steps: readonly BookStep[], chapter: string, height: number): FilledRun {
  const fullest = fillTo(steps, chapter, height, { limit: height, from: 0 });
  const isGood = ({ pages }: FilledRun): boolean =>
    pages.length < 2 || pages.at(-1)!.filled >= LEAST_SHARE * height;
  if (isGood(fullest)) return fullest;
  for (const share of FULL.slice(1)) {
    const next = fillTo(steps, chapter, height, { limit: share * height, from: fullest.pages.length - 2 });
    if (next.pages.length > fullest.pages.length) break;
    if (isGood(next)) return next;
  }
  return fullest;
}

/** Pages filled to their height, from a page on to less; what is higher stands alone on its page. */
function fillTo(
  steps: readonly BookStep[],
  before: string,
  whole: number,
  { limit, from }: { readonly limit: number; readonly from: number },
): FilledRun {
  const pages: {
    chapter: string;
    begins: string[];
    strips: { strip: Strip; top: number }[];
    filled: number;
  }[] = [];
  let chapter = before;
  let open: string[] = [];
  const newPage = (): void => {
    pages.push({ chapter: open[0] ?? chapter, begins: [], strips: [], filled: 0 });
  };
  const put = (strip: Strip): void => {
    const page = pages.at(-1)!;
    page.filled += overOf(strip, page.filled);
    page.strips.push({ strip, top: page.filled });
    page.filled += strip.height;
    page.begins.push(...open);
    open = [];
  };
  let previous: Strip | undefined;
  let isAlone = false;
  for (const [at, step] of steps.entries()) {
    if (step.kind === 'plate') continue;
    if (step.kind === 'chapter') {
      open.push(step.title);
      previous = undefined;
      continue;
    }
    const { strip } = step;
    const height = pages.length > from ? limit : whole;
    const left = pages.length === 0 ? -1 : height - pages.at(-1)!.filled;
    const isTight = open.length > 0 && left < CHAPTER_ROOM * whole;
    // What belongs together and has a page to itself already is broken only where it does not go on.
    const filled = pages.at(-1)?.filled ?? 0;
    const wanted = overOf(strip, filled) + (isAlone ? strip.height : together(steps, at));
    if (pages.length === 0 || isTight || (left < Math.min(wanted, whole) && filled > 0)) {
      newPage();
      isAlone = true;
      if (strip.repeated !== undefined && previous !== strip.repeated) put(strip.repeated);
    }
    if (open.length > 0) chapter = open.at(-1)!;
    put(strip);
    previous = strip;
    isAlone &&= strip.staysWithNext === true;
  }
  return { pages, chapter, open };
}

/** Room over a strip where something stands above it on its page, mm. */
const overOf = ({ above = 0 }: Strip, filled: number): number => (filled > 0 ? above : 0);

/** What must stay with the next strip needs room for both. */
function together(steps: readonly BookStep[], from: number): number {
  let sum = 0;
  for (let at = from; at < steps.length; at++) {
    const step = steps[at]!;
    if (step.kind !== 'strip') break;
    sum += step.strip.height + (at > from ? (step.strip.above ?? 0) : 0);
    if (step.strip.staysWithNext !== true) break;
  }
  return sum;
}
