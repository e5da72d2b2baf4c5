import { once } from '../../core/index.ts';
import type { PlacedPart, StandingBase } from '../api.ts';
import type { BaseJoints } from '../joints/api.ts';
import type { MadeMember, MadePart } from './api.ts';
import type { MadeGroup } from './group.ts';
import { nameGroups } from './name-groups.ts';
import { sameShape } from './same-shape.ts';
import { mirrorShape, type Shape, shapeOf } from './shape.ts';
import { silhouetteWithTenons } from './silhouette-with-tenons.ts';
import { sketchAsMade } from './sketch-as-made.ts';
import { upOf } from './up-of.ts';

/**
 * The different pieces that a base takes, in the order in which it places them. Pieces share a pattern when their outlines and joints are alike,
 * also turned over or turned round in their plane. A piece that is its own mirror image has no hands.
 */
export function partsToMake(base: StandingBase, { joints }: Pick<BaseJoints, 'joints'>): readonly MadePart[] {
  const sides = joints.flatMap((joint) => joint.sides);
  const groups: MadeGroup[] = [];
  for (const part of base.parts) {
    const work = sides.filter((side) => side.part === part.id).flatMap((side) => side.work);
    const shape = shapeOf(part, work);
    if (!groups.some((group) => joinsGroup(group, part, shape))) groups.push(newGroup(part, shape));
  }
  const names = nameGroups(groups);
  return groups.map((group, at) => madePart(group, names[at]!));
}

/** The pattern shows the hand that the form draws, also where the first piece met is of the other. */
function newGroup(part: PlacedPart, shape: Shape): MadeGroup {
  if (part.hand === 'left') {
    const first = { part, hand: 'left', match: { turned: false } } as const;
    return { shape, over: once(() => mirrorShape(shape)), members: [first] };
  }
  const group = { shape: mirrorShape(shape), over: () => shape, members: [] };
  joinsGroup(group, part, shape);
  return group;
}

/** Adds a piece to a group; false where it is another. */
function joinsGroup(group: MadeGroup, part: PlacedPart, shape: Shape): boolean {
  const asDrawn = sameShape(shape, group.shape);
  const match = asDrawn ?? sameShape(shape, group.over());
  if (match === undefined) return false;
  group.members.push({ part, hand: asDrawn === undefined ? 'right' : 'left', match });
  return true;
}

function madePart(
  { shape, members }: MadeGroup,
  { name, label }: { readonly name: string; readonly label: string },
): MadePart {
  const right = members.filter(({ hand }) => hand === 'right').length;
  const made = members.map(({ part, hand, match }): MadeMember => {
    const up = upOf(part, match.turned);
    const { id, mark, place } = part;
    return { part: id, mark, place, hand, turned: match.turned, ...(up === undefined ? {} : { up }) };
  });
  const first = made.find(({ hand, up }) => hand === 'left' && up !== undefined);
  return {
    name,
    label,
    sketch: {
      ...sketchAsMade(shape),
      name,
      label,
      ...(first?.up === undefined ? {} : { up: first.up }),
      quantity: { left: members.length - right, right },
    },
    face: shape.face,
    back: shape.back,
    silhouette: silhouetteWithTenons(shape),
    cuts: shape.cuts,
    work: shape.work,
    members: made,
  };
}
