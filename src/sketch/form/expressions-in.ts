import { type Expression, isExpression } from '../schema/expression.ts';

/** Every expression inside part of a form, in the order in which they stand. */
export function expressionsIn(part: unknown): readonly Expression[] {
  const found: Expression[] = [];
  const visit = (value: unknown): void => {
    if (isExpression(value)) found.push(value);
    else if (typeof value === 'object' && value !== null) Object.values(value).forEach(visit);
  };
  visit(part);
  return found;
}
