import { turn3, type Vec3, vec3 } from '../../geometry/index.ts';
import type { Blank, CutPlane, End, Hand, Lay, Reading, SawRange, SawSetting } from './api.ts';
import { STEEPEST_WEDGE } from './facts.ts';
import { planeInFenceFrame } from './fence-frame.ts';
import { canLie, layOnBack } from './holding.ts';
import { frameOfLay, layAfter, MOVES, onSaw } from './lay.ts';
import { readingOf } from './reading.ts';
import { settingOnSaw } from './saw-setting.ts';
import { swingWithWedge, tiltWithWedge } from './wedges.ts';
import { excessOver, type Section } from './within-saw.ts';

/**
 * A way to hold the work so that a saw of limited range makes a cut.
 *
 * - `direct`: the part lies so, the saw reaches.
 * - `square-fence`: the work is held at 90° to the fence against an auxiliary fence fixed square to it, the end that is cut
 *   towards the fence, so that the saw is set to the complement.
 * - `wedge-at-fence`: a wedge between fence and work takes what the swing lacks.
 * - `wedge-under`: a wedge under the work takes what the tilt lacks.
 */
export interface SawWay {
  readonly kind: 'direct' | 'square-fence' | 'wedge-at-fence' | 'wedge-under';
  readonly lay: Lay;
  readonly setting: SawSetting;
  readonly mitre: Reading;
  readonly tilt: Reading;
  /** Where the waste falls seen by the sawyer, before the work is turned against an auxiliary fence. */
  readonly waste: Hand;
  readonly stopEnd: End;
  /** How far the work is turned from the lay (rad), about the upright (anticlockwise seen from above) or the line square to the fence. */
  readonly turned: { readonly about: 'upright' | 'across'; readonly angle: number } | undefined;
  /** The wedge to make: its angle as a reading whose `to` says at which hand it is thick. */
  readonly wedge: Reading | undefined;
}

const UP = vec3(0, 0, 1);
const ACROSS = vec3(0, 1, 0);

/**
 * Ways to make an end cut on a saw, at most one of each kind and best first: as the part usually lies, turned, standing on
 * edge, and only where the saw does not reach those, at a square auxiliary fence or with wedges. None means that the line is
 * marked and sawn by hand, or by a saw with more range. Wedges no steeper than 20°.
 */
export function waysToSaw(plane: CutPlane, blank: Blank, saw: SawRange): readonly SawWay[] {
  const m = planeInFenceFrame(plane, blank.fenceAngle).normal;
  const lays = possibleLays(blank);
  const direct = firstOf(lays, (lay) => asItLies(m, lay, blank, saw));
  const standing = firstOf(lays.filter(isStanding), (lay) => asItLies(m, lay, blank, saw));
  if (direct !== undefined) {
    return standing === undefined || isStanding(direct.lay) ? [direct] : [direct, standing];
  }
  const others = [againstSquareFence, withWedgeAtFence, withWedgeUnder].map((way) =>
    firstOf(lays, (lay) => way(m, lay, blank, saw)),
  );
  return others.filter((way) => way !== undefined);
}

/** On the back or face first, then on edge; least handling first. */
function possibleLays(blank: Blank): readonly Lay[] {
  const flat = MOVES.map((move) => layAfter(move, layOnBack(blank)));
  const edge = MOVES.map((move) => layAfter(move, { down: blank.faceEdge, fence: 'back' }));
  return [...flat, ...edge].filter((lay) => canLie(lay, blank));
}

function isStanding({ down }: Lay): boolean {
  return down === 'left' || down === 'right';
}

function firstOf(lays: readonly Lay[], way: (lay: Lay) => SawWay | undefined): SawWay | undefined {
  for (const lay of lays) {
    const found = way(lay);
    if (found !== undefined) return found;
  }
  return undefined;
}

function asItLies(m: Vec3, lay: Lay, blank: Blank, saw: SawRange): SawWay | undefined {
  return reached('direct', { m, lay, blank, saw });
}

function againstSquareFence(m: Vec3, lay: Lay, blank: Blank, saw: SawRange): SawWay | undefined {
  const { setting, waste } = settingOnSaw(onSaw(m, frameOfLay(lay)));
  if (!excessOver(setting, saw).some(({ what }) => what === 'swing')) return undefined;
  const angle = waste === 'right' ? Math.PI / 2 : -Math.PI / 2;
  return reached('square-fence', { m, lay, blank, saw, turned: { about: 'upright', angle } });
}

function withWedgeAtFence(m: Vec3, lay: Lay, blank: Blank, saw: SawRange): SawWay | undefined {
  const wedge = swingWithWedge(settingOnSaw(onSaw(m, frameOfLay(lay))).setting, saw);
  if (wedge === undefined || Math.abs(wedge) > STEEPEST_WEDGE) return undefined;
  // The work turns clockwise, seen from above, where the wedge is thick at the right.
  return reached('wedge-at-fence', {
    m,
    lay,
    blank,
    saw,
    turned: { about: 'upright', angle: -wedge },
    wedge,
  });
}

function withWedgeUnder(m: Vec3, lay: Lay, blank: Blank, saw: SawRange): SawWay | undefined {
  const wedge = tiltWithWedge(settingOnSaw(onSaw(m, frameOfLay(lay))).setting, saw);
  if (wedge === undefined || Math.abs(wedge) > STEEPEST_WEDGE) return undefined;
  // Thick at the right raises the right end: a turn from Z to X, backwards about Y.
  return reached('wedge-under', { m, lay, blank, saw, turned: { about: 'across', angle: -wedge }, wedge });
}

interface Trial {
  readonly m: Vec3;
  readonly lay: Lay;
  readonly blank: Blank;
  readonly saw: SawRange;
  readonly turned?: NonNullable<SawWay['turned']>;
  readonly wedge?: number;
}

function reached(kind: SawWay['kind'], { m, lay, blank, saw, turned, wedge }: Trial): SawWay | undefined {
  const laid = onSaw(m, frameOfLay(lay));
  const before = settingOnSaw(laid);
  const held =
    turned === undefined ? laid : turn3(laid, turned.about === 'upright' ? UP : ACROSS, turned.angle);
  const { setting } = settingOnSaw(held);
  if (excessOver(setting, saw, sectionOf(lay, blank, before.setting, setting)).length > 0) return undefined;
  return {
    kind,
    lay,
    setting,
    mitre: readingOf(setting.swing),
    tilt: readingOf(setting.tilt),
    waste: before.waste,
    stopEnd: m.y < 0 ? 'far' : 'near',
    turned,
    wedge: wedge === undefined ? undefined : readingOf(wedge),
  };
}

/** The work's section on the saw. Its extent counts along the blade, whose way through it does not shorten when the work is turned. */
function sectionOf(lay: Lay, blank: Blank, before: SawSetting, setting: SawSetting): Section {
  const width = blank.right - blank.left + blank.thickness * Math.abs(Math.tan(blank.skew ?? 0));
  const [high, across] = isStanding(lay) ? [width, blank.thickness] : [blank.thickness, width];
  return { high, across: (across * Math.cos(setting.swing)) / Math.cos(before.swing) };
}
