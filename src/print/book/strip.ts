import type { Vec } from '../../geometry/index.ts';
import type { PageItem } from '../page/ink.ts';
import type { PagePicture } from './api.ts';

/** A strip of a page: what is drawn downwards from its upper left corner. */
export interface Strip {
  /** mm, with the room below it. */
  readonly height: number;
  readonly draw: (corner: Vec) => {
    readonly items: readonly PageItem[];
    readonly pictures?: readonly PagePicture[];
  };
  /** mm left free over it, but at the top of a page. */
  readonly above?: number;
  /** Must not be the last strip of a page: a heading, the head of a table. */
  readonly staysWithNext?: boolean;
  /** Drawn anew at the top of a page that begins below this strip. */
  readonly repeated?: Strip;
}
