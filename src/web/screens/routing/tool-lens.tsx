import type { ScreenScene } from '../../../drawing/index.ts';
import type { ToolPlace } from '../../../routing/index.ts';
import { SceneLines } from '../../drawing/scene-lines.tsx';
import type { RoutingInHand } from '../../engine/answers/routing.ts';
import { words } from '../../words/en.ts';
import { ToolMarks } from './tool-marks.tsx';

interface ToolLensProps {
  readonly routing: RoutingInHand;
  readonly scene: ScreenScene;
  readonly place: ToolPlace;
}

/** What is seen round the tool: so many times its larger radius. */
const ROUND = 2.6;
/** px across. */
const SIZE = 240;

/** The place where the tool stands, large: part, template and what the bit leaves there. */
export function ToolLens({ routing, scene, place }: ToolLensProps) {
  const half = ROUND * Math.max(routing.path.guideRadius, routing.path.cutterRadius);
  const { x, y } = place.middle;
  return (
    <div class="scene tool-lens">
      <svg
        role="img"
        aria-label={words.routing.lens}
        viewBox={`${x - half} ${-y - half} ${2 * half} ${2 * half}`}
      >
        <SceneLines scene={scene} />
        <ToolMarks routing={routing} place={place} zoom={SIZE / (2 * half)} />
      </svg>
    </div>
  );
}
