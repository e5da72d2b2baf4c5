import type { Region } from '../../geometry/index.ts';
import type { SketchedPart } from '../../sketch/index.ts';
import type { Cut } from '../api.ts';
import type { JointWork } from '../joints/api.ts';

/** One piece of the base that is made from a pattern. */
export interface MadeMember {
  /** The placed part, and as it is marked. */
  readonly part: string;
  readonly mark: string;
  readonly place: string;
  /** `right`: made with the pattern turned over. */
  readonly hand: 'left' | 'right';
  /** It stands turned by half a turn in its own plane from the pattern. */
  readonly turned: boolean;
  /** Direction in the pattern (turned over for a right hand) that points up once it stands, rad; nothing for a part that lies level. */
  readonly up?: number;
}

/** All pieces of a base that are made alike, as the bench makes them: the shape that patterns, routing, end cuts and cut list start from. */
export interface MadePart {
  /** Unique: the drawn part's name, and a number from its second kind on. */
  readonly name: string;
  readonly label: string;
  /** As made, in the hand that the form draws: the outline of its face side, every cut taken off; quantities as this base takes them. */
  readonly sketch: SketchedPart;
  readonly face: readonly Region[];
  readonly back: readonly Region[];
  /** The least board that it can be made from: every depth of it, and its tenons. */
  readonly silhouette: readonly Region[];
  readonly cuts: readonly Cut[];
  /** What joints take from it and leave on it. */
  readonly work: readonly JointWork[];
  readonly members: readonly MadeMember[];
}
