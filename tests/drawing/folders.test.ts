import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

/** Folders of the drawing layer, each with those of its own layer that it may take from. */
const MAY_TAKE: Readonly<Record<string, readonly string[]>> = {
  lettering: [],
  layout: ['lettering', 'scene'],
  scene: ['layout'],
  view: ['scene', 'layout'],
  dimension: ['layout', 'lettering', 'scene', 'view'],
  title: ['dimension', 'layout', 'lettering', 'scene', 'view'],
};

test.each(Object.keys(MAY_TAKE))('%s takes nothing from the folders that build on it', (folder) => {
  const root = join('src/drawing', folder);
  const files = readdirSync(root, { recursive: true, encoding: 'utf8' }).filter((file) =>
    file.endsWith('.ts'),
  );
  const taken = files.flatMap((file) =>
    [...readFileSync(join(root, file), 'utf8').matchAll(/from '(?:\.\.\/)+([a-z]+)\/[^']*'/g)].map(
      ([, from]) => from!,
    ),
  );
  const own = taken.filter((from) => from in MAY_TAKE || from === 'pattern' || from === 'svg');
  expect(files.length).toBeGreaterThan(0);
  expect(own.filter((from) => from !== folder && !MAY_TAKE[folder]!.includes(from))).toEqual([]);
});
