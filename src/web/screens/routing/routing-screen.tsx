import { useMemo, useState } from 'preact/hooks';
import type { LineRole } from '../../../drawing/index.ts';
import { type ToolPlace, toolMoved } from '../../../routing/index.ts';
import { SceneView } from '../../drawing/scene-view.tsx';
import type { RoutingInHand } from '../../engine/answers/routing.ts';
import { useAnswer } from '../../engine/use-answer.ts';
import { selection } from '../../state/selection.ts';
import { Choice } from '../../ui/choice.tsx';
import { words } from '../../words/en.ts';
import { FeedArrows } from './feed-arrows.tsx';
import { LayerList, type Layers, shownLines } from './layer-list.tsx';
import { RoutingFacts } from './routing-facts.tsx';
import { ToolFields } from './tool-fields.tsx';
import { ToolLens } from './tool-lens.tsx';
import { ToolOverlay } from './tool-overlay.tsx';
import { ToolReading } from './tool-reading.tsx';

const ALL: Layers = new Set<LineRole | 'feed'>([
  'part',
  'template',
  'as-routed',
  'residue',
  'saw-line',
  'feed',
]);

/** Part, template and what the bit leaves over each other, with the tool standing where the pointer is. */
export function RoutingScreen() {
  const parts = useAnswer('parts') ?? [];
  const [chosen, setChosen] = useState<string>();
  const [mirrored, setMirrored] = useState(false);
  const [layers, setLayers] = useState(ALL);
  const [tool, setPlaced] = useState<Placed>();
  const setTool = (place: ToolPlace): void => setPlaced({ place, on: routing });
  const part = parts.some(({ name }) => name === chosen) ? chosen : parts[0]?.name;
  const routing = useAnswer('routing', { ...(part === undefined ? {} : { part }), mirrored });
  const scene = useMemo(() => routing && shownLines(routing.scene, layers), [routing, layers]);
  const said = words.routing;
  // The tool stands on a path of this routing: after a change it is put there anew.
  const standing = useMemo(() => routing && tool && standOn(routing, tool), [routing, tool]);
  return (
    <div class="with-panel routing-screen">
      {routing === undefined || scene === undefined ? (
        <p class="waiting">{words.loading}</p>
      ) : (
        <SceneView
          scene={scene}
          label={said.drawing(routing.label)}
          selected={{ parts: [routing.part], edge: selection.value.edge ?? 'none' }}
          onPick={(hit) => {
            selection.value = hit ?? {};
          }}
        >
          {(zoom) => (
            <>
              {layers.has('feed') ? <FeedArrows arrows={routing.feed} zoom={zoom} /> : null}
              <ToolOverlay routing={routing} zoom={zoom} place={standing} onPlace={setTool} />
            </>
          )}
        </SceneView>
      )}
      <aside class="panel" aria-label={said.panel}>
        <Choice
          label={said.part}
          options={parts.map(({ name, label }) => [name, label])}
          chosen={part ?? ''}
          onChoose={setChosen}
        />
        {(routing?.hands.length ?? 0) > 1 ? (
          <fieldset class="row">
            <legend>{said.hand}</legend>
            {routing!.hands.map((hand) => (
              <label key={hand.name}>
                <input
                  type="radio"
                  name="hand"
                  checked={hand.mirrored === mirrored}
                  onChange={() => setMirrored(hand.mirrored)}
                />
                {hand.name}
              </label>
            ))}
          </fieldset>
        ) : null}
        {routing === undefined ? null : <ToolReading routing={routing} place={standing} onPlace={setTool} />}
        {routing === undefined || scene === undefined || standing === undefined ? null : (
          <ToolLens routing={routing} scene={scene} place={standing} />
        )}
        <ToolFields />
        <LayerList shown={layers} onChange={setLayers} />
        {routing === undefined ? null : <RoutingFacts routing={routing} onPlace={setTool} />}
      </aside>
    </div>
  );
}

/** The tool with the routing that it was put to. */
interface Placed {
  readonly place: ToolPlace;
  readonly on: RoutingInHand | undefined;
}

function standOn(routing: RoutingInHand, { place, on }: Placed): ToolPlace | undefined {
  if (on === routing) return place;
  return routing.path.loops[place.loop] && toolMoved(routing.path, routing.region, routing, place, 0);
}
