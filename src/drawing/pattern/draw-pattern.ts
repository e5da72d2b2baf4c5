import { once } from '../../core/index.ts';
import {
  type Box,
  boundsOfRegions,
  circleOutline,
  distance,
  norm,
  type Region,
  type Vec,
} from '../../geometry/index.ts';
import { mirrorRouting, type Routing } from '../../routing/index.ts';
import { mirrorPart, type SketchedPart } from '../../sketch/index.ts';
import type { Mark, Pattern, PatternOptions } from '../api.ts';
import { createDrawing, type Drawing, letter, pathMark, textMark } from '../layout/drawing.ts';
import { writeLength } from '../layout/figures.ts';
import { growBox, type OrientedBox, stretchInBox } from '../layout/oriented-box.ts';
import { step, stroke } from '../layout/strokes.ts';
import { boundsOfMarks } from '../scene/bounds-of-marks.ts';
import { chainOf, onChain } from './chain.ts';
import { checkLengths, drawTargets } from './check-lengths.ts';
import { type DimensionRow, drawDimensions } from './dimensions.ts';
import { drawFeed, drawTeeth } from './feed.ts';
import { fixingMarks, tapePatches } from './fixings.ts';
import { insideGrid } from './inside-grid.ts';
import { drawJointNames } from './joint-names.ts';
import { drawLabels } from './labels.ts';
import { noteBlocks } from './notes.ts';
import { openingSizes } from './opening-sizes.ts';
import { keepSideTicks, outlineMarks } from './outlines.ts';
import { drawPartEnds } from './part-ends.ts';
import { placeNotes } from './place-notes.ts';
import { plainOptions, plainPart } from './plain-words.ts';
import { drawReferenceMarks } from './reference-marks.ts';
import { drawResidueWords, hatchMarks } from './residue.ts';
import { sharpCorners } from './sharp-corners.ts';
import { type PatternSource, showsDifferences, showsPart, showsTemplate } from './source.ts';
import { type CentreFrame, centreFrame, drawStations, stationPitch } from './stations.ts';
import { drawTemplateLabels } from './template-labels.ts';
import { toolFacts } from './tool-facts.ts';
import { nameLine } from './words.ts';

/** A difference that reaches less far, mm, is not drawn. */
const LEAST_DIFFERENCE = 0.1;

/**
 * The full-size drawing of one part, in its own plane, mm. First everything whose place is given is drawn; then lettering
 * is put where it stands clear of lines and of other lettering, what must not be lost first: the name inside the outline,
 * the check targets, the key dimensions, the ticks' figures, the feed arrows. What finds no room beside its line is
 * said in the notes beside the drawing in one piece, and on the first page of the sheets. The same input gives the same drawing.
 */
export function drawPattern(part: SketchedPart, routing: Routing, options: PatternOptions): Pattern {
  const source = sourceOf(part, routing, options);
  const drawing = createDrawing(spanOf(source));
  const frame = centreFrame(source);
  const spots = insideGrid(insideOf(source), source.part.centreLine);
  const checks = checkLengths(source, spots);

  if (showsDifferences(source)) drawing.drawUnder(hatchMarks(source));
  if (showsTemplate(source)) {
    const { patches, screws } = fixingMarks(source);
    drawing.drawUnder(patches);
    drawing.draw(screws);
  }
  drawing.draw(outlineMarks(source));
  drawing.draw(keepSideTicks(source.main, tickReach(source)));
  if (showsPart(source)) drawTeeth(drawing, source);
  drawing.draw(layoutMarks(source));
  drawing.draw(jointMarks(source));
  drawTargets(drawing, checks);
  if (options.view === 'template') drawPartEnds(drawing, source);
  if (frame !== undefined) {
    drawStations(drawing, source, frame);
    const patches = showsTemplate(source) ? tapePatches(source) : [];
    const pitch = stationPitch(options.lengths);
    const labels = drawLabels(drawing, source, frame, { spots, pitch, patches });
    drawing.draw(centreLineMarks(frame, labels));
  }
  if (source.part.onlySawn !== true) drawReferenceMarks(drawing, source);
  const left = [...drawDimensions(drawing, source), ...openingRows(source)];
  const jointNotes = drawJointNames(drawing, source);
  if (showsPart(source) || options.view === 'as-routed') drawFeed(drawing, source);
  if (showsTemplate(source)) drawTemplateLabels(drawing, source);
  if (showsDifferences(source)) drawResidueWords(drawing, source);
  drawPlunges(drawing, source);
  const marks = [...drawing.marks()];
  const facts = toolFacts(source);
  // Only a drawing in one piece has notes beside it, and places for them are looked for far and wide.
  const withNotes = once(() => {
    placeNotes(drawing, noteBlocks(source, { checks, left, facts, jointNotes }), pointsRound(source));
    return { marks: [...drawing.marks()], box: boundsOfMarks(drawing.marks()) };
  });
  return {
    name: patternName(source),
    title: nameLine(source) + (options.mirrored ? ', mirrored' : ''),
    view: options.view,
    mirrored: options.mirrored,
    scene: { marks, box: boundsOfMarks(marks) },
    get withNotes() {
      return withNotes();
    },
    toolFacts: facts,
    keepOffSeams: keepOffSeams(source, marks, checks),
    checks,
    jointNotes,
  };
}

function sourceOf(part: SketchedPart, routing: Routing, given: PatternOptions): PatternSource {
  const options = plainOptions(given);
  const own = plainPart(options.mirrored ? mirrorPart(part) : part);
  const ownRouting = worthShowing(options.mirrored ? mirrorRouting(routing) : routing);
  const main = mainRegions(own, ownRouting, options);
  const { centreLine } = own;
  // A form without a centre line of any length gets the middle of its part.
  const isLine = distance(centreLine.from, centreLine.to) > 1;
  return {
    part: isLine ? own : { ...own, centreLine: middleLine(boundsOfRegions([own.region])) },
    routing: ownRouting,
    options,
    main,
  };
}

/** Differences that a maker could neither see nor sand away are left out. */
function worthShowing(routing: Routing): Routing {
  return { ...routing, differences: routing.differences.filter(({ reach }) => reach >= LEAST_DIFFERENCE) };
}

function openingRows({ part, options }: PatternSource): readonly DimensionRow[] {
  return openingSizes(part).map(({ label, size }) => ({ label, figure: writeLength(size, options.lengths) }));
}

function middleLine({ minX, minY, maxX, maxY }: Box): SketchedPart['centreLine'] {
  const x = (minX + maxX) / 2;
  return { from: { x, y: minY }, to: { x, y: maxY } };
}

/** About how far the drawing will reach, notes included, mm. */
function spanOf({ main, part }: PatternSource): number {
  const { minX, minY, maxX, maxY } = boundsOfRegions([part.region, ...main]);
  return norm(maxX - minX, maxY - minY) * 1.5;
}

function mainRegions(part: SketchedPart, routing: Routing, { view }: PatternOptions): readonly Region[] {
  switch (view) {
    case 'part':
    case 'all':
      return [part.region];
    case 'template':
      return routing.template;
    case 'as-routed':
      return routing.asRouted;
    default:
      return view satisfies never;
  }
}

/** Where the label stands: in the part, also on the template, which runs on past it. */
function insideOf(source: PatternSource): readonly Region[] {
  return source.options.view === 'template' ? source.routing.template : source.main;
}

/** Ticks stay on their own side of the saw line, where there is one. */
function tickReach(source: PatternSource): number {
  const { blank, tooling } = source.routing;
  const { sawAllowance } = tooling;
  return showsPart(source) && blank.length > 0 && sawAllowance > 0
    ? Math.max(0.6, sawAllowance * 0.7)
    : Infinity;
}

function jointMarks(source: PatternSource): readonly Mark[] {
  return source.part.joints.map(({ from, to }) => pathMark('joint', [stroke(from, to)]));
}

/** Where joints are cut, and the edges of a back that lies beside the face. */
function layoutMarks({ part }: PatternSource): readonly Mark[] {
  return (part.layouts ?? []).map(({ hidden, edges, closed }) =>
    pathMark(hidden ? 'hidden' : 'mark', edges, closed),
  );
}

/** Where the cutter goes down inside an opening. */
function drawPlunges(drawing: Drawing, source: PatternSource): void {
  for (const { plunge, label } of source.part.openings) {
    const tag = { id: 'plunge', role: 'left' } as const;
    const ring = circleOutline(plunge, 2, tag, 1).edges;
    drawing.draw([
      pathMark('feed', ring, true),
      pathMark('feed', [stroke({ x: plunge.x - 3.2, y: plunge.y }, { x: plunge.x + 3.2, y: plunge.y })]),
      pathMark('feed', [stroke({ x: plunge.x, y: plunge.y - 3.2 }, { x: plunge.x, y: plunge.y + 3.2 })]),
    ]);
    letter(
      drawing,
      [`${label}: plunge here`, 'plunge here', 'plunge'].flatMap((text) =>
        [0, Math.PI / 2].flatMap((angle) =>
          [2.5, 1.8].flatMap((height) =>
            ([4.4, -4.4 - height] as const).map((above) =>
              textMark(text, step(plunge, { x: Math.cos(angle), y: Math.sin(angle) }, 0, above), {
                height,
                angle,
                align: 'middle',
                role: 'feed',
              }),
            ),
          ),
        ),
      ),
    );
  }
}

/** The centre line, broken where a label stands on it. */
function centreLineMarks(frame: CentreFrame, labels: readonly OrientedBox[]): readonly Mark[] {
  const gaps = labels
    .map((box) => stretchInBox(frame.from, frame.to, growBox(box, 0.5)))
    .filter((gap) => gap !== undefined)
    .sort((a, b) => a.from - b.from);
  const at = (t: number): Vec => ({
    x: frame.from.x + t * (frame.to.x - frame.from.x),
    y: frame.from.y + t * (frame.to.y - frame.from.y),
  });
  const marks: Mark[] = [];
  let done = 0;
  for (const gap of [...gaps, { from: 1, to: 1 }]) {
    if (gap.from > done) marks.push(pathMark('centre', [stroke(at(done), at(gap.from))]));
    done = Math.max(done, gap.to);
  }
  return marks;
}

/** Points all round what the pattern is about, 40 mm apart or farther. */
function pointsRound(source: PatternSource): readonly Vec[] {
  return source.main.flatMap(({ outer }) => {
    const chain = chainOf(outer.edges);
    const count = Math.min(60, Math.ceil(chain.length / 40));
    return Array.from({ length: count }, (_, i) => onChain(chain, (i * chain.length) / count).at);
  });
}

function patternName(source: PatternSource): string {
  const { view, mirrored } = source.options;
  return [source.part.name, ...(view === 'all' ? [] : [view]), ...(mirrored ? ['mirrored'] : [])].join('-');
}

/** Where a seam would do harm: sharp corners, joints, targets, and small figures. */
function keepOffSeams(
  source: PatternSource,
  marks: readonly Mark[],
  checks: Pattern['checks'],
): Pattern['keepOffSeams'] {
  return [
    ...sharpCorners(source.main).map((at) => ({ at, clearance: 8 })),
    ...source.part.joints.flatMap(({ from, to }) =>
      [from, to, { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 }].map((at) => ({ at, clearance: 6 })),
    ),
    ...checks.flatMap(({ from, to }) => [from, to].map((at) => ({ at, clearance: 5 }))),
    ...marks
      .filter((mark) => mark.kind === 'text' && mark.role === 'dimension')
      .map((mark) => ({ at: (mark as Extract<Mark, { kind: 'text' }>).at, clearance: 5 })),
  ];
}
