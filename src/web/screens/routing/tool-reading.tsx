import { formatLength } from '../../../measure/index.ts';
import { type ToolPlace, toolAt, toolMoved } from '../../../routing/index.ts';
import type { RoutingInHand } from '../../engine/answers/routing.ts';
import { lengthStyle, smallLength } from '../../state/lengths.ts';
import { words } from '../../words/en.ts';

interface ToolReadingProps {
  readonly routing: RoutingInHand;
  readonly place: ToolPlace | undefined;
  readonly onPlace: (place: ToolPlace) => void;
}

/** mm: less than this is not felt. */
const FELT = 0.02;
/** mm that one step of the slider moves the tool. */
const STEP = 1;

/** What the tool does where it stands, and a slider that moves it along its path. */
export function ToolReading({ routing, place, onPlace }: ToolReadingProps) {
  const said = words.routing;
  const length = (mm: number): string => formatLength(mm, lengthStyle());
  const loop = place?.loop ?? 0;
  const round = routing.rounds[loop] ?? 0;
  const moveTo = (along: number): void => {
    const from = place ?? toolAt(routing.path, routing.region, routing, { x: 0, y: 0 });
    if (from !== undefined) {
      onPlace(toolMoved(routing.path, routing.region, routing, from, along - from.along));
    }
  };
  return (
    <section class="tool-reading" aria-live="polite">
      <p>
        {place === undefined
          ? said.point
          : place.gap > FELT
            ? said.stays(place.edge, smallLength(place.gap))
            : place.gap < -FELT
              ? said.beyond(place.edge, smallLength(-place.gap))
              : said.touches(place.edge)}
      </p>
      {routing.path.loops.length === 0 ? null : (
        <label class="slider">
          {said.along}
          <input
            type="range"
            min={0}
            max={round}
            step={STEP}
            value={place?.along ?? 0}
            aria-valuetext={said.alongBy(place?.edge, length(place?.along ?? 0), length(round))}
            onInput={(event) => moveTo(event.currentTarget.valueAsNumber)}
          />
        </label>
      )}
    </section>
  );
}
