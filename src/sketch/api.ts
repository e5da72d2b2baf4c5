import type { Region, Vec } from '../geometry/index.ts';

/** A parameter's value in internal units: mm, rad, a plain number; the key of a choice; yes or no. */
export type ParameterValue = number | string | boolean;

/** A corner of an outline that has a name, before any round or chamfer takes it away. */
export interface NamedCorner {
  readonly name: string;
  readonly at: Vec;
}

/** A window, slot or hole cut from inside, starting at its plunge. */
export interface Opening {
  readonly name: string;
  readonly label: string;
  /** Index of its loop in region.holes. */
  readonly hole: number;
  /** Where the cutter goes down, in the waste. */
  readonly plunge: Vec;
}

/** Centre line of a joint, drawn on the pattern and the template. */
export interface JointLine {
  readonly name: string;
  readonly label: string;
  readonly from: Vec;
  readonly to: Vec;
}

/** A figure printed beside the pattern, so that it can also be laid out by hand. */
export type KeyDimension =
  /** Straight distance between two points, mm; when `along` is given (rad), measured along that direction only. */
  | {
      readonly kind: 'length';
      readonly name: string;
      readonly label: string;
      readonly from: Vec;
      readonly to: Vec;
      readonly along?: number;
      readonly value: number;
    }
  /** Angle at a point, rad. */
  | {
      readonly kind: 'angle';
      readonly name: string;
      readonly label: string;
      readonly at: Vec;
      readonly value: number;
    }
  /** Radius of the arc with this edge identity, mm. */
  | {
      readonly kind: 'radius';
      readonly name: string;
      readonly label: string;
      readonly edge: string;
      readonly at: Vec;
      readonly value: number;
    };

/** A piece glued on before the part is shaped, with a grain of its own. */
export interface Piece {
  readonly name: string;
  readonly label: string;
  /** It lies to the left of this line, looking along it; the line has no ends. */
  readonly leftOf: { readonly from: Vec; readonly to: Vec };
  /** Direction of its grain in the part's plane, rad. */
  readonly grain: number;
}

/** One part as a form draws it, in the part's own plane: x along its width, y along its length. */
export interface SketchedPart {
  readonly name: string;
  /** As printed: `Splayed leg`. */
  readonly label: string;
  readonly region: Region;
  /** mm, from face side to back. */
  readonly thickness: number;
  /** Direction of the grain in the part's plane, rad, wherever no piece says otherwise. */
  readonly grain: number;
  /** Pieces with another grain; where two overlap the first counts. */
  readonly pieces?: readonly Piece[];
  /** Direction that points up when the part stands in the base, rad. */
  readonly up: number;
  /** How many of this part the base takes, by hand. A part that is alike both ways has right = 0. */
  readonly quantity: { readonly left: number; readonly right: number };
  readonly corners: readonly NamedCorner[];
  readonly openings: readonly Opening[];
  readonly joints: readonly JointLine[];
  readonly dimensions: readonly KeyDimension[];
  /** Line down the middle of the part that stretched paper is set right from. */
  readonly centreLine: { readonly from: Vec; readonly to: Vec };
}

/** A plane square to a part's face: a point on it, and the direction (rad) of its outward normal in the face. */
export interface SketchedPlane {
  readonly through: Vec;
  readonly facing: number;
}

/** A form evaluated at given parameters. */
export interface Sketch {
  readonly form: string;
  readonly version: number;
  readonly title: string;
  /** Every parameter in force, internal units. */
  readonly parameters: Readonly<Record<string, ParameterValue>>;
  readonly points: Readonly<Record<string, Vec>>;
  readonly planes: Readonly<Record<string, SketchedPlane>>;
  readonly parts: readonly SketchedPart[];
}
