import {
  parseCount,
  parseLength,
  parseQuarters,
  parseRatio,
  parseTemperature,
} from '../../../measure/index.ts';
import { design } from '../../state/current.ts';
import { words } from '../../words/en.ts';

const said = words.wood.refused;

/** What a field of the wood holds. */
export type WoodMeasure = 'length' | 'thickness' | 'percent' | 'temperature' | 'count' | 'amount' | 'ratio';

/** Why a text cannot be taken, in words; nothing where it can. Ranges are for the engine to judge. */
export function whyNot(typed: string, of: WoodMeasure, isNeeded: boolean): string | undefined {
  const text = typed.trim();
  if (text === '') return isNeeded ? said.needed : undefined;
  const unit = design.value?.units.length ?? 'mm';
  switch (of) {
    case 'length':
      return messageOf(parseLength(text, { unit }));
    case 'thickness':
      return parseQuarters(text, { unit }).ok ? undefined : messageOf(parseLength(text, { unit }));
    case 'percent':
      return messageOf(parseRatio(text.endsWith('%') ? text : `${text} %`));
    case 'temperature':
      return messageOf(parseTemperature(text));
    case 'count':
      return messageOf(parseCount(text));
    case 'amount':
      return amountOf(text) === undefined ? said.noAmount : undefined;
    case 'ratio':
      return amountOf(text) === undefined ? said.noRatio : undefined;
    default:
      return of satisfies never;
  }
}

/** A sum of money or a plain number, with a point or a comma. */
export function amountOf(text: string): number | undefined {
  return /^\d{1,9}([.,]\d+)?$/.test(text.trim()) ? Number(text.trim().replace(',', '.')) : undefined;
}

type Read =
  | { readonly ok: true }
  | { readonly ok: false; readonly problems: readonly { readonly message: string }[] };

const messageOf = (read: Read): string | undefined => (read.ok ? undefined : read.problems[0]?.message);
