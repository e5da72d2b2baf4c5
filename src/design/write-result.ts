import type { Finding } from '../core/index.ts';
import { type Region, type Similarity, STAY, transformRegion, type Vec } from '../geometry/index.ts';
import type { Sheet } from '../print/index.ts';
import type { Hand, Routing } from '../routing/index.ts';
import type { Computed, ComputedPart, ComputedPattern } from './computed.ts';
import { roundNumber, writeEdge, writePoint, writeRegion } from './region-schema.ts';
import { RESULT_VERSION, type WrittenResult } from './result-schema.ts';
import { writeBase } from './write-base.ts';
import { writeWood } from './write-wood.ts';

/** Which files came of a computation: their names beside the result. */
export interface ResultFiles {
  /** The PDF of each pattern, by the pattern's name. */
  readonly patterns: ReadonlyMap<string, string>;
  readonly all: readonly string[];
  /** Name of the design's own file, without its folder. */
  readonly design?: string;
}

const NO_FILES: ResultFiles = { patterns: new Map(), all: [] };

type WrittenHand = NonNullable<WrittenResult['parts'][number]['hands']>[number];

/** A computation as other programs read it. */
export function resultOf(computed: Computed, files: ResultFiles = NO_FILES): WrittenResult {
  const { design, sketch, base, wood, parts, patterns, findings } = computed;
  return {
    'legwright-result': RESULT_VERSION,
    design: {
      name: design.name,
      revision: design.revision,
      form: { name: sketch.form, version: sketch.version },
      ...(files.design === undefined ? {} : { file: files.design }),
    },
    parameters: Object.fromEntries(
      Object.entries(sketch.parameters).map(([name, value]) => [
        name,
        typeof value === 'number' ? roundNumber(value) : value,
      ]),
    ),
    parts: parts.map(partOf),
    ...(base === undefined ? {} : { base: writeBase(base) }),
    ...(wood === undefined ? {} : { wood: writeWood(computed, wood) }),
    patterns: patterns.map((each) => patternOf(each, parts, files)),
    findings: findings.map(findingOf),
    files: files.all,
  };
}

function partOf({ part, routing, hands }: ComputedPart): WrittenResult['parts'][number] {
  return {
    name: part.name,
    label: part.label,
    thickness: roundNumber(part.thickness),
    grain: roundNumber(part.grain),
    pieces: (part.pieces ?? []).map(({ name, label, leftOf: { from, to }, grain }) => ({
      name,
      label,
      leftOf: { from: writePoint(from), to: writePoint(to) },
      grain: roundNumber(grain),
    })),
    up: roundNumber(part.up),
    quantity: part.quantity,
    hands: hands.map(handOf),
    outline: writeRegion(part.region),
    dimensions: part.dimensions.map(({ kind, name, label, value }) => ({
      kind,
      name,
      label,
      value: roundNumber(value),
    })),
    routing: routingOf(routing),
  };
}

function handOf({ name, mirrored, quantity, routing }: Hand): WrittenHand {
  return { name, mirrored, quantity, feed: feedOf(routing) };
}

function feedOf({ feed }: Routing): WrittenHand['feed'] {
  return feed.map(({ edge, grain, path }) => ({ edge, grain, path: writeEdge(path) }));
}

function routingOf(routing: Routing): WrittenResult['parts'][number]['routing'] {
  const { tightest, largestCutter, blade } = routing;
  return {
    offset: roundNumber(routing.offset),
    offsets: routing.offsets.map(({ edge, offset, across }) => ({
      edge,
      offset: roundNumber(offset),
      ...(across === undefined ? {} : { across: roundNumber(across) }),
    })),
    template: routing.template.map(writeRegion),
    asRouted: routing.asRouted.map(writeRegion),
    blank: routing.blank.map(writeRegion),
    differences: routing.differences.map(({ kind, at, reach, area, edges, region }) => ({
      kind,
      at: writePoint(at),
      reach: roundNumber(reach),
      area: roundNumber(area),
      edges,
      region: writeRegion(region),
    })),
    feed: feedOf(routing),
    ...(tightest && {
      tightest: {
        radius: roundNumber(tightest.radius),
        at: writePoint(tightest.at),
        edge: tightest.edge,
      },
    }),
    ...(largestCutter && { largestCutter }),
    ...(blade && { blade: { width: blade.blade.width, leastRadius: roundNumber(blade.leastRadius) } }),
    depthPossible: routing.depth.possible,
  };
}

function patternOf(
  { request, pattern, plan, digests }: ComputedPattern,
  parts: readonly ComputedPart[],
  files: ResultFiles,
): WrittenResult['patterns'][number] {
  const { part, routing } = parts.find((each) => each.part.name === request.part)!;
  const over: Similarity = { ...STAY, mirrored: pattern.mirrored };
  const turned = (regions: readonly Region[]) =>
    regions.map((region) => writeRegion(transformRegion(region, over)));
  const file = files.patterns.get(pattern.name);
  return {
    name: pattern.name,
    title: pattern.title,
    part: part.name,
    view: pattern.view,
    mirrored: pattern.mirrored,
    ...(file === undefined ? {} : { file }),
    regions: {
      designed: turned([part.region]),
      template: turned(routing.template),
      asRouted: turned(routing.asRouted),
    },
    checks: pattern.checks.map(({ name, from, to, nominal }) => ({
      name,
      from: writePoint(from),
      to: writePoint(to),
      nominal: roundNumber(nominal),
    })),
    paper: {
      name: plan.paper.name,
      width: roundNumber(plan.page.width),
      height: roundNumber(plan.page.height),
      calibration: plan.paper.calibration,
    },
    rows: plan.rows,
    places: plan.places,
    sheets: plan.sheets.map((sheet, at) => ({
      row: sheet.row,
      place: sheet.place,
      page: sheet.page,
      toPattern: inverseMatrix(sheet),
      digest: digests[at]!,
    })),
  };
}

/** From the page to the pattern: a pattern is turned and moved on its way to the page, never scaled or mirrored. */
function inverseMatrix({ toPage: { turn, shift } }: Sheet): [number, number, number, number, number, number] {
  const c = Math.cos(turn);
  const s = Math.sin(turn);
  const back = (p: Vec): Vec => ({ x: c * p.x + s * p.y, y: -s * p.x + c * p.y });
  const { x: e, y: f } = back({ x: -shift.x, y: -shift.y });
  return [c, -s, s, c, e, f].map(roundNumber) as [number, number, number, number, number, number];
}

function findingOf({ at, ...rest }: Finding): WrittenResult['findings'][number] {
  return at === undefined ? rest : { ...rest, at: writePoint(at) };
}

/** The text of a result file. */
export function writeResult(result: WrittenResult): string {
  return `${JSON.stringify(result)}\n`;
}
