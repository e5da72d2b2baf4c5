import { inferKind } from '../expression/infer-kind.ts';
import { commonKind, type Kind, LENGTH, NUMBER, nameOfKind } from '../expression/kind.ts';
import { describe, type KindScope } from '../expression/kind-scope.ts';
import { type BaseSpec, type DirectionSpec, isJointKind, JOINT_KINDS, jointKindOf } from '../schema/base.ts';
import type { Expression } from '../schema/expression.ts';

/**
 * Checks what only stands in a base: a direction is three numbers or three lengths, and a way to join that the maker chooses is a
 * choice whose options are ways to join, `-` written as `_`.
 */
export function checkBaseKinds(base: BaseSpec, scopeOf: (expression: Expression) => KindScope): void {
  const facing = Object.values(base.planes).flatMap((plane) => ('facing' in plane ? [plane.facing] : []));
  const places = Object.values(base.places).flatMap(({ along, face }) => [along, face]);
  for (const direction of [...facing, ...places]) {
    if (direction !== undefined) checkDirection(direction, scopeOf);
  }
  for (const { by } of Object.values(base.joints ?? {})) {
    if (typeof by !== 'string') checkJointChoice(by, scopeOf);
  }
}

function checkDirection({ ways }: DirectionSpec, scopeOf: (expression: Expression) => KindScope): void {
  let common: Kind | undefined;
  for (const way of ways) {
    const scope = scopeOf(way);
    const kind = inferKind(way.node, scope);
    if (kind === undefined) return;
    const fits = commonKind(kind, NUMBER) !== undefined || commonKind(kind, LENGTH) !== undefined;
    const next = common === undefined ? kind : commonKind(common, kind);
    if (!fits || next === undefined) {
      const before = common === undefined || !fits ? '' : ` beside ${nameOfKind(common)}`;
      const message = `${describe(way.node, kind, scope)}${before}: a direction is three numbers or three lengths`;
      scope.report(way.node, 'form.kind', message, 'three numbers or three lengths');
      return;
    }
    common = next;
  }
}

function checkJointChoice(by: Expression, scopeOf: (expression: Expression) => KindScope): void {
  const scope = scopeOf(by);
  const kind = inferKind(by.node, scope);
  if (kind === undefined) return;
  const expected = `one of ${JOINT_KINDS.join(', ')}, or a choice of some of them`;
  if (kind.type !== 'choice') {
    const message = `${describe(by.node, kind, scope)}: a way to join, or a choice of some, is needed here`;
    scope.report(by.node, 'form.kind', message, expected);
    return;
  }
  const strange = kind.options.find((option) => !isJointKind(jointKindOf(option)));
  if (strange === undefined) return;
  scope.report(by.node, 'form.option', `its option ${strange} is no way to join`, expected);
}
