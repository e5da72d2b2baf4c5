import { SceneView } from '../../drawing/scene-view.tsx';
import { useAnswer } from '../../engine/use-answer.ts';
import { words } from '../../words/en.ts';

/** The full-size drawing of the first pattern. */
export function WoodScreen() {
  const pattern = useAnswer('pattern', {});
  if (pattern === undefined) return <p class="waiting">{words.loading}</p>;
  return <SceneView scene={pattern.scene} label={pattern.title} />;
}
