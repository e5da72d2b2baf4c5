import { inferKind } from '../expression/infer-kind.ts';
import { ANGLE, FLAG, type Kind, LENGTH, NUMBER, nameOfKind, PLANE, POINT } from '../expression/kind.ts';
import { expectKind, type KindScope } from '../expression/kind-scope.ts';
import type { Expression } from '../schema/expression.ts';
import type { FormData } from '../schema/form.ts';
import type { Parameter } from '../schema/parameter.ts';
import { type Place, placeWithin } from '../source/place.ts';
import { checkBaseKinds } from './check-base-kinds.ts';
import { type Complaints, noSuch } from './complaints.ts';
import { expressionsIn } from './expressions-in.ts';

/** Checks the kind of every expression, and gives the kind of every name, made in an order in which each follows what it needs. */
export function checkKinds(
  data: FormData,
  places: ReadonlyMap<string, Place>,
  complaints: Complaints,
  order: readonly string[],
): ReadonlyMap<string, Kind> {
  const kinds = new Map<string, Kind | undefined>();
  for (const [name, parameter] of Object.entries(data.parameters))
    kinds.set(name, kindOfParameter(parameter));
  for (const name of Object.keys(data.points ?? {})) kinds.set(name, POINT);
  for (const name of Object.keys(data.planes ?? {})) kinds.set(name, PLANE);
  const values = data.values ?? {};
  const known = [...kinds.keys(), ...Object.keys(values)];

  const scopeOf = ({ source }: Expression): KindScope => {
    const scope: KindScope = {
      infer: (part) => inferKind(part, scope),
      text: source.text,
      kindOf: (name, span) => {
        if (kinds.has(name)) return kinds.get(name);
        complaints.add(
          placeWithin(source, span.from),
          'form.unknown',
          noSuch('value or point', name, known),
          {
            found: name,
          },
        );
        return undefined;
      },
      report: (span, code, message, expected) => {
        const more = expected === undefined ? {} : { expected };
        complaints.add(placeWithin(source, span.from), code, message, {
          found: source.text.slice(span.from, span.to).slice(0, 60),
          ...more,
        });
      },
    };
    return scope;
  };
  for (const name of order) {
    const expression = Object.hasOwn(values, name) ? values[name] : undefined;
    if (expression !== undefined) kinds.set(name, inferKind(expression.node, scopeOf(expression)));
  }
  const { values: _, ...others } = data;
  for (const expression of expressionsIn(others)) check(expression, scopeOf(expression));
  if (data.base !== undefined) checkBaseKinds(data.base, scopeOf);
  checkMessages(data, kinds, places, complaints);
  return new Map([...kinds].filter((entry): entry is [string, Kind] => entry[1] !== undefined));
}

function kindOfParameter(parameter: Parameter): Kind {
  switch (parameter.kind) {
    case 'length':
      return LENGTH;
    case 'angle':
      return ANGLE;
    case 'ratio':
    case 'count':
      return NUMBER;
    case 'choice':
      return { type: 'choice', options: Object.keys(parameter.options) };
    case 'yes-no':
      return FLAG;
    default:
      return parameter satisfies never;
  }
}

function check(expression: Expression, scope: KindScope): void {
  const { node, wanted } = expression;
  switch (wanted) {
    case 'length':
      expectKind(node, LENGTH, scope);
      return;
    case 'angle':
      expectKind(node, ANGLE, scope);
      return;
    case 'number':
      expectKind(node, NUMBER, scope);
      return;
    case 'flag':
      expectKind(node, FLAG, scope);
      return;
    case 'point':
      expectKind(node, POINT, scope);
      return;
    case 'plane':
      expectKind(node, PLANE, scope);
      return;
    case 'point or angle': {
      const kind = inferKind(node, scope);
      const isAngle = kind?.type === 'quantity' && kind.length === 0 && kind.angle === 1;
      if (kind === undefined || kind.type === 'point' || kind.type === 'zero' || isAngle) return;
      scope.report(
        node,
        'form.kind',
        `${nameOfKind(kind)} stands here: a line is given by a second point or a direction`,
        'a point or an angle',
      );
      return;
    }
    // Told apart by what stands beside them: check-base-kinds.ts.
    case 'number or length':
    case 'joint':
      return;
    case 'anything':
      inferKind(node, scope);
      return;
    default:
      wanted satisfies never;
  }
}

/** Names in the messages of checks must be declared. */
function checkMessages(
  data: FormData,
  kinds: ReadonlyMap<string, unknown>,
  places: ReadonlyMap<string, Place>,
  complaints: Complaints,
): void {
  for (const [index, { say }] of (data.checks ?? []).entries()) {
    for (const [, name] of say.matchAll(/\{([^{}]*)\}/g)) {
      if (kinds.has(name!)) continue;
      const place = places.get(`checks.${index}.say`) ?? { line: 1, column: 1, path: `checks.${index}.say` };
      complaints.add(place, 'form.unknown', noSuch('value', name!, [...kinds.keys()]), { found: name! });
    }
  }
}
