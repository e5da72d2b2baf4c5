import type { ToLay } from '../../wood/index.ts';
import type { DesignLayout } from './lay-design.ts';

/** What has no place, those of one part that may come from the same boards together. */
export function unlaidGroups({
  toLay,
  unlaid,
}: Pick<DesignLayout, 'toLay' | 'unlaid'>): readonly (readonly [ToLay, ...ToLay[]])[] {
  const groups = new Map<string, [ToLay, ...ToLay[]]>();
  for (const each of toLay) {
    if (!unlaid.includes(each.id)) continue;
    const key = JSON.stringify([each.part, each.boards]);
    const own = groups.get(key);
    if (own === undefined) groups.set(key, [each]);
    else own.push(each);
  }
  return [...groups.values()];
}
