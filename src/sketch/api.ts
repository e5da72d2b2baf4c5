import type { Edge, Region, Vec, Vec3 } from '../geometry/index.ts';

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

/** Drawn on a pattern beside the outline: where the back of a bevelled end runs, and where joints are cut. */
export interface LayoutMark {
  readonly name: string;
  readonly label: string;
  /** Seen on the face side, or hidden behind it. */
  readonly hidden: boolean;
  readonly edges: readonly Edge[];
  readonly closed: boolean;
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
  readonly layouts?: readonly LayoutMark[];
  readonly dimensions: readonly KeyDimension[];
  /** Line down the middle of the part that stretched paper is set right from. */
  readonly centreLine: { readonly from: Vec; readonly to: Vec };
  /** A help that does not stay in the base, sawn to its line all round: it has no template, no face that shows, and no way up. */
  readonly onlySawn?: boolean;
}

/** A plane square to a part's face: a point on it, and the direction (rad) of its outward normal in the face. */
export interface SketchedPlane {
  readonly through: Vec;
  readonly facing: number;
}

/** A flat face of a placed part, or of its copy on the other side of a middle plane. */
export interface FaceOfPlace {
  readonly place: string;
  /** `face` and `back`: its show face and its back; otherwise the identity of a straight edge of its outline. */
  readonly face: string;
  readonly mirrored: readonly MirrorAcross[];
}

/** `left-right`: x changes its sign; `front-back`: y does. */
export type MirrorAcross = 'left-right' | 'front-back';

/** A plane in the world that parts are cut by; what it bounds lies on the side away from its normal. */
export type BasePlane =
  | { readonly kind: 'through'; readonly through: Vec3; readonly facing: Vec3 }
  /** As the face of a part, its normal out of that part; moved out of it by `out` mm. */
  | { readonly kind: 'face'; readonly of: FaceOfPlace; readonly out: number }
  /** Halves the angle of two planes; of the two that do, the one whose normal is nearer to `facing`. */
  | { readonly kind: 'mitre'; readonly between: readonly [string, string]; readonly facing: Vec3 };

export interface TrimOfPlace {
  readonly plane: string;
  /** The part keeps what lies on the side of the plane's normal. */
  readonly otherSide: boolean;
}

/** How one placed part becomes several: each step applies to all that the steps before it made. */
export type CopyOfPlace =
  | { readonly kind: 'mirror'; readonly across: MirrorAcross }
  /** `count` in all, each a step (mm) beyond the last. */
  | { readonly kind: 'repeat'; readonly count: number; readonly step: Vec3 }
  /** `count` in all, turned about the plumb line through the middle of the base by equal parts of a full turn. */
  | { readonly kind: 'turn'; readonly count: number };

/** A part standing in the base: where its pin lies and which way its length and its face side look. */
export interface PlacedSketch {
  readonly name: string;
  readonly label: string;
  readonly part: string;
  /** Point of the part's plane, on its face side, that `at` (mm, world) speaks of. */
  readonly pin: Vec;
  readonly at: Vec3;
  /** World directions of any length: of the part's +y, and (as nearly as that allows) of its face side. */
  readonly along: Vec3;
  readonly face: Vec3;
  /** Then turned about the pin, one after the other, about a world axis, rad. */
  readonly turns: readonly { readonly about: 'x' | 'y' | 'z'; readonly by: number }[];
  /** How deep under the pin its face side lies: 0, or half the thickness when the pin marks the middle of it, mm. */
  readonly pinDepth: number;
  readonly trims: readonly TrimOfPlace[];
  readonly copies: readonly CopyOfPlace[];
  /** Reckoned as a beam that carries the top, for sag. */
  readonly beam: boolean;
}

export type JointKind = 'loose-tenons' | 'dowels' | 'mortise-and-tenon' | 'halved' | 'glued' | 'screwed';

/** How two placed parts, and all their copies that touch, are joined. Of a mortise and tenon the first has the tenon. */
export interface JointSketch {
  readonly name: string;
  readonly label: string;
  readonly between: readonly [string, string];
  readonly kind: JointKind;
}

/** What the base carries. The middle of its plan is the origin of the world. */
export interface TopSketch {
  readonly shape: 'rectangle' | 'round';
  /** Along x and along y, mm; of a round top both are its diameter. */
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
  /** Height of its underside over the floor, mm. */
  readonly level: number;
}

export type BaseUse = 'table' | 'desk' | 'bench' | 'stool';

/** Parts standing in space, as a base form places them, in mm and rad. */
export interface SketchedBase {
  readonly use: BaseUse;
  readonly top: TopSketch;
  /** mm between the feet and the floor. */
  readonly levellers: number;
  readonly planes: Readonly<Record<string, BasePlane>>;
  readonly places: readonly PlacedSketch[];
  readonly joints: readonly JointSketch[];
}

/** A view of a base along an axis of the world: from the front, from an end, from above. */
export type BaseView = 'front' | 'side' | 'plan';

/** A point that can be pulled; the parameters in `moves` follow. */
export type Handle = {
  readonly name: string;
  readonly label: string;
  readonly moves: readonly string[];
} & (
  | {
      readonly of: 'part';
      readonly part: string;
      /** In the part's plane, mm. */
      readonly at: Vec;
      /** It is pulled in this direction only (rad), where it is given. */
      readonly along?: number;
    }
  | {
      readonly of: 'base';
      /** In the world, mm. */
      readonly at: Vec3;
      /** It is pulled in this direction of the world only (a unit vector), where it is given. */
      readonly along?: Vec3;
      /** Where it is worth showing. */
      readonly views: readonly BaseView[];
    }
);

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
  /** Absent in a form of parts alone. */
  readonly base?: SketchedBase;
  /** Absent in a form without any. */
  readonly handles?: readonly Handle[];
}
