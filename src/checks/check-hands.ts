import type { Finding } from '../core/index.ts';
import type { LengthStyle } from '../measure/index.ts';
import { flipPoint, type Hand } from '../routing/index.ts';
import { bySeverity, checkPart } from './check-part.ts';

/** Two figures that differ by less than this share are the same, reckoned on either hand. */
const SAME = 1e-6;

/** How a finding that holds for one hand alone begins. */
const HAND_WORDS: Readonly<Record<Hand['name'], string>> = {
  left: 'Left hand: ',
  right: 'Right hand: ',
  'as drawn': 'As drawn: ',
  mirrored: 'Mirrored: ',
};

/**
 * What the rules have to say of every hand that a part is made in, gravest first. What holds for all of them is said once;
 * what does not names its hand. Places lie in the plane of the part as drawn, whichever hand is meant.
 */
export function checkHands(hands: readonly Hand[], lengths?: LengthStyle): Finding[] {
  const [first, second] = hands.map((hand) => ({ hand, found: findingsOf(hand, lengths) }));
  if (first === undefined) return [];
  if (second === undefined) return first.found;
  const others = [...second.found];
  const told = first.found.map((finding) => {
    const same = others.findIndex((other) => isSame(finding, other));
    if (same < 0) return ofHand(finding, first.hand);
    others.splice(same, 1);
    return finding;
  });
  return bySeverity([...told, ...others.map((finding) => ofHand(finding, second.hand))]);
}

function findingsOf({ part, routing, mirrored }: Hand, lengths: LengthStyle | undefined): Finding[] {
  const found = checkPart(part, routing, lengths);
  if (!mirrored) return found;
  return found.map((finding) =>
    finding.at === undefined ? finding : { ...finding, at: flipPoint(finding.at) },
  );
}

function ofHand(finding: Finding, { name }: Hand): Finding {
  return { ...finding, hand: name, message: `${HAND_WORDS[name]}${finding.message}` };
}

/** The same thing said of both hands: edges may come in the other order, as the outline runs the other way round. */
function isSame(a: Finding, b: Finding): boolean {
  return (
    a.code === b.code &&
    a.severity === b.severity &&
    a.cure === b.cure &&
    [...a.edges].sort().join() === [...b.edges].sort().join() &&
    isSameFigure(a.measured?.value, b.measured?.value) &&
    isSameFigure(a.limit?.value, b.limit?.value)
  );
}

function isSameFigure(a: number | undefined, b: number | undefined): boolean {
  if (a === undefined || b === undefined) return a === b;
  return Math.abs(a - b) <= SAME * Math.max(1, Math.abs(a), Math.abs(b));
}
