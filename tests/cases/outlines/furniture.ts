import type { Region, Vec } from '../../../src/geometry/index.ts';
import { circleAt, loopThrough, penAt, regionOf, roundedLoop } from './pen.ts';
import type { Random } from './random.ts';

/** Outlines of the kinds that the forms draw, sizes of our own choosing. */
export const FURNITURE: Readonly<Record<string, (random: Random) => Region[]>> = {
  'straight leg': (r) => {
    const lean = r.between(-150, 150);
    const w = r.between(40, 120);
    const h = r.between(300, 750);
    return [regionOf(loopThrough([pt(0, 0), pt(w, 0), pt(w + lean, h), pt(lean, h)]))];
  },
  'tapered leg with rounds': (r) => {
    const foot = r.between(25, 60);
    const head = r.between(60, 140);
    const h = r.between(350, 730);
    const points = [pt(0, 0), pt(foot, 0), pt(head, h), pt(-10, h)];
    return [
      regionOf(
        roundedLoop(
          points,
          points.map(() => r.between(1, 20)),
        ),
      ),
    ];
  },
  'knee leg': (r) => {
    const h = r.between(400, 720);
    const arm = r.between(150, 300);
    const w = r.between(45, 80);
    const points = [pt(0, 0), pt(w, 0), pt(w + 15, h - 140), pt(arm, h - 60), pt(arm, h), pt(-20, h)];
    const radii = [3, 3, r.between(20, 120), r.between(1, 10), 4, 12];
    return [regionOf(roundedLoop(points, radii))];
  },
  'curved leg': (r) => {
    // Both long edges follow a chain of tangent arcs.
    const h = r.between(400, 720);
    const right: Vec[] = [];
    const left: Vec[] = [];
    const count = r.whole(4, 14);
    const sway = r.between(-40, 40);
    const width = r.between(35, 90);
    for (let i = 0; i <= count; i++) {
      const t = i / count;
      const x = sway * Math.sin(2 * Math.PI * t) + 60 * t * t;
      const half = (width / 2) * (1 + 0.4 * Math.cos(3 * t));
      right.push(pt(x + half, h * t));
      left.push(pt(x - half, h * t));
    }
    return [regionOf(loopThrough([...right, ...left.reverse()], tangentBulges([...right, ...left])))];
  },
  'arched stretcher': (r) => {
    const length = r.between(500, 1400);
    const depth = r.between(70, 140);
    const rise = r.between(10, 0.7 * depth);
    const shoulder = r.between(20, 120);
    const half = length / 2 - shoulder;
    const pen = penAt(-length / 2, 0);
    pen.lineTo(-half, 0).bulgeTo(half, 0, -rise / half);
    return [
      regionOf(
        pen
          .lineTo(length / 2, 0)
          .lineTo(length / 2, depth)
          .lineTo(-length / 2, depth)
          .close(),
      ),
    ];
  },
  'panel leg with window': (r) => {
    const w = r.between(200, 420);
    const h = r.between(350, 720);
    const rim = r.between(35, 80);
    const window = [pt(rim, rim), pt(rim, h - rim), pt(w - rim, h - rim), pt(w - rim, rim)];
    const outer = roundedLoop([pt(0, 0), pt(w, 0), pt(w - 15, h), pt(15, h)], [2, 2, 25, 25]);
    return [
      regionOf(
        outer,
        roundedLoop(
          window,
          window.map(() => r.between(4, 60)),
          'w',
        ),
      ),
    ];
  },
  'slotted stretcher': (r) => {
    const length = r.between(400, 1100);
    const outer = loopThrough([pt(0, 0), pt(length, 0), pt(length, 90), pt(0, 90)]);
    const slots = [0.25, 0.5, 0.75].map((at, i) => {
      const x = at * length;
      const a = r.between(6, 12);
      const pen = penAt(x - 25, 45 + a, `s${i}.`);
      pen.lineTo(x + 25, 45 + a).arcTo(x + 25, 45 - a, x + 25, 45, -1);
      pen.lineTo(x - 25, 45 - a).arcTo(x - 25, 45 + a, x - 25, 45, -1);
      return pen.close();
    });
    return [regionOf(outer, ...slots, circleAt(20, 45, r.between(3, 10), -1))];
  },
  'foot with notches': (r) => {
    const pen = penAt(0, 0);
    const count = r.whole(1, 4);
    let x = 0;
    for (let i = 0; i < count; i++) {
      const gap = r.between(15, 40);
      const notch = r.between(4, 20);
      const deep = r.between(5, 45);
      pen
        .lineTo(x + gap, 0)
        .lineTo(x + gap, deep)
        .lineTo(x + gap + notch, deep)
        .lineTo(x + gap + notch, 0);
      x += gap + notch;
    }
    const end = x + 25;
    return [regionOf(pen.lineTo(end, 0).lineTo(end, 60).bulgeTo(0, 60, r.between(-0.2, 0.3)).close())];
  },
};

const pt = (x: number, y: number): Vec => ({ x, y });

/** Bulges that make arcs through points nearly tangent: from the turn of the chords on either side. */
function tangentBulges(points: readonly Vec[]): number[] {
  const count = points.length;
  return points.map((p, i) => {
    const before = points[(i + count - 1) % count]!;
    const next = points[(i + 1) % count]!;
    const after = points[(i + 2) % count]!;
    const turn = turnOf(before, p, next) / 2 + turnOf(p, next, after) / 2;
    return Math.abs(turn) > 0.5 ? 0 : Math.tan(turn / 4);
  });
}

function turnOf(a: Vec, b: Vec, c: Vec): number {
  const ux = b.x - a.x;
  const uy = b.y - a.y;
  const vx = c.x - b.x;
  const vy = c.y - b.y;
  return Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy);
}
