import type { Routing, Tooling } from './api.ts';
import { offsetOf } from './guide.ts';
import { templateSideOf } from './template-side.ts';

/** What there is to say of the routing of a part that is only sawn: nothing. It is sawn to its own line, so that it has no blank either. */
export function sawnOnly(tooling: Tooling): Routing {
  return {
    tooling,
    offset: offsetOf(tooling),
    template: [],
    asRouted: [],
    differences: [],
    blank: [],
    endAllowance: 0,
    offsets: [],
    gaps: [],
    openings: [],
    templateSide: templateSideOf(tooling),
    feed: [],
    fixings: [],
    depth: { possible: true, passes: [], remarks: [] },
  };
}
