/**
 * A photograph of a board that never grew: growth rings round a wandering pith cut by the board's face, late wood, pores, rays, a knot, sapwood,
 * fibres, and the light of a window; the board lies a little askew on a dark bench, seen by a camera that stands slantwise. Invented data for
 * trying and measuring; one function without anything from outside, so that it can be handed to a browser as it is.
 */
export function woodPhotograph(ask: {
  readonly width: number;
  readonly height: number;
  /** Of the board, mm. */
  readonly board: { readonly length: number; readonly width: number };
  /** Where its corners lie in the picture, pixels: near left, near right, far right, far left. */
  readonly corners: readonly (readonly [number, number])[];
  readonly seed: number;
}): Uint8ClampedArray<ArrayBuffer> {
  const { width, height, board, corners, seed } = ask;
  const hash = (x: number, y: number): number => {
    let h = (Math.imul(x, 374761393) + Math.imul(y, 668265263) + Math.imul(seed, 974634777)) | 0;
    h = Math.imul(h ^ (h >>> 13), 1274126177);
    return ((h ^ (h >>> 16)) >>> 0) / 4294967296;
  };
  const noise = (x: number, y: number): number => {
    const [i, j] = [Math.floor(x), Math.floor(y)];
    const [u, v] = [x - i, y - j];
    const [s, t] = [u * u * (3 - 2 * u), v * v * (3 - 2 * v)];
    const low = hash(i, j) + s * (hash(i + 1, j) - hash(i, j));
    const high = hash(i, j + 1) + s * (hash(i + 1, j + 1) - hash(i, j + 1));
    return low + t * (high - low);
  };
  // From pixels to the board: the projection of the unit square onto the corners (P. Heckbert, Fundamentals of Texture Mapping, 1989), turned back.
  const [[x0, y0], [x1, y1], [x2, y2], [x3, y3]] = corners as unknown as [
    [number, number],
    [number, number],
    [number, number],
    [number, number],
  ];
  const [dx1, dx2, dx3] = [x1 - x2, x3 - x2, x0 - x1 + x2 - x3];
  const [dy1, dy2, dy3] = [y1 - y2, y3 - y2, y0 - y1 + y2 - y3];
  const under = dx1 * dy2 - dx2 * dy1;
  const [g, h] = [(dx3 * dy2 - dx2 * dy3) / under, (dx1 * dy3 - dx3 * dy1) / under];
  const [a, b, c] = [x1 - x0 + g * x1, x3 - x0 + h * x3, x0];
  const [d, e, f] = [y1 - y0 + g * y1, y3 - y0 + h * y3, y0];
  const back = [
    e - f * h,
    c * h - b,
    b * f - c * e,
    f * g - d,
    a - c * g,
    c * d - a * f,
    d * h - e * g,
    b * g - a * h,
    a * e - b * d,
  ];
  const data = new Uint8ClampedArray(4 * width * height);
  const knot = { x: board.length * 0.61, y: board.width * 0.72, reach: board.width * 0.1 };
  for (let row = 0; row < height; row++) {
    for (let column = 0; column < width; column++) {
      const w = back[6]! * column + back[7]! * row + back[8]!;
      const u = (back[0]! * column + back[1]! * row + back[2]!) / w;
      const v = (back[3]! * column + back[4]! * row + back[5]!) / w;
      const to = 4 * (row * width + column);
      const light = 0.82 + 0.3 * (1 - row / height) - 0.1 * Math.abs(column / width - 0.4);
      if (u < 0 || u > 1 || v < 0 || v > 1) {
        const dust = 0.8 + 0.25 * noise(column / 3, row / 3) + 0.25 * noise(column / 90, row / 30);
        const near = Math.max(-u, u - 1, -v * 0.1, (v - 1) * 0.1, 0);
        const shade = light * dust * (near < 0.004 ? 0.45 : 1);
        data[to] = 58 * shade;
        data[to + 1] = 52 * shade;
        data[to + 2] = 47 * shade;
        data[to + 3] = 255;
        continue;
      }
      const [x, y] = [u * board.length, v * board.width];
      // The knot pushes the fibres round it.
      const [kx, ky] = [(x - knot.x) / 3.2, y - knot.y];
      const away = Math.hypot(kx, ky);
      const push = knot.reach * Math.exp(-((away / (1.4 * knot.reach)) ** 2));
      const yy = y + (away > 0 ? (ky / away) * push : 0) * 0.9;
      // The pith wanders below the face and comes nearer towards one end: cathedrals where it runs flat, straight lines at the edges.
      const across = yy - board.width * (0.46 + 0.1 * Math.sin(x / 610) + 0.05 * noise(x / 240, 3));
      const depth = 34 + 0.021 * x + 13 * noise(x / 420, 9) + 5 * noise(x / 130, yy / 60);
      const radius =
        Math.hypot(across, depth) + 2.2 * noise(x / 170, yy / 11) + 0.5 * noise(x / 25, yy / 2.5);
      const spacing = 3.1 + 0.9 * noise(radius / 9, 1);
      const ring = radius / spacing;
      const part = ring - Math.floor(ring);
      const late = part < 0.72 ? 0.16 * part : 0.12 + 0.88 * ((part - 0.72) / 0.28) ** 1.6;
      const year = hash(Math.floor(ring), 5);
      // Vessels open in the early wood, drawn out along the grain.
      const pore = part < 0.3 && noise(x / 3.4, yy * 2.6) > 0.74 ? 0.22 : 0;
      const fibre = 0.1 * (noise(x / 14, yy * 3.1) - 0.5) + 0.07 * (noise(x / 2.2, yy * 7) - 0.5);
      const ray = Math.abs(across) > board.width * 0.3 && noise(x / 1.3, yy / 7) > 0.86 ? -0.09 : 0;
      const sap = y > board.width * (0.93 + 0.03 * noise(x / 300, 2)) ? -0.22 : 0;
      const inKnot = away < 0.42 * knot.reach ? 0.55 * (1 - 0.4 * (away / (0.42 * knot.reach))) : 0;
      const dark = Math.min(
        1.1,
        Math.max(-0.1, 0.1 + (0.44 + 0.2 * year) * late + pore + fibre + ray + sap + inKnot),
      );
      const sheen = light * (1 + 0.06 * (noise(x / 60, yy / 9) - 0.5));
      data[to] = (222 - 112 * dark) * sheen;
      data[to + 1] = (178 - 112 * dark) * sheen;
      data[to + 2] = (126 - 92 * dark) * sheen;
      data[to + 3] = 255;
    }
  }
  return data;
}
