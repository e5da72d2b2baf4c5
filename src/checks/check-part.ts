import type { Finding, Severity } from '../core/index.ts';
import type { LengthStyle } from '../measure/index.ts';
import type { Routing } from '../routing/index.ts';
import type { SketchedPart } from '../sketch/index.ts';
import { blowOut } from './blow-out.ts';
import { cutterSize } from './cutter-size.ts';
import { cutterSpeed } from './cutter-speed.ts';
import { depth } from './depth.ts';
import { grainOfCuts } from './grain-of-cuts.ts';
import { guideFits } from './guide-fits.ts';
import { holding } from './holding.ts';
import { mixedOpening } from './mixed-opening.ts';
import { partWords } from './part-words.ts';
import { plunge } from './plunge.ts';
import type { Rule } from './rule.ts';
import { runOn } from './run-on.ts';
import { sawBlade } from './saw-blade.ts';
import { shortGrain } from './short-grain.ts';
import { templateWhole } from './template-whole.ts';
import { wideSplay } from './wide-splay.ts';
import { woodLeft } from './wood-left.ts';
import { woodLost } from './wood-lost.ts';

const RULES: readonly Rule[] = [
  guideFits,
  templateWhole,
  depth,
  plunge,
  mixedOpening,
  woodLost,
  woodLeft,
  cutterSize,
  runOn,
  grainOfCuts,
  blowOut,
  shortGrain,
  wideSplay,
  sawBlade,
  holding,
  cutterSpeed,
];

const GRAVITY: Record<Severity, number> = { stop: 0, caution: 1, note: 2 };

/** Everything the rules have to say of one part and how it is routed: the gravest first, otherwise in the order of work. Lengths as
 * `lengths` writes them, in millimetres unless given. */
export function checkPart(part: SketchedPart, routing: Routing, lengths?: LengthStyle): Finding[] {
  const say = partWords(part, lengths);
  return bySeverity(RULES.flatMap((rule) => rule(part, routing, say)));
}

/** The gravest first, otherwise in the order given. */
export function bySeverity(findings: readonly Finding[]): Finding[] {
  return findings.toSorted((a, b) => GRAVITY[a.severity] - GRAVITY[b.severity]);
}
