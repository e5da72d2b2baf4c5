import type { Memo } from '../../design/index.ts';

/** What this worker has found so far, whoever asked: a design that was just begun is not computed once more to be shown. */
export const known: Memo = new Map();
