import type { Finding } from '../../core/index.ts';

/** Tells a finding from the others of its design, also after the design has changed a little. */
export function keyOfFinding({ code, part, hand, joint, edges }: Finding): string {
  return [code, part ?? '', hand ?? '', joint ?? '', ...edges].join(' ');
}
