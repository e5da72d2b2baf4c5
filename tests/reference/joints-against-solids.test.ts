// Source: manifold-3d, a general-purpose library for solids, which knows nothing of our outlines.
import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';
import { joinBase } from '../../src/base/joints/join-base.ts';
import { contactArea } from '../../src/base/solids/contact-area.ts';
import { loadSolidKernel, type SolidKernel, withSolids } from '../../src/base/solids/index.ts';
import { silhouetteOf } from '../../src/base/solids/silhouette-of.ts';
import { standBase } from '../../src/base/stand/stand-base.ts';
import { CAMERAS } from '../../src/drawing/view/cameras.ts';
import { viewOfParts } from '../../src/drawing/view/view-of-parts.ts';
import { boundsOfRegions } from '../../src/geometry/index.ts';
import { evaluateForm, readForm } from '../../src/sketch/index.ts';

const FORMS = [
  'shallow-v-trestle',
  'raked-table',
  'crossed-base',
  'arched-trestle',
  'bench-base',
  'stool-base',
];

let kernel: SolidKernel;
beforeAll(async () => {
  kernel = await loadSolidKernel();
});

function stood(name: string) {
  const form = readForm(readFileSync(`templates/${name}.yaml`, 'utf8'), name);
  if (!form.ok) throw new Error(form.problems[0]!.message);
  const sketch = evaluateForm(form.value, {});
  if (!sketch.ok) throw new Error(sketch.problems[0]!.message);
  const base = standBase(sketch.value);
  if (!base.ok) throw new Error(base.problems[0]!.message);
  return base.value;
}

describe.each(FORMS)('%s', (name) => {
  const base = stood(name);

  test('touches over the areas that the solids share when pressed together', () => {
    const { joints } = joinBase(base);
    const pairs = joints.filter(({ contact, kind }) => contact !== undefined && kind !== 'halved');
    expect(pairs.length).toBeGreaterThan(0);
    withSolids(kernel, base.parts, (solids) => {
      for (const { id, contact } of pairs) {
        const [a, b] = [contact!.a, contact!.b].map(
          (side) => solids.find(({ part }) => part.id === side.part)!,
        );
        const area = contactArea(a!, b!, contact!.frame.z);
        // Other faces of a pair may touch as well: never less, and for most joints the same.
        expect(area, id).toBeGreaterThan(contact!.area * 0.99);
      }
    });
  });

  test.each(['front', 'left', 'plan'] as const)('is as large from the %s as its silhouette', (side) => {
    const { box } = viewOfParts(base.parts, CAMERAS[side]);
    const shadow = withSolids(kernel, base.parts, (solids) =>
      boundsOfRegions(silhouetteOf(kernel, solids, CAMERAS[side])),
    );
    for (const edge of ['minX', 'minY', 'maxX', 'maxY'] as const) {
      expect(Math.abs(box[edge] - shadow[edge]), edge).toBeLessThan(0.06);
    }
  });
});
