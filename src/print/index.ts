export type * from './api.ts';
