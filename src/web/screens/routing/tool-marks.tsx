import type { ToolPlace } from '../../../routing/index.ts';
import type { RoutingInHand } from '../../engine/answers/routing.ts';

/** A gap below this is no gap, mm: what a cutter leaves of its own accord is more. */
const NO_GAP = 0.005;

interface ToolMarksProps {
  readonly routing: RoutingInHand;
  readonly place: ToolPlace;
  readonly zoom: number;
}

/** Cutter and guide, to scale, with what lies between the cutter and the line. */
export function ToolMarks({ routing, place, zoom }: ToolMarksProps) {
  const { guideRadius, cutterRadius } = routing.path;
  return (
    <g class="tool-standing">
      <circle class="cutter" cx={place.middle.x} cy={-place.middle.y} r={cutterRadius} />
      <circle class="guide" cx={place.middle.x} cy={-place.middle.y} r={guideRadius} />
      <path class="middle" d={cross(place.middle, 5 / zoom)} />
      {place.gap > NO_GAP ? <path class="gap" d={gapLine(place, cutterRadius)} /> : null}
      <circle class="on-template" cx={place.onTemplate.x} cy={-place.onTemplate.y} r={3 / zoom} />
    </g>
  );
}

function cross({ x, y }: ToolPlace['middle'], half: number): string {
  return `M${x - half} ${-y}H${x + half}M${x} ${-y - half}V${-y + half}`;
}

/** From the drawn edge straight to the cutter. */
function gapLine({ onEdge, middle }: ToolPlace, radius: number): string {
  const far = Math.hypot(onEdge.x - middle.x, onEdge.y - middle.y);
  const share = far === 0 ? 0 : radius / far;
  const x = middle.x + share * (onEdge.x - middle.x);
  const y = middle.y + share * (onEdge.y - middle.y);
  return `M${onEdge.x} ${-onEdge.y}L${x} ${-y}`;
}
