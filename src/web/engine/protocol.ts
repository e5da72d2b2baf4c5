import type { Problem } from '../../core/index.ts';
import type { Design } from '../../design/index.ts';
import type { Edit } from '../state/history/edit.ts';
import type { ANSWERS, FURTHER } from './answers/index.ts';
import type { DEEDS } from './deeds/index.ts';

type Fetched<L extends Readonly<Record<string, () => Promise<unknown>>>> = {
  readonly [N in keyof L]: Awaited<ReturnType<L[N]>>;
};
/** What screens may ask of the design in hand; each is answered anew whenever the design changes. */
type Answers = typeof ANSWERS & Fetched<typeof FURTHER>;
export type Question = keyof Answers;
export type OptionsOf<Q extends Question> = Parameters<Answers[Q]>[1];
export type AnswerTo<Q extends Question> = ReturnType<Answers[Q]>;

/** What the page may have done once, whatever the design in hand: reading a file, beginning a design. */
type Deeds = Fetched<typeof DEEDS>;
export type Deed = keyof Deeds;
export type InputOf<D extends Deed> = Parameters<Deeds[D]>[0];
export type OutcomeOf<D extends Deed> = Awaited<ReturnType<Deeds[D]>>;

export interface AskedQuestion {
  /** Names the question together with its options. */
  readonly key: string;
  readonly question: Question;
  readonly options: unknown;
}

export interface ToldAnswer {
  /** Of the question. */
  readonly key: string;
  readonly answer: unknown;
}

/** A point of the form being pulled: where to, mm of wood in the picture that it is pulled in, y up. */
export interface Pull {
  readonly handle: string;
  readonly of: { readonly side: 'front' | 'left' | 'plan' } | { readonly part: string };
  readonly to: { readonly x: number; readonly y: number };
  /** Let go: the figures are to be such as a maker types. */
  readonly end: boolean;
}

/** Where a pull has led: parameters that follow, as typed, and what kept it from going farther. */
export interface PulledTo {
  readonly parameters: Readonly<Record<string, string | number | boolean>>;
  readonly reached: boolean;
  /** Ends of ranges that parameters have come to, in words, and what checks say that hardly hold. */
  readonly kept: readonly string[];
}

/** How far the engine is: once `settled` all that was asked is answered, once `whole` weights and standing are reckoned too. */
export type Progress = 'reckoning' | 'settled' | 'whole';

export type ToWorker =
  /** The state of things, whole: the newest one counts, older ones that are not begun are dropped. */
  | {
      readonly kind: 'ask';
      /** Counts the designs; answers carry it back. */
      readonly turn: number;
      /** Which design it is and since when in hand: another one, or the same once more, is told everything anew. */
      readonly id: string;
      readonly design: Design;
      /** In the order in which they are to be answered. */
      readonly questions: readonly AskedQuestion[];
      /** A handle of the design being pulled: everything is answered as of where it leads. */
      readonly pull?: Pull;
      /** The number of what was foreseen and has come: the page shows those answers already. */
      readonly came?: number;
    }
  /** What the maker seems to be about to change of the design that was asked last: to be computed while there is time. */
  | {
      readonly kind: 'foresee';
      readonly number: number;
      readonly turn: number;
      readonly edits: readonly Edit[];
    }
  | { readonly kind: 'do'; readonly id: number; readonly deed: Deed; readonly input: unknown };

export type FromWorker =
  /** What was found together, to be shown together; what is as it was is not told again. */
  | {
      readonly kind: 'found';
      readonly turn: number;
      readonly answers: readonly ToldAnswer[];
      /** While there are any the design cannot be used as it is: answers that hang on what follows from it stay as they were. */
      readonly problems?: readonly Problem[];
      readonly far: Progress;
    }
  /** What will be told should it come: all that would be new. */
  | { readonly kind: 'foreseen'; readonly number: number; readonly answers: readonly ToldAnswer[] }
  | { readonly kind: 'pulled'; readonly turn: number; readonly pull: Pull; readonly to: PulledTo | undefined }
  | { readonly kind: 'done'; readonly id: number; readonly outcome: unknown }
  | { readonly kind: 'fault'; readonly id?: number; readonly message: string };
