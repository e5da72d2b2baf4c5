import type { Outline, Region, Vec } from '../../../src/geometry/index.ts';
import { circleAt, loopThrough, penAt, regionOf, roundedLoop } from './pen.ts';
import type { Random } from './random.ts';

type Draw = (random: Random, size: number) => Region[];

/** Rings of so many edges about the origin. On one circle, the more edges there are the more lie within an offset's reach. */
const RINGS: Readonly<Record<string, (random: Random, size: number, radius: number) => Region[]>> = {
  star: (r, size, radius) => {
    const count = Math.max(3, Math.round(size / 2));
    const spike = 100 * (1 - r.between(0.1, 0.95));
    return [regionOf(polar(2 * count, (i) => (i % 2 === 0 ? radius : radius - spike)))];
  },
  'random ring': (r, size, radius) => [
    regionOf(
      polar(
        size,
        () => r.between(radius - 60, radius),
        () => (r.next() < 0.5 ? 0 : bulgeOfMany((100 * size) / radius, 0.4, r.between(-1, 1))),
      ),
    ),
  ],
  noise: (r, size, radius) => {
    const rough = r.ratio(1e-4, 5);
    return [regionOf(polar(size, () => radius + r.between(-rough, rough)))];
  },
  gear: (r, size, radius) => {
    const teeth = Math.max(4, Math.round(size / 4));
    const root = radius - r.between(2, 20);
    const pen = penAt(radius, 0);
    for (let i = 0; i < teeth; i++) {
      const a = (2 * Math.PI * i) / teeth;
      const at = (f: number): number => a + (f * 2 * Math.PI) / teeth;
      pen.arcTo(radius * Math.cos(at(0.4)), radius * Math.sin(at(0.4)), 0, 0, 1);
      pen.lineTo(root * Math.cos(at(0.5)), root * Math.sin(at(0.5)));
      pen.arcTo(root * Math.cos(at(0.9)), root * Math.sin(at(0.9)), 0, 0, 1);
      if (i + 1 < teeth) pen.lineTo(radius * Math.cos(at(1)), radius * Math.sin(at(1)));
    }
    return [regionOf(pen.close())];
  },
  'near-tangent rounds': (r, size, radius) => {
    const count = Math.max(3, Math.round(size / 2));
    const points = ringPoints(count, () => r.between(radius - 40, radius));
    const smooth = roundedLoop(
      points,
      points.map(() => r.between(0.5, 40)),
    );
    return [regionOf(bend(smooth, r))];
  },
  'near-tangent arcs': (r, size, radius) => {
    const count = Math.max(4, size);
    // Vertices on a circle, arcs that differ from it by a hair either way.
    const exact = Math.tan(Math.PI / (2 * count));
    const off = r.ratio(1e-9, 1e-3);
    return [
      regionOf(
        polar(
          count,
          () => radius,
          () => exact * (1 + r.between(-off, off)),
        ),
      ),
    ];
  },
};

const ring =
  (family: string): Draw =>
  (random, size) =>
    RINGS[family]!(random, size, 100);

/**
 * Outlines that break offsets. `size` is about the number of edges wanted; small ones are for fuzzing, large ones for timing.
 */
export const ADVERSARIAL: Readonly<Record<string, Draw>> = {
  star: ring('star'),
  'random ring': ring('random ring'),
  noise: ring('noise'),
  comb: (r, size) => {
    const teeth = Math.max(2, Math.round(size / 4));
    const pitch = r.between(2, 12);
    const slot = pitch * r.between(0.1, 0.9);
    const depth = r.between(5, 60);
    const pen = penAt(0, -10);
    pen.lineTo(teeth * pitch, -10);
    for (let i = teeth - 1; i >= 0; i--) {
      const x = i * pitch;
      pen
        .lineTo(x + pitch, depth)
        .lineTo(x + slot, depth)
        .lineTo(x + slot, 0);
      if (i > 0) pen.lineTo(x, 0);
    }
    return [regionOf(pen.lineTo(0, 0).close())];
  },
  gear: ring('gear'),
  spiral: (r, size) => {
    // A strip of half circles wound round, back along its inner side.
    const halves = Math.max(3, Math.round((size - 2) / 2));
    const width = r.between(1, 6);
    const gap = r.between(0.5, 6);
    return [regionOf(spiralStrip(halves, width, gap))];
  },
  'near-tangent rounds': ring('near-tangent rounds'),
  'near-tangent arcs': ring('near-tangent arcs'),
  neck: (r) => {
    const neck = r.pick([2, 4, 6, 10]) + r.pick([0, 0, 0, 1e-10, -1e-10, 1e-9, -1e-8, 1e-7, 1e-6, -1e-6]);
    const a = r.between(10, 30);
    const half = neck / 2;
    const long = r.between(0, 1) < 0.3 ? 0.5 : r.between(2, 30);
    const pen = penAt(-long, -half);
    pen
      .lineTo(long, -half)
      .lineTo(long, -a)
      .lineTo(long + 40, -a)
      .lineTo(long + 40, a)
      .lineTo(long, a);
    pen.lineTo(long, half).lineTo(-long, half).lineTo(-long, a).bulgeTo(-long, -a, r.between(0.2, 1.4));
    return [regionOf(pen.close())];
  },
  'curved neck': (r) => {
    const neck = r.pick([2, 4, 6]) + r.pick([0, 0, 1e-9, -1e-9, 1e-7, -1e-6]);
    const big = r.pick([10, 25, 80, 1000]);
    const reach = Math.min(8, big * 0.6);
    const sag = big - Math.sqrt(big * big - reach * reach);
    const h = neck / 2 + sag;
    const pen = penAt(-reach, -h);
    pen
      .arcTo(reach, -h, 0, -neck / 2 - big, -1)
      .lineTo(40, -h - 15)
      .lineTo(40, h + 15)
      .lineTo(reach, h);
    pen
      .arcTo(-reach, h, 0, neck / 2 + big, -1)
      .lineTo(-40, h + 15)
      .lineTo(-40, -h - 15);
    return [regionOf(pen.close())];
  },
  'radius equal to the offset': (r) => {
    const radius = r.pick([2, 3, 5]);
    const points = ringPoints(r.whole(3, 9), () => r.between(40, 100));
    return [
      regionOf(
        roundedLoop(
          points,
          points.map(() => radius),
        ),
      ),
    ];
  },
  'nested holes': (r, size) => {
    const across = Math.max(1, Math.round(Math.sqrt(size / 4)));
    const cell = 24;
    const holes: Outline[] = [];
    const islands: Region[] = [];
    for (let i = 0; i < across * across; i++) {
      const x = (i % across) * cell + cell / 2;
      const y = Math.floor(i / across) * cell + cell / 2;
      const kind = r.next();
      if (kind < 0.4)
        holes.push(circleAt(x, y, r.pick([2, 5, 8, 10, 12 - 1e-6, r.between(1, 11.5)]), -1, `h${i}`));
      else if (kind < 0.7) {
        const a = r.between(1, 11.5);
        holes.push(
          loopThrough([pt(x - a, y - a), pt(x - a, y + a), pt(x + a, y + a), pt(x + a, y - a)], [], `h${i}.`),
        );
      } else if (kind < 0.9) {
        holes.push(circleAt(x, y, 11, -1, `h${i}`));
        islands.push(regionOf(circleAt(x, y, r.pick([1, 5, 7]), 1, `i${i}`)));
      }
    }
    const side = across * cell;
    const outer = loopThrough([pt(-2, -2), pt(side + 2, -2), pt(side + 2, side + 2), pt(-2, side + 2)]);
    return [regionOf(outer, ...holes), ...islands];
  },
  cusps: (r) => {
    // Three half circles that meet in cusps, and the same with a bite of any size.
    const split = r.between(0.15, 0.85) * 100;
    const pen = penAt(0, 0);
    pen
      .arcTo(split, 0, split / 2, 0, -1)
      .arcTo(100, 0, (100 + split) / 2, 0, -1)
      .arcTo(0, 0, 50, 0, 1);
    return [regionOf(pen.close())];
  },
  crescent: (r) => {
    const inner = r.between(0.05, 0.95);
    const outer = r.between(inner + 0.02, 3);
    const pen = penAt(-50, 0).bulgeTo(50, 0, outer);
    return [regionOf(pen.bulgeTo(-50, 0, -inner).close())];
  },
  'kilometre radius': (r) => {
    const radius = r.ratio(1e4, 1e6);
    const half = r.between(50, 600);
    const sag = radius - Math.sqrt((radius - half) * (radius + half));
    const w = sag * 2 + r.between(10, 60);
    const pen = penAt(-half, 0);
    pen.arcTo(half, 0, 0, r.pick([1, -1]) * Math.sqrt((radius - half) * (radius + half)), 1);
    const flat = pen.close().edges[0]!;
    const centre = flat.kind === 'arc' ? flat.centre : pt(0, 0);
    const turn = centre.y > 0 ? 1 : -1;
    const top = penAt(-half, 0).arcTo(half, 0, centre.x, centre.y, turn).lineTo(half, w);
    return [regionOf(top.arcTo(-half, w, 0, w + Math.sqrt((radius - half) * (radius + half)), -1).close())];
  },
  'sides all but straight': (r) => {
    // Arcs whose circles are so large, up to ten kilometres, that their last digits are longer than what touches.
    const foot = r.between(20, 60);
    const corners = [
      pt(0, 0),
      pt(foot, -3 * r.next()),
      pt(foot - 5 * r.next(), 300),
      pt(70, 700),
      pt(20 + r.next(), 700 + r.next()),
      pt(3 * r.next(), 310),
    ];
    const bulges = corners.map((from, i) => {
      const to = corners[(i + 1) % corners.length]!;
      // The tangent of a quarter of the arc's angle, which is chord over radius in so flat a one.
      const chord = Math.hypot(to.x - from.x, to.y - from.y);
      return (r.pick([0, 1, 1, -1, -1]) * chord) / (4 * r.ratio(1e5, 1e7));
    });
    return [regionOf(loopThrough(corners, bulges))];
  },
  'tiny edges': (r, size) => {
    const small = r.ratio(1e-6, 1e-2);
    const points: Vec[] = [];
    const count = Math.max(4, Math.round(size / 2));
    ringPoints(count, () => r.between(50, 100)).forEach((p) => {
      points.push(p);
      // Onwards round the ring, up to a sixth of a turn to either side.
      const a = Math.atan2(p.x, -p.y) + r.between(-1, 1);
      points.push(pt(p.x + small * Math.cos(a), p.y + small * Math.sin(a)));
    });
    return [
      regionOf(
        loopThrough(
          points,
          points.map(() => bulgeOfMany(size, 0.1, r.pick([0, 0, 1, -1]))),
        ),
      ),
    ];
  },
  slivers: (r) => {
    const thin = r.ratio(1e-5, 1);
    const lean = r.between(-20, 20);
    return [
      regionOf(
        loopThrough(
          [pt(0, 0), pt(100, lean), pt(100, lean + thin), pt(r.between(20, 50), lean / 2 + 3 + thin)],
          [r.between(-0.02, 0.02)],
        ),
      ),
    ];
  },
  'whole circles': (r, size) => {
    const regions: Region[] = [];
    for (let i = 0; i < Math.min(size, 6); i++) {
      const radius = r.between(4, 10);
      const ring = r.next() < 0.5 ? [circleAt(25 * i + 1, 0, r.between(1, radius - 1.5), -1, `h${i}`)] : [];
      regions.push(regionOf(circleAt(25 * i, r.between(-3, 3) * 0, radius, 1, `c${i}`), ...ring));
    }
    return regions.filter(({ holes }) => holes.every(({ edges }) => edges[0]!.kind === 'arc'));
  },
};

/** The same rings, but as far round as they have edges: as at a thousand edges on one circle, so that all sizes are alike in what meets what. */
export const GROWING: Readonly<Record<string, Draw>> = Object.fromEntries(
  Object.entries(RINGS).map(([family, draw]): [string, Draw] => [
    `${family}, as large as it has edges`,
    (random, size) => draw(random, size, Math.max(100, size / 10)),
  ]),
);

/**
 * A share of what edges of a ring of so many may bulge. Arcs of many would reach into their neighbours, a hundredth of a millimetre away,
 * and nothing be left but crossings, more of them than edges; the flattest would have radii of a hundred kilometres, whose centres
 * doubles do not hold.
 */
function bulgeOfMany(edges: number, ofFew: number, share: number): number {
  const bulge = share * (edges > 60 ? 0.8 / edges : ofFew);
  return edges > 60 && Math.abs(bulge) < FLATTEST ? 0 : bulge;
}

const FLATTEST = 1e-5;

const pt = (x: number, y: number): Vec => ({ x, y });

function ringPoints(count: number, radius: (i: number) => number): Vec[] {
  return Array.from({ length: count }, (_, i) => {
    const a = (2 * Math.PI * i) / count;
    const d = radius(i);
    return pt(d * Math.cos(a), d * Math.sin(a));
  });
}

function polar(
  count: number,
  radius: (i: number) => number,
  bulge: (i: number) => number = () => 0,
): Outline {
  const points = ringPoints(count, radius);
  return loopThrough(
    points,
    points.map((_, i) => bulge(i)),
  );
}

/** Rounds bent out of tangency by 1e-8 to 1e-3 rad: each arc keeps its ends and takes a slightly other radius. */
function bend(outline: Outline, r: Random): Outline {
  const off = r.ratio(1e-8, 1e-3);
  const edges = outline.edges.map((edge) => {
    if (edge.kind === 'line') return edge;
    const { from, to, centre } = edge;
    const mx = (from.x + to.x) / 2;
    const my = (from.y + to.y) / 2;
    const k = 1 + r.between(-off, off);
    const moved = pt(mx + (centre.x - mx) * k, my + (centre.y - my) * k);
    return { ...edge, centre: moved, radius: Math.hypot(from.x - moved.x, from.y - moved.y) };
  });
  return { edges };
}

/** Outer side out along half circles of growing radius, inner side back. */
function spiralStrip(halves: number, width: number, gap: number): Outline {
  const pitch = width + gap;
  // Half circle k runs about (0, 0) or (pitch / 2, 0) in turn, its radius half a pitch more each time.
  const centreOf = (k: number): number => (k % 2 === 0 ? 0 : pitch / 2);
  const radiusOf = (k: number): number => 5 + width + (k * pitch) / 2;
  const sideOf = (k: number): number => (k % 2 === 0 ? 1 : -1);
  const xOf = (k: number, inset: number): number => centreOf(k) + sideOf(k) * (radiusOf(k) - inset);
  const pen = penAt(xOf(0, 0), 0);
  for (let k = 0; k < halves; k++) {
    const c = centreOf(k);
    pen.arcTo(2 * c - xOf(k, 0), 0, c, 0, 1);
  }
  const last = halves - 1;
  pen.lineTo(2 * centreOf(last) - xOf(last, width), 0);
  for (let k = last; k >= 0; k--) pen.arcTo(xOf(k, width), 0, centreOf(k), 0, -1);
  return pen.close();
}
