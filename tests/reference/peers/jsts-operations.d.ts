// biome-ignore-all lint/style/noDefaultExport: so the package exports.
// biome-ignore-all lint/complexity/noStaticOnlyClass: so the package calls them.
/** The operations of jsts 2.12.1 that the kernel is checked and timed against; the package's modules carry no types. */
declare module 'jsts/org/locationtech/jts/operation/buffer/BufferOp.js' {
  import type { JstsGeometry } from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
  export default class BufferOp {
    static bufferOp(geometry: JstsGeometry, distance: number, quadrantSegments: number): JstsGeometry;
  }
}
declare module 'jsts/org/locationtech/jts/operation/overlay/OverlayOp.js' {
  import type { JstsGeometry } from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
  export default class OverlayOp {
    /** 1 intersection, 2 union, 3 difference, 4 symmetric difference. */
    static overlayOp(a: JstsGeometry, b: JstsGeometry, code: number): JstsGeometry;
  }
}
