import type { Finding } from '../../core/index.ts';
import type { JointSketch } from '../../sketch/index.ts';
import type { PlacedPart } from '../api.ts';
import type { Joint } from './api.ts';

/** A joint of the form, the pairs of copies that it might be made of, and those that it is made of. */
export interface JoinedPlaces {
  readonly sketch: JointSketch;
  readonly pairs: readonly (readonly [PlacedPart, PlacedPart])[];
  readonly joints: readonly Joint[];
}

/** So often shorter pieces are tried. */
const MOST_TRIES = 6;

/** Joints that are drilled apart as far as pieces of the maker's list allow, and what is to be said where they meet all the same. */
export interface KeptApart {
  readonly all: readonly JoinedPlaces[];
  readonly meetings: readonly Finding[];
}

/**
 * The joints with pieces so short that none is drilled through those of another, where pieces of the maker's list allow it; as they are where they do not, which
 * is a finding.
 */
export function keptApart(
  made: readonly JoinedPlaces[],
  meetingsOf: (joints: readonly Joint[]) => readonly Finding[],
  joinShorter: (sketch: JointSketch, shorterThan: number) => JoinedPlaces,
): KeptApart {
  const withMeetings = (all: readonly JoinedPlaces[]): KeptApart => ({
    all,
    meetings: meetingsOf(all.flatMap(({ joints }) => joints)),
  });
  const first = withMeetings(made);
  let kept = first;
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    const { all, meetings } = kept;
    const through = meetings.filter(({ severity }) => severity === 'stop');
    const names = new Set(through.flatMap(({ joint = '' }) => joint.split(' ')));
    if (names.size === 0) return kept;
    const shorter = all.map((each) => {
      const length = longest(each.joints);
      return names.has(each.sketch.name) && length > 0 ? joinShorter(each.sketch, length) : each;
    });
    if (stopsOf(shorter) > stopsOf(all)) return first;
    kept = withMeetings(shorter);
  }
  return first;
}

const longest = (joints: readonly Joint[]): number =>
  Math.max(0, ...joints.map(({ loose }) => loose?.size.length ?? 0));

const stopsOf = (all: readonly JoinedPlaces[]): number =>
  all
    .flatMap(({ joints }) => joints.flatMap(({ findings }) => findings))
    .filter(({ severity }) => severity === 'stop').length;
