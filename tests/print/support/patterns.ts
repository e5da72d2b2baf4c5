import type { LineRole, Mark, Pattern } from '../../../src/drawing/index.ts';
import {
  arc,
  boundsOfEdges,
  circleOutline,
  type Edge,
  line,
  polygonOutline,
  type Vec,
  vec,
} from '../../../src/geometry/index.ts';

const TAG = { id: 'edge', role: 'routed' } as const;

/** A pattern of loops, as a design would hand it over; invented data. */
export function patternOf(
  name: string,
  loops: readonly (readonly Edge[])[],
  extra: readonly Mark[] = [],
  keepOffSeams: Pattern['keepOffSeams'] = [],
): Pattern {
  const marks: Mark[] = [
    ...loops.map((edges): Mark => ({ kind: 'path', role: 'part', edges, closed: true })),
    ...extra,
  ];
  const scene = { marks, box: boundsOfEdges(loops.flat()) };
  return {
    name,
    title: name,
    view: 'part',
    mirrored: false,
    scene,
    withNotes: scene,
    toolFacts: [],
    keepOffSeams,
    checks: [],
  };
}

export function text(words: string, at: Vec, height = 5, angle = 0, role: LineRole = 'mark'): Mark {
  return { kind: 'text', text: words, at, height, angle, align: 'middle', weight: 'semibold', role };
}

/** A straight tapered leg that leans: sawn ends parallel to the floor. */
export function leaningLeg(height = 710, splay = 12): Pattern {
  const lean = height * Math.tan((splay * Math.PI) / 180);
  const corners = [vec(lean, 0), vec(lean + 46, 0), vec(92, height), vec(0, height)];
  return patternOf(
    'leaning-leg',
    [polygonOutline(corners, TAG).edges],
    [
      text('Leaning leg', vec(lean / 2 + 35, height / 2), 5, Math.PI / 2 + 0.2),
      text('UP', vec(50, height - 40)),
    ],
    corners.map((at) => ({ at, clearance: 12 })),
  );
}

/** A leg with a curved inside that runs into an arm, arcs tangent at their meetings. */
export function kneeLeg(): Pattern {
  const edges: Edge[] = [
    line(vec(0, 0), vec(60, 0), TAG),
    line(vec(60, 0), vec(75, 480), TAG),
    arc(vec(75, 480), vec(193.9, 600), vec(194, 481), -1, TAG),
    line(vec(193.9, 600), vec(420, 640), TAG),
    line(vec(420, 640), vec(420, 700), TAG),
    line(vec(420, 700), vec(100, 720), TAG),
    arc(vec(100, 720), vec(0, 620), vec(100, 620), 1, TAG),
    line(vec(0, 620), vec(0, 0), TAG),
  ];
  const window = circleOutline(vec(60, 660), 22, TAG, -1).edges;
  return patternOf(
    'knee-leg',
    [edges, window],
    [text('Knee leg', vec(35, 250), 7, Math.PI / 2), text('inside', vec(300, 670), 5)],
    [vec(75, 480), vec(420, 640), vec(420, 700), vec(60, 660)].map((at) => ({ at, clearance: 10 })),
  );
}

/** A long arched stretcher. */
export function archedStretcher(span = 1180): Pattern {
  const rise = 60;
  const radius = ((span / 2 - 40) ** 2 + rise ** 2) / (2 * rise);
  const edges: Edge[] = [
    line(vec(0, 0), vec(40, 0), TAG),
    arc(vec(40, 0), vec(span - 40, 0), vec(span / 2, rise - radius), -1, TAG),
    line(vec(span - 40, 0), vec(span, 0), TAG),
    line(vec(span, 0), vec(span, 110), TAG),
    line(vec(span, 110), vec(0, 110), TAG),
    line(vec(0, 110), vec(0, 0), TAG),
  ];
  return patternOf('arched-stretcher', [edges], [text('Stretcher', vec(span / 2, 80), 7)]);
}

/** A wide panel with a window: its middle sheets are empty. */
export function panelLeg(width = 560, height = 700): Pattern {
  const outer = polygonOutline(
    [vec(0, 0), vec(width, 0), vec(width - 60, height), vec(60, height)],
    TAG,
  ).edges;
  const window = polygonOutline(
    [vec(150, 120), vec(180, height - 120), vec(width - 180, height - 120), vec(width - 150, 120)],
    TAG,
  ).edges;
  return patternOf('panel-leg', [outer, window]);
}

/** A slender crescent lying askew, of arcs alone: no straight side says how it should be turned. */
export function crescent(): Pattern {
  const from = vec(0, 0);
  const to = vec(560, 380);
  const bulge = (depth: number, turn: 1 | -1, a: Vec, b: Vec): Edge => {
    const chord = Math.hypot(b.x - a.x, b.y - a.y);
    const radius = (chord * chord) / 8 / depth + depth / 2;
    const normal = vec((-turn * (b.y - a.y)) / chord, (turn * (b.x - a.x)) / chord);
    const reach = radius - depth;
    return arc(a, b, vec((a.x + b.x) / 2 + normal.x * reach, (a.y + b.y) / 2 + normal.y * reach), turn, TAG);
  };
  return patternOf('crescent', [[bulge(160, 1, from, to), bulge(60, -1, to, from)]]);
}
