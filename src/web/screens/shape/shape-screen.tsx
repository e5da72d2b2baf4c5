import { useState } from 'preact/hooks';
import { SceneView } from '../../drawing/scene-view.tsx';
import { useAnswer } from '../../engine/use-answer.ts';
import { selection } from '../../state/selection.ts';
import { Tabs } from '../../ui/tabs.tsx';
import { words } from '../../words/en.ts';
import { FigureList } from './figure-list.tsx';

const SIDES = ['front', 'left', 'plan'] as const;

/** The base from the front, the side or above, with its figures beside it. */
export function ShapeScreen() {
  const [side, setSide] = useState<(typeof SIDES)[number]>('front');
  const picture = useAnswer('picture', { of: { side }, scale: 0.2 });
  const tabs = SIDES.map((name) => ({ name, label: words.shape[name] }));
  return (
    <div class="shape-screen">
      <Tabs label={words.shape.views} tabs={tabs} chosen={side} onChoose={setSide}>
        {picture === undefined ? (
          <p class="waiting">{words.loading}</p>
        ) : (
          <SceneView
            scene={picture.scene}
            label={picture.name}
            selected={selection.value}
            onPick={(hit) => {
              selection.value = hit ?? {};
            }}
          />
        )}
      </Tabs>
      <FigureList />
    </div>
  );
}
