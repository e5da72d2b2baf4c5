/** Shapes in space: millimetres, right-handed. In a base: x along the table's length, y along its depth (the sitter at negative y), z up, the floor at z = 0. */

export interface Vec3 {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** A plane by its unit normal: the points p with normal · p = offset (mm). What it bounds lies where normal · p is less. */
export interface Plane3 {
  readonly normal: Vec3;
  readonly offset: number;
}

/** A right-handed frame: where its origin lies and which way its axes run, each a unit vector square to the others. */
export interface Frame {
  readonly origin: Vec3;
  readonly x: Vec3;
  readonly y: Vec3;
  readonly z: Vec3;
}
