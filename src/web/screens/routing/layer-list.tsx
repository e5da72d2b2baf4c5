import { LINE_STYLES, type LineRole, type ScreenScene } from '../../../drawing/index.ts';
import { words } from '../../words/en.ts';

export type Layers = ReadonlySet<LineRole | 'feed'>;

const LAYERS = ['part', 'template', 'as-routed', 'residue', 'saw-line', 'feed'] as const;

interface LayerListProps {
  readonly shown: Layers;
  readonly onChange: (shown: Layers) => void;
}

/** What is drawn over each other, each with its line, to be shown or left out. */
export function LayerList({ shown, onChange }: LayerListProps) {
  const toggle = (layer: LineRole | 'feed'): void => {
    const next = new Set(shown);
    if (!next.delete(layer)) next.add(layer);
    onChange(next);
  };
  return (
    <fieldset class="layers">
      <legend>{words.routing.layers}</legend>
      {LAYERS.map((layer) => (
        <label key={layer}>
          <input type="checkbox" checked={shown.has(layer)} onChange={() => toggle(layer)} />
          <LineSample layer={layer} />
          {words.routing.layer[layer]}
        </label>
      ))}
    </fieldset>
  );
}

/** The lines of a scene whose layers are shown. */
export function shownLines(scene: ScreenScene, layers: Layers): ScreenScene {
  return { ...scene, lines: scene.lines.filter(({ role }) => layers.has(role)) };
}

function LineSample({ layer }: { readonly layer: LineRole | 'feed' }) {
  if (layer === 'feed') {
    return (
      <svg class="line-sample" viewBox="0 0 28 8" aria-hidden="true">
        <path class="line ink-graphite" d="M4 4H22M17 1L22 4L17 7" />
      </svg>
    );
  }
  const { ink, dash } = LINE_STYLES[layer];
  if (layer === 'residue') {
    return (
      <svg class="line-sample" viewBox="0 0 28 8" aria-hidden="true">
        <path class={`fill-solid ink-${ink}`} d="M6 7C10 7 13 5 14 1C15 5 18 7 22 7Z" />
      </svg>
    );
  }
  return (
    <svg class="line-sample" viewBox="0 0 28 8" aria-hidden="true">
      <path class={`line ink-${ink}`} d="M1 4H27" stroke-dasharray={dash.map((mm) => mm * 2.4).join(' ')} />
    </svg>
  );
}
