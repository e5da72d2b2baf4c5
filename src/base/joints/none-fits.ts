import type { Finding } from '../../core/index.ts';
import type { JointFault, RuleName } from '../joint-rules/index.ts';
import type { JointPair } from './joint-pair.ts';
import type { Shop } from './shop.ts';

type Nearest = NonNullable<JointFault['nearest']>;

/** Nothing of the maker's list fits: what came nearest, why not, and what would. */
export function noneFits(
  { sketch, a, b }: JointPair,
  { nearest, wouldFit }: JointFault,
  shop: Shop,
): Finding {
  const piece = sketch.kind === 'dowels' ? 'dowel' : 'tenon';
  const size = ({ thickness, width, length }: Nearest['size']): string =>
    piece === 'dowel'
      ? `${shop.say(thickness)} by ${shop.say(length)}`
      : [thickness, width, length].map(shop.say).join(' × ');
  const why =
    nearest === undefined
      ? `There is no ${piece} to choose from.`
      : `The nearest ${piece}, ${size(nearest.size)}, ${reason(nearest, shop)}.`;
  return {
    code: 'joint.none-fits',
    severity: 'stop',
    part: a.drawn.name,
    edges: [],
    message: `${sketch.label}: no ${piece} fits between ${a.label} and ${b.label}. ${why}`,
    ...(nearest === undefined
      ? {}
      : {
          measured: { value: nearest.measured, unit: unitOf(nearest.rule) },
          limit: { value: nearest.limit, unit: unitOf(nearest.rule) },
        }),
    cure:
      wouldFit === undefined
        ? 'Make the parts thicker or deeper where they meet, or join them in another way.'
        : `A ${piece} made to measure, ${size(wouldFit)}, would fit.`,
    ...(wouldFit === undefined ? {} : { fits: { kind: piece, ...wouldFit } }),
  };
}

const unitOf = (rule: RuleName): 'mm' | 'none' =>
  rule === 'lengthShare' || rule === 'leastCount' ? 'none' : 'mm';

function reason({ rule, measured, limit }: Nearest, { say }: Shop): string {
  switch (rule) {
    case 'mostThicknessShare':
      return `is thicker than half of the joint allows (${say(limit)})`;
    case 'leastThickness':
      return `is thinner than ${say(limit)}`;
    case 'wall':
      return `leaves ${say(measured)} of wood beside it where ${say(limit)} should stay`;
    case 'shoulder':
      return `leaves ${say(measured)} of wood at its ends where ${say(limit)} should stay`;
    case 'lengthShare':
      return `takes ${Math.round(100 * measured)} % of the joint's length, ${Math.round(100 * limit)} % at most should go`;
    case 'leastDepth':
      return `would reach only ${say(measured)} into one of the parts, ${say(limit)} is the least`;
    case 'depthShare':
    case 'bottomWall':
      return `would have to reach ${say(measured)} into one of the parts, which has wood for ${say(limit)}`;
    case 'leastCount':
      return `finds room for ${measured}, ${limit} is the least`;
    case 'spacing':
    case 'contact':
      return `is larger than the contact (${say(measured)} of ${say(limit)})`;
    default:
      return rule satisfies never;
  }
}
