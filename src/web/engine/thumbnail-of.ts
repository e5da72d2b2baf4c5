import { type Scene, sceneForScreen } from '../../drawing/index.ts';
import type { Thumbnail } from '../store/database.ts';

/** Share of its size left round the picture. */
const AIR = 0.06;

/** A drawing as one path. */
export function thumbnailOf(scene: Scene): Thumbnail {
  const { lines, box } = sceneForScreen(scene);
  const air = AIR * Math.max(box.width, box.height);
  return {
    box: `${box.x - air} ${box.y - air} ${box.width + 2 * air} ${box.height + 2 * air}`,
    data: lines.map(({ data }) => data).join(''),
  };
}
