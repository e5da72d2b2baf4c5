import type { Finding, Problem } from '../../core/index.ts';

/** Tells findings of two computations apart by what they speak of, whatever their figures came to. */
export function keyOfFinding({ code, part, joint, hand, edges, message }: Finding): string {
  // What speaks of no joint names its parts in the message alone: without its figures that is the same.
  const words = joint === undefined ? message.replaceAll(/[\d.,/°″′'"]+/g, '') : '';
  return [codeOf(code), part ?? '', joint ?? '', hand ?? '', ...edges, words].join('\0');
}

/** A wall grown through is the same trouble as a thin one. */
const codeOf = (code: string): string => (code === 'joint.wall-thin' ? 'joint.breaks-through' : code);

/** A check of the form, by what it asks for. */
export function keyOfProblem({ code, path = '', expected = '' }: Problem): string {
  return [code, path, expected].join('\0');
}
