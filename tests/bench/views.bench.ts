/** Views of every base form, warmed: 5 to 12 parts; and of two trestles beside each other, about 20. */
import { bench, describe } from 'vitest';
import { CAMERAS, PICTORIAL } from '../../src/drawing/view/cameras.ts';
import { viewOfParts } from '../../src/drawing/view/view-of-parts.ts';
import { vec3 } from '../../src/geometry/index.ts';
import { BASE_FORMS } from '../forms/forms.ts';
import { standingOf } from '../forms/standing-bases.ts';

const cameras = { front: CAMERAS.front, plan: CAMERAS.plan, pictorial: PICTORIAL };
const short = { time: 300, warmupTime: 300 };

for (const { name } of BASE_FORMS) {
  const { parts } = standingOf(name);
  describe(`${name}, ${parts.length} parts`, () => {
    for (const [view, camera] of Object.entries(cameras)) {
      bench(view, () => void viewOfParts(parts, camera), short);
    }
  });
}

const { parts } = standingOf('shallow-v-trestle');
const beside = parts.slice(0, 8).map((part) => ({
  ...part,
  id: `${part.id} beside`,
  frame: {
    ...part.frame,
    origin: vec3(part.frame.origin.x + 300, part.frame.origin.y + 900, part.frame.origin.z),
  },
}));

describe(`${parts.length + beside.length} parts`, () => {
  for (const [view, camera] of Object.entries(cameras)) {
    bench(view, () => void viewOfParts([...parts, ...beside], camera), short);
  }
});
