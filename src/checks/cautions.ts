import type { LengthStyle } from '../measure/index.ts';
import { lengthWords, type Tooling } from '../routing/index.ts';

/**
 * The usual cautions for template routing and for sawing the blank, one sentence or two each, for print. They defer to the
 * makers of the tools, local codes and licensed practice. Lengths are in millimetres unless a style is given.
 */
export function cautions(
  { machine, guide }: Pick<Tooling, 'machine' | 'guide'>,
  lengths?: LengthStyle,
): readonly string[] {
  const { about } = lengthWords(lengths);
  const onMachine =
    machine === 'table'
      ? [
          'On the table feed against the turning of the cutter, guard it, start against a pin, and never trap work between fence and cutter. Never feed the other way.',
        ]
      : [
          'Feed by hand against the turning of the cutter: anticlockwise round the outside, clockwise inside. Cutting the other way pulls the machine along; leave it to practised hands and a last light pass, if at all.',
        ];
  const onGuide =
    guide.kind === 'bushing'
      ? 'See that the bushing sits true to the cutter and that its barrel is shorter than the template.'
      : 'See that the bearing turns freely, is clean, and is on the template before the cutter meets wood.';
  return [
    `Unplug before changing cutter, bearing or bushing. Grip at least ${about(20)} of shank, not bottomed out, and keep to the speed on the shank.`,
    `Saw the blank to within ${about(1.5)} to ${about(3)} of the line first: the router trims, it does not shape.`,
    'Fix template and work so that neither can shift: screws in waste, tape only on wide parts, hold-downs outside the path of the cutter.',
    'Leave small parts joined to a larger piece, or hold them in a fixture with handles; fingers stay away from the cutter.',
    ...onMachine,
    onGuide,
    'Take several shallow passes. Let the cutter stop before lifting the machine or letting go of the work.',
    'Large cutters run in a table only, at a lower speed.',
    'Cut with the grain. At end grain and exit corners back the work with a block.',
    'Hold down the waste of an opening too, so that it cannot jam or fly when it comes free.',
    'At the band saw set the guard just over the work and make relief cuts before tight curves.',
    'Wear eye and ear protection and keep the dust away; stand out of the line in which work can be thrown.',
    'What the makers of your tools say, local codes and licensed practice go before anything printed here.',
  ];
}
