import { expect, test } from 'vitest';
import { compute } from '../../src/design/index.ts';
import { lengthOf } from '../../src/geometry/index.ts';
import { sampleDesign } from '../design/sample-design.ts';

test.each(['inner', 'outer'])(
  'the %s edge of a tapered leg is named for what its figure measures',
  (taper) => {
    const design = sampleDesign('splayed-leg', ['leg']);
    const computed = compute(
      { ...design, parameters: { ...design.parameters, taper } },
      { wanted: { patterns: [] } },
    );
    if (!computed.ok) throw new Error(computed.problems[0]!.message);
    const { part } = computed.value.parts[0]!;
    const named = part.dimensions.find(({ name }) => name === taper)!;
    const along = part.region.outer.edges
      .filter(
        ({ tag }) => !/^(foot|head)$/.test(tag.id) && tag.id.startsWith('outer') === (taper === 'outer'),
      )
      .reduce((sum, edge) => sum + lengthOf(edge), 0);
    // Where the edge turns, the way along it is longer than the straight line.
    expect(named.value).toBeLessThan(along - 0.05);
    expect(named.label).toMatch(/corner to corner$/);
  },
);
