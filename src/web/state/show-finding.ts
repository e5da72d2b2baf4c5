import type { Finding, Problem } from '../../core/index.ts';
import { shownPicture, soughtParameter } from '../screens/shape/shown-picture.ts';
import { keyOfFinding } from './key-of-finding.ts';
import { screen, show } from './screen.ts';
import { selection } from './selection.ts';

/** Leads to the place of a finding: its part and edge are marked wherever they are drawn; joints have their own screen. */
export function showFinding(finding: Finding): void {
  const { part, edges, joint } = finding;
  selection.value = {
    finding: keyOfFinding(finding),
    ...(part === undefined ? {} : { part }),
    ...(edges[0] === undefined ? {} : { edge: edges[0] }),
    ...(joint === undefined ? {} : { joint: joint.split(' ')[0]! }),
  };
  if (joint !== undefined) show('joints');
  else if (screen.value === 'designs') show('shape');
  // An edge is best seen on its part alone.
  if (part !== undefined && edges.length > 0 && screen.value === 'shape') shownPicture.value = { part };
}

/** The parameter that a problem is of, where it is of one. */
export function parameterOf({ path }: Pick<Problem, 'path'>): string | undefined {
  return /parameters\.(\w+)$/.exec(path ?? '')?.[1];
}

/** Leads to the field of a parameter. */
export function seekParameter(name: string): void {
  show('shape');
  soughtParameter.value = name;
}
