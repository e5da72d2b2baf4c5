import type { Blank, CutPlane, Laid, Lay, SawRange } from './api.ts';
import { SAME_SETTING } from './facts.ts';
import { planeInFenceFrame } from './fence-frame.ts';
import { canLie, type Holding } from './holding.ts';
import { layAfter, MOVES, type Move, OPPOSITE } from './lay.ts';
import { laid } from './sawn-cut.ts';
import { type SawWay, waysToSaw } from './ways-to-saw.ts';
import { withinAngles } from './within-saw.ts';

/**
 * How a second cut is made after a first: the work is turned and the saw left alone, or the work lies as before and the saw
 * is swung; never both.
 *
 * - `turn`: the saw stays, the part is moved so. `stopMoves` where the waste then falls on the other side of the blade, so that the
 *   stop goes over too.
 * - `mirror`: the part lies as before, the saw is set to the same figures on the other side: of swing, of tilt, or of both.
 * - `reset`: the two cuts share no figures; the part lies as before and the saw is set anew.
 */
export type NextCut =
  | { readonly kind: 'turn'; readonly move: Move; readonly stopMoves: boolean; readonly laid: Laid }
  | {
      readonly kind: 'mirror';
      readonly swing: boolean;
      readonly tilt: boolean;
      readonly laid: Laid;
      /** False where the saw does not reach to the other side: `ways` then tells how the work is held instead, best first. */
      readonly reached: boolean;
      readonly ways?: readonly SawWay[];
    }
  | {
      readonly kind: 'reset';
      readonly laid: Laid;
      readonly reached: boolean;
      readonly ways?: readonly SawWay[];
    };

/**
 * How to make another cut of the same part (its other end, say) after a first that was sawn lying so. Of the four rigid ways of
 * laying the part those are taken in which it can lie and the saw's setting is the same within 0.05°; among them first one that
 * leaves the stop where it is, then least handling. A saw, where given, says whether the mirrored setting can be reached.
 */
export function nextCut(first: Laid, plane: CutPlane, blank: Blank, saw?: SawRange): NextCut {
  return orHeld(cutFrom(first, first.lay, plane, blank, saw), plane, blank, saw);
}

/** A cut by itself, held as the saw reaches it: for what follows a cut that the saw makes with a wedge or at an auxiliary fence. */
export function heldCut(usual: Laid, plane: CutPlane, blank: Blank, saw: SawRange): NextCut {
  return orHeld({ kind: 'reset', laid: usual, reached: false }, plane, blank, saw);
}

/** Where the saw does not reach, the setting is that of the best way in which it does. */
function orHeld(next: NextCut, plane: CutPlane, blank: Blank, saw?: SawRange): NextCut {
  if (next.kind === 'turn' || next.reached || saw === undefined) return next;
  const ways = waysToSaw(plane, blank, saw);
  return { ...next, laid: ways[0] ?? next.laid, ways };
}

/**
 * How to make the same cut in the mirrored part after that of the first part: its plane and blank are mirrored here (x to −x),
 * so that what was the left edge is the right one. The lay of the first is mirrored as well, and moves count from there.
 */
export function mirroredCut(first: Laid, plane: CutPlane, blank: Blank, saw?: SawRange): NextCut {
  const { down, fence } = first.lay;
  const [other, turned] = [mirrorPlane(plane), mirrorBlank(blank)];
  const asIs = { down: mirroredSide(down), fence: mirroredSide(fence) };
  return orHeld(cutFrom(first, asIs, other, turned, saw), other, turned, saw);
}

/** A cut of the mirrored part: x to −x. */
export function mirrorPlane({ normal, point }: CutPlane): CutPlane {
  return { normal: { ...normal, x: -normal.x }, point: { ...point, x: -point.x } };
}

/** The mirrored part's blank. */
export function mirrorBlank(blank: Blank): Blank {
  const { straight, fenceAngle, skew, reference } = blank;
  return {
    ...blank,
    left: -blank.right,
    right: -blank.left,
    faceEdge: blank.faceEdge === 'left' ? 'right' : 'left',
    ...(straight === undefined || straight === 'both'
      ? {}
      : { straight: straight === 'left' ? ('right' as const) : ('left' as const) }),
    ...(fenceAngle === undefined ? {} : { fenceAngle: Math.PI - fenceAngle }),
    ...(skew === undefined ? {} : { skew: -skew }),
    reference: reference.kind === 'cut' ? { kind: 'cut', plane: mirrorPlane(reference.plane) } : reference,
  };
}

function cutFrom(
  first: Laid,
  asIs: Lay,
  plane: CutPlane,
  blank: Pick<Blank, 'fenceAngle'> & Holding,
  saw?: SawRange,
): NextCut {
  const m = planeInFenceFrame(plane, blank.fenceAngle).normal;
  const { swing, tilt } = first.setting;
  const isAt = (each: Laid, toSwing: number, toTilt: number): boolean =>
    Math.abs(each.setting.swing - toSwing) < SAME_SETTING &&
    Math.abs(each.setting.tilt - toTilt) < SAME_SETTING;
  const turns = MOVES.map((move) => ({ move, lay: layAfter(move, asIs) }))
    .filter(({ lay }) => canLie(lay, blank))
    .map(({ move, lay }) => ({ move, laid: laid(m, lay) }))
    .filter((turn) => isAt(turn.laid, swing, tilt));
  const turn = turns.find((each) => each.laid.waste === first.waste) ?? turns[0];
  if (turn !== undefined) return { kind: 'turn', ...turn, stopMoves: turn.laid.waste !== first.waste };
  const still = laid(m, asIs);
  const reached = saw === undefined || withinAngles(still.setting, saw);
  for (const [bySwing, byTilt] of [
    [true, false],
    [false, true],
    [true, true],
  ] as const) {
    if (isAt(still, bySwing ? -swing : swing, byTilt ? -tilt : tilt)) {
      return { kind: 'mirror', swing: bySwing, tilt: byTilt, laid: still, reached };
    }
  }
  return { kind: 'reset', laid: still, reached };
}

function mirroredSide<S extends Lay['down']>(side: S): Lay['down'] {
  return side === 'left' || side === 'right' ? OPPOSITE[side] : side;
}
