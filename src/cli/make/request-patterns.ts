import type { Design, PatternRequest } from '../../design/index.ts';

/** What a maker asks of `make` beyond what the design says. */
export interface PatternChoice {
  readonly part?: readonly string[] | undefined;
  readonly view?: readonly PatternRequest['view'][] | undefined;
  readonly mirrored?: boolean | undefined;
}

/** `caul-1`: a wedge that gluing needs has no request in the design, for it follows from the base. */
const CAUL = /^caul-\d+$/;

/**
 * The patterns to lay out: those of the design, of the named parts only, in the named views instead of the design's, and
 * turned over where that is asked for. None is named twice.
 */
export function requestPatterns(design: Design, { part, view, mirrored }: PatternChoice): PatternRequest[] {
  const wanted = design.patterns
    .filter((request) => part === undefined || part.includes(request.part))
    .flatMap((request) => (view ?? [request.view]).map((each) => ({ ...request, view: each })))
    .map((request) => ({ ...request, mirrored: mirrored ?? request.mirrored }));
  const cauls = (part ?? []).filter((name) => CAUL.test(name));
  return distinct([
    ...wanted,
    ...cauls.map((name) => ({ part: name, view: 'part' as const, mirrored: false })),
  ]);
}

const VIEWS: readonly PatternRequest['view'][] = ['part', 'template', 'as-routed', 'all'];

/** Every view of each part and hand among the patterns, for drawings in one piece. A caul is sawn, and has no view but its own. */
export function everyView(patterns: readonly PatternRequest[]): PatternRequest[] {
  return distinct(
    patterns.flatMap((request) =>
      CAUL.test(request.part) ? [request] : VIEWS.map((view) => ({ ...request, view })),
    ),
  );
}

function distinct(requests: readonly PatternRequest[]): PatternRequest[] {
  const key = ({ part, view, mirrored }: PatternRequest) => `${part} ${view} ${mirrored}`;
  return [...new Map(requests.map((request) => [key(request), request])).values()];
}
