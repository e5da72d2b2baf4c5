import { type ToolPlace, toolAt } from '../../../routing/index.ts';
import { pointOfEvent } from '../../drawing/point-of-event.ts';
import type { RoutingInHand } from '../../engine/answers/routing.ts';
import { ToolMarks } from './tool-marks.tsx';

interface ToolOverlayProps {
  readonly routing: RoutingInHand;
  readonly zoom: number;
  readonly place: ToolPlace | undefined;
  readonly onPlace: (place: ToolPlace) => void;
}

/** The tool stands where it comes nearest to the pointer. */
export function ToolOverlay({ routing, zoom, place, onPlace }: ToolOverlayProps) {
  const { x, y, width, height } = routing.scene.box;
  const follow = (event: PointerEvent): void => {
    const at = pointOfEvent(event);
    const found = at && toolAt(routing.path, routing.region, routing, at);
    if (found !== undefined) onPlace(found);
  };
  const around = Math.max(width, height);
  return (
    <g class="tool">
      <rect
        class="tool-ground"
        x={x - around}
        y={y - around}
        width={width + 2 * around}
        height={height + 2 * around}
        onPointerMove={follow}
        onPointerDown={follow}
      />
      {place === undefined ? null : <ToolMarks routing={routing} place={place} zoom={zoom} />}
    </g>
  );
}
