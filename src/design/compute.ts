import { type BuiltBase, caulAsPart, type Solids } from '../base/index.ts';
import { checkHands } from '../checks/index.ts';
import { type Finding, fail, ok, type Problem, type Result, type Severity } from '../core/index.ts';
import type { LeafLabel } from '../drawing/index.ts';
import type { LengthStyle } from '../measure/index.ts';
import { handsOf, routePart, type Tooling } from '../routing/index.ts';
import type { SketchedPart } from '../sketch/index.ts';
import { type PartsOfDesign, type PlacedDesign, partsOfDesign, partsStanding } from './base-of-design.ts';
import type { Computed, ComputedPart, ComputedPattern, Wanted } from './computed.ts';
import type { Design, PatternRequest } from './design-schema.ts';
import { leafLabels } from './leaf-labels.ts';
import { lengthStyleOf } from './length-style.ts';
import { type Memo, remember, same } from './memo.ts';
import { drawForDesign, gridsAfter, layForDesign, type PatternStage } from './patterns-of-design.ts';
import { placeDesign } from './place-design.ts';
import { calibrationFindings, resolvePaper } from './resolve-paper.ts';
import { resolveTooling } from './resolve-tooling.ts';
import { resolveWood } from './resolve-wood.ts';
import { type ComputedWood, woodOfDesign } from './wood-of-design.ts';

export interface ComputeOptions {
  readonly wanted?: Wanted;
  /** Kept by the caller from one computation to the next; without it everything is computed anew. */
  readonly memo?: Memo;
  /** Solids, loaded once by the caller: without them nothing is said of how a base weighs and stands. */
  readonly solids?: Solids;
  /** Told before each step that may take long. */
  readonly onStep?: (done: number, total: number, words: string) => void;
}

/**
 * Everything that follows from a design: the whole engine. Pure: it reads no file and no clock, and the same design gives
 * the same outcome with any memo.
 *
 *     form ─▶ values ─▶ sketch ─▶ standing ─▶ parts as made ─▶ each part: routing ─▶ findings
 *                                                              └─▶ each pattern: drawing ─▶ sheets on the pinned grid ─▶ digests
 *
 * Each step is remembered with all that it depends on, so that a change recomputes only what follows from it: another paper draws nothing
 * anew, another cutter evaluates no form; what comes out as it was is the very same object again. Problems carry the path in the design of what cannot
 * be used; `placeProblems` shows them in the file.
 */
export function compute(design: Design, options: ComputeOptions = {}): Result<Computed> {
  const steps = computeInSteps(design, options);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/**
 * The same, step by step, so that whoever drives it may do other things between two steps, or never go on: what was found by then is in the
 * memo already.
 */
export function* computeInSteps(
  design: Design,
  options: ComputeOptions = {},
): Generator<void, Result<Computed>, void> {
  const { wanted = {}, memo = new Map() } = options;
  const placed = placeDesign(design, memo);
  yield;
  const tooling = same(memo, 'tooling', resolveTooling(design.tooling, design.units.length));
  const paper = same(memo, 'paper', resolvePaper(design.paper, design.units.length));
  if (!placed.ok || !tooling.ok || !paper.ok) {
    return fail(...[placed, tooling, paper].flatMap((each) => (each.ok ? [] : each.problems)));
  }
  const solids = wanted.standing === false ? undefined : options.solids;
  const made = partsIn(design, placed.value, tooling.value, solids, memo);
  if (!made.ok) return made;
  const wood = woodIn(design, made.value.base, memo);
  if (!wood.ok) return wood;
  const partsMade = made.value.parts.map((part) => same(memo, 'part', part, part.name));
  yield;
  const cauls = (made.value.base?.cauls ?? []).map(caulAsPart);
  const requests = [
    ...(wanted.patterns ?? design.patterns),
    ...(wanted.cauls === true ? cauls.map(({ name }) => patternOfCaul(name)) : []),
  ];
  const drawingRequests = wanted.drawings ?? [];
  const every = [...partsMade, ...cauls];
  const strangers = [requests, drawingRequests].flatMap((asked) => [
    ...unknownParts(asked, every),
    ...unknownViews(asked, every),
  ]);
  if (strangers.length > 0) return fail(...strangers);

  const announce = countSteps(options, partsMade.length + 2 * requests.length + drawingRequests.length);
  const parts: ComputedPart[] = [];
  for (const part of partsMade) {
    announce(`routing of ${part.label}`);
    const asked = [...design.patterns, ...requests, ...drawingRequests].filter(
      (each) => each.part === part.name,
    );
    parts.push(routeIn(part, tooling.value, asked, memo));
    yield;
  }
  // Cauls are parts only where their patterns are asked for: they are sawn, and nothing is checked of them.
  const askedCauls = cauls
    .filter(({ name }) => [...requests, ...drawingRequests].some(({ part }) => part === name))
    .map((caul) => routeIn(same(memo, 'part', caul, caul.name), tooling.value, [], memo));
  const withCauls = [...parts, ...askedCauls];
  const stageOf = (request: PatternRequest): PatternStage => ({
    design,
    request,
    paper: paper.value,
    leaves: leavesFor(request, made.value.base, wood.value),
    memo,
    announce,
    ...partNamed(request.part, withCauls),
  });
  const laid: Result<ComputedPattern>[] = [];
  for (const request of requests) {
    laid.push(layForDesign(stageOf(request)));
    yield;
  }
  const problems = laid.flatMap((each) => (each.ok ? [] : each.problems));
  if (problems.length > 0) return fail(...problems);
  const patterns = laid.flatMap((each) => (each.ok ? [each.value] : []));
  return ok({
    design,
    lengths: lengthStyleOf(design),
    sketch: placed.value.sketch,
    ...(made.value.base === undefined ? {} : { base: made.value.base }),
    ...(wood.value === undefined ? {} : { wood: wood.value }),
    parts: same(memo, 'parts', withCauls),
    patterns,
    drawings: drawingRequests.map((request) => ({ request, pattern: drawForDesign(stageOf(request)) })),
    findings: same(
      memo,
      'all findings',
      gravestFirst([
        ...made.value.findings,
        ...(wood.value?.findings ?? []),
        ...parts.flatMap((each) => findingsIn(each, lengthStyleOf(design), memo)),
        ...calibrationFindings(paper.value),
      ]),
    ),
    grids: gridsAfter(design.grids, patterns),
  });
}

const patternOfCaul = (part: string): PatternRequest => ({ part, view: 'part', mirrored: false });

/** The parts as made; those cut already as they were when they were cut. */
function partsIn(
  design: Design,
  placed: PlacedDesign,
  tooling: Tooling,
  solids: Solids | undefined,
  memo: Memo,
): Result<PartsOfDesign> {
  // Parts alone are taken as they are drawn: nothing worth remembering.
  if (placed.placed === undefined) return partsOfDesign(design, placed, tooling);
  const inputs = [placed, tooling, design.units, design.base, design.measured];
  const made = remember(memo, { stage: 'base', inputs }, () => partsOfDesign(design, placed, tooling));
  if (solids === undefined || !made.ok) return made;
  return ok(remember(memo, { stage: 'standing', inputs }, () => partsStanding(design, made.value, solids)));
}

function leavesFor(
  { part, mirrored }: PatternRequest,
  base: BuiltBase | undefined,
  wood: ComputedWood | undefined,
): readonly LeafLabel[] {
  const members = (base?.made ?? []).flatMap((each) => each.members);
  return leafLabels(wood, part, mirrored, (id) =>
    members.some((member) => member.part === id && member.hand === 'right'),
  );
}

/** Of parts alone no wood is reckoned; what is typed is read all the same. */
function woodIn(design: Design, base: BuiltBase | undefined, memo: Memo): Result<ComputedWood | undefined> {
  if (base === undefined) {
    const read = resolveWood(design);
    return read.ok ? ok(undefined) : read;
  }
  const inputs = [base, design.wood, design.base, design.units];
  return remember(memo, { stage: 'wood', inputs }, () => woodOfDesign(design, base));
}

function routeIn(
  part: SketchedPart,
  tooling: Tooling,
  asked: readonly PatternRequest[],
  memo: Memo,
): ComputedPart {
  const routing = remember(memo, { stage: 'routing', of: part.name, inputs: [part, tooling] }, () =>
    routePart(part, tooling),
  );
  const turned = [...new Set(asked.map(({ mirrored }) => mirrored))].toSorted();
  const hands = remember(memo, { stage: 'hands', of: part.name, inputs: [part, routing, turned] }, () =>
    handsOf(part, routing, turned),
  );
  return remember(memo, { stage: 'computed part', of: part.name, inputs: [part, routing, hands] }, () => ({
    part,
    routing,
    hands,
  }));
}

function findingsIn({ part, hands }: ComputedPart, lengths: LengthStyle, memo: Memo): readonly Finding[] {
  return remember(memo, { stage: 'findings', of: part.name, inputs: [hands, lengths] }, () =>
    checkHands(hands, lengths),
  );
}

/** Parts that patterns are asked of and the form does not have. Paths hold where the requests are the design's own. */
function unknownParts(
  requests: readonly PatternRequest[],
  parts: readonly SketchedPart[],
): readonly Problem[] {
  const names = parts.map(({ name }) => name);
  return requests.flatMap(({ part }, at) => {
    if (names.includes(part)) return [];
    const expected = `one of: ${names.join(', ')}`;
    const message = `The form has no part called "${part}" at these parameters: expected ${expected}.`;
    return [{ code: 'design.unknown-part', message, path: `patterns.${at}.part`, found: part, expected }];
  });
}

/** Views asked of parts that are only sawn, for which there is no template and nothing that a cutter leaves. */
function unknownViews(
  requests: readonly PatternRequest[],
  parts: readonly SketchedPart[],
): readonly Problem[] {
  return requests.flatMap(({ part: name, view }, at) => {
    const part = parts.find((each) => each.name === name);
    if (part?.onlySawn !== true || view === 'part') return [];
    const message = `${part.label} is sawn, not routed: it has a pattern of itself alone.`;
    return [
      { code: 'design.only-sawn', message, path: `patterns.${at}.view`, found: view, expected: 'part' },
    ];
  });
}

/** The requests were checked against the parts: another name is a programmer's mistake. */
function partNamed(name: string, parts: readonly ComputedPart[]): ComputedPart {
  const found = parts.find(({ part }) => part.name === name);
  if (!found) throw new RangeError(`no such part: ${name}`);
  return found;
}

function countSteps({ onStep }: ComputeOptions, total: number): (words: string) => void {
  let done = 0;
  return (words) => onStep?.(done++, total, words);
}

const GRAVITY: readonly Severity[] = ['stop', 'caution', 'note'];

function gravestFirst(findings: readonly Finding[]): readonly Finding[] {
  return findings.toSorted((a, b) => GRAVITY.indexOf(a.severity) - GRAVITY.indexOf(b.severity));
}
