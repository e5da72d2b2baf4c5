import { routingScene, type ScreenScene, sceneForScreen } from '../../../drawing/index.ts';
import { directionAt, perimeterOfOutline, pointAt, type Region, type Vec } from '../../../geometry/index.ts';
import { formatLength } from '../../../measure/index.ts';
import { type HandName, type Routing, type ToolPath, toolPathOf } from '../../../routing/index.ts';
import type { Answering } from './answering.ts';

export interface RoutingOptions {
  /** By its name; the first part when absent. */
  readonly part?: string;
  readonly mirrored: boolean;
}

/** A place where the cutter leaves wood or takes too much, as it is listed. */
export interface ListedDifference {
  readonly kind: 'left' | 'lost';
  readonly at: Vec;
  readonly edges: readonly string[];
  /** How far, in the design's own unit. */
  readonly reach: string;
  /** mm². */
  readonly area: number;
}

/** Which way the tool is fed along one stretch of an edge, and how it meets the grain. */
export interface FeedArrow {
  readonly at: Vec;
  /** rad. */
  readonly angle: number;
  readonly grain: 'with' | 'against' | 'neutral' | 'end';
}

/** How one hand of a part is routed. */
export interface RoutingInHand {
  readonly part: string;
  readonly label: string;
  readonly hand: HandName;
  readonly hands: readonly { readonly name: HandName; readonly mirrored: boolean }[];
  readonly scene: ScreenScene;
  /** What the tool is moved by on the page. */
  readonly region: Region;
  readonly template: readonly Region[];
  readonly path: ToolPath;
  /** Length of each of its loops, mm. */
  readonly rounds: readonly number[];
  readonly differences: readonly ListedDifference[];
  readonly feed: readonly FeedArrow[];
  readonly depth: Routing['depth'];
  readonly facts: readonly { readonly name: RoutingFact; readonly value: string }[];
}

export type RoutingFact = 'offset' | 'outside' | 'tightest' | 'largestCutter' | 'blade' | 'thickness';

/** Part, template, what the bit leaves and the way it is fed, for one hand of one part. */
export function routing(
  { computed }: Answering,
  { part: name, mirrored }: RoutingOptions,
): RoutingInHand | undefined {
  const found = computed?.parts.find(({ part }) => name === undefined || part.name === name);
  if (computed === undefined || found === undefined) return undefined;
  const hand = found.hands.find((each) => each.mirrored === mirrored) ?? found.hands[0];
  if (hand === undefined) return undefined;
  const { part, routing: own } = hand;
  const said = (mm: number): string => formatLength(mm, computed.lengths);
  const { tightest, largestCutter, blade } = own;
  // The name of the bit in hand is of the one it was taken from: its figures may be others by now.
  const largestWords = ({ name, diameter }: NonNullable<typeof largestCutter>): string =>
    diameter === own.tooling.cutter.diameter || name === undefined ? said(diameter) : name;
  const path = toolPathOf(own);
  return {
    part: part.name,
    label: part.label,
    hand: hand.name,
    hands: found.hands.map((each) => ({ name: each.name, mirrored: each.mirrored })),
    scene: sceneForScreen(routingScene(part, own)),
    region: part.region,
    template: own.template,
    path,
    rounds: path.loops.map(perimeterOfOutline),
    differences: own.differences.map(({ kind, at, edges, reach, area }) => ({
      kind,
      at,
      edges,
      area,
      reach: said(reach),
    })),
    feed: own.feed.map(({ path, grain }) => {
      const along = directionAt(path, 0.5);
      return { at: pointAt(path, 0.5), angle: Math.atan2(along.y, along.x), grain };
    }),
    depth: own.depth,
    facts: [
      { name: 'thickness', value: said(part.thickness) },
      { name: own.offset < 0 ? 'outside' : 'offset', value: said(Math.abs(own.offset)) },
      ...(tightest === undefined ? [] : [{ name: 'tightest' as const, value: `R ${said(tightest.radius)}` }]),
      ...(largestCutter === undefined
        ? []
        : [{ name: 'largestCutter' as const, value: largestWords(largestCutter) }]),
      ...(blade === undefined
        ? []
        : [{ name: 'blade' as const, value: blade.blade.name ?? said(blade.blade.width) }]),
    ],
  };
}
