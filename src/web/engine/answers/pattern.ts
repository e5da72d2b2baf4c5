import { type ScreenScene, sceneForScreen } from '../../../drawing/index.ts';
import type { Answering } from './answering.ts';

/** The full-size drawing of one pattern, by the name of its part; of the first one when no part is named. */
export function pattern(
  { computed }: Answering,
  { part }: { readonly part?: string },
): { readonly title: string; readonly scene: ScreenScene } | undefined {
  const found = computed?.patterns.find(({ request }) => part === undefined || request.part === part);
  return found && { title: found.pattern.title, scene: sceneForScreen(found.pattern.scene) };
}
