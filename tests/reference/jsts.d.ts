// biome-ignore-all lint/style/noDefaultExport: so the package exports.
// biome-ignore-all lint/complexity/noStaticOnlyClass: so the package calls them.
/** The few parts of jsts 2.12.1 that the checks use; the package brings no types of its own. */
declare module 'jsts/org/locationtech/jts/geom/Coordinate.js' {
  export default class Coordinate {
    constructor(x: number, y: number);
    readonly x: number;
    readonly y: number;
  }
}
declare module 'jsts/org/locationtech/jts/geom/GeometryFactory.js' {
  import type Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
  export interface JstsGeometry {
    getArea(): number;
    getLength(): number;
  }
  export default class GeometryFactory {
    createPoint(at: Coordinate): JstsGeometry;
    createLinearRing(points: Coordinate[]): JstsGeometry;
    createPolygon(shell: JstsGeometry, holes?: JstsGeometry[]): JstsGeometry;
  }
}
declare module 'jsts/org/locationtech/jts/operation/distance/DistanceOp.js' {
  import type { JstsGeometry } from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';

  export default class DistanceOp {
    static distance(a: JstsGeometry, b: JstsGeometry): number;
  }
}
declare module 'jsts/org/locationtech/jts/algorithm/locate/SimplePointInAreaLocator.js' {
  import type Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
  import type { JstsGeometry } from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';

  export default class SimplePointInAreaLocator {
    /** 0 inside, 1 on the boundary, 2 outside. */
    static locate(p: Coordinate, area: JstsGeometry): number;
  }
}
declare module 'jsts/org/locationtech/jts/operation/valid/IsValidOp.js' {
  import type { JstsGeometry } from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';

  export default class IsValidOp {
    static isValid(geometry: JstsGeometry): boolean;
  }
}
declare module 'jsts/org/locationtech/jts/algorithm/Centroid.js' {
  import type Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
  import type { JstsGeometry } from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
  export default class Centroid {
    static getCentroid(geometry: JstsGeometry): Coordinate;
  }
}
