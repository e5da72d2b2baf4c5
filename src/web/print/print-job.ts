import type { Design, SettingOutView } from '../../design/index.ts';

/** What is to be printed. */
export type Printable =
  | { readonly kind: 'pattern'; readonly pattern: string }
  /** One sheet alone, as a trial. */
  | { readonly kind: 'sheet'; readonly pattern: string; readonly row: number; readonly place: number }
  /** The template for a patch of the wood, by its number. */
  | { readonly kind: 'patch'; readonly at: number; readonly name: string }
  | { readonly kind: 'book' }
  | { readonly kind: 'setting-out'; readonly view: SettingOutView }
  | { readonly kind: 'calibration' };

export interface ToPrinter {
  readonly id: number;
  readonly design: Design;
  readonly what: Printable;
}

export type FromPrinter =
  | { readonly kind: 'step'; readonly id: number; readonly share: number; readonly words: string }
  | { readonly kind: 'printed'; readonly id: number; readonly pdf: Uint8Array<ArrayBuffer> }
  /** `problems` in words where the design cannot be used as it is. */
  | { readonly kind: 'failed'; readonly id: number; readonly message: string };

/** The file that a printed thing is saved as, named as the command line names it. */
export function fileNameOf(what: Printable): string {
  switch (what.kind) {
    case 'pattern':
      return `${what.pattern}.pdf`;
    case 'sheet':
      return `${what.pattern}-row-${what.row}-sheet-${what.place}.pdf`;
    case 'patch':
      return `${what.name.replaceAll(/[^\p{L}\p{N}_-]+/gu, '-')}.pdf`;
    case 'book':
      return 'shop-book.pdf';
    case 'setting-out':
      return `setting-out-${what.view}.pdf`;
    case 'calibration':
      return 'calibration.pdf';
    default:
      return what satisfies never;
  }
}

/** The sides that a base may be set out from, as buttons show them. */
export const SETTING_OUT: readonly SettingOutView[] = ['front', 'left', 'right', 'plan'];
