import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory, { type JstsGeometry } from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import BufferOp from 'jsts/org/locationtech/jts/operation/buffer/BufferOp.js';
import OverlayOp from 'jsts/org/locationtech/jts/operation/overlay/OverlayOp.js';
import type { Region } from '../../../src/geometry/index.ts';
import { chordsOf } from './chords.ts';

const factory = new GeometryFactory() as GeometryFactory & {
  createMultiPolygon(polygons: readonly JstsGeometry[]): JstsGeometry;
};

export function shapeOf(regions: readonly Region[], chord: number): JstsGeometry {
  const ring = (flat: readonly number[]): JstsGeometry => {
    const corners: Coordinate[] = [];
    for (let i = 0; i + 1 < flat.length; i += 2) corners.push(new Coordinate(flat[i]!, flat[i + 1]!));
    corners.push(new Coordinate(flat[0]!, flat[1]!));
    return factory.createLinearRing(corners);
  };
  const polygons = regions.map(({ outer, holes }) =>
    factory.createPolygon(
      ring(chordsOf(outer, chord)),
      holes.map((hole) => ring(chordsOf(hole, chord))),
    ),
  );
  return polygons.length === 1 ? polygons[0]! : factory.createMultiPolygon(polygons);
}

/** Round joins with as many chords to a quarter turn as keep within `chord` mm. */
export function offsetWithJsts(shape: JstsGeometry, by: number, chord: number): JstsGeometry {
  const half = Math.acos(1 - Math.min(1, chord / Math.abs(by)));
  return BufferOp.bufferOp(shape, by, Math.max(2, Math.ceil(Math.PI / 4 / half)));
}

export function combineWithJsts(
  kind: 'union' | 'intersection' | 'difference' | 'symDifference',
  a: JstsGeometry,
  b: JstsGeometry,
): JstsGeometry {
  const codes = { intersection: 1, union: 2, difference: 3, symDifference: 4 };
  return OverlayOp.overlayOp(a, b, codes[kind]);
}
