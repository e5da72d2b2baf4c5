/** Part of an expression; `from` and `to` are its first index in the text and the one after its last. */
export type Node = (
  | { readonly type: 'figure'; readonly value: number; readonly of: 'length' | 'angle' | 'number' }
  | { readonly type: 'flag'; readonly value: boolean }
  | { readonly type: 'name'; readonly name: string }
  | { readonly type: 'coordinate'; readonly of: Node; readonly axis: 'x' | 'y' }
  | { readonly type: 'call'; readonly name: string; readonly inputs: readonly Node[] }
  | { readonly type: 'minus'; readonly of: Node }
  | { readonly type: 'not'; readonly of: Node }
  | { readonly type: 'power'; readonly base: Node; readonly exponent: number }
  | { readonly type: 'is'; readonly of: Node; readonly option: string; readonly negated: boolean }
  | { readonly type: 'binary'; readonly operator: Operator; readonly left: Node; readonly right: Node }
) &
  Span;

export interface Span {
  readonly from: number;
  readonly to: number;
}

export type Operator = '+' | '-' | '*' | '/' | '<' | '<=' | '>' | '>=' | '==' | '!=' | 'and' | 'or';

/** Every name that an expression mentions, each once, in the order in which they stand. */
export function namesIn(node: Node): readonly string[] {
  const names = new Set<string>();
  const visit = (part: Node): void => {
    switch (part.type) {
      case 'name':
        names.add(part.name);
        return;
      case 'coordinate':
      case 'minus':
      case 'not':
      case 'is':
        visit(part.of);
        return;
      case 'power':
        visit(part.base);
        return;
      case 'call':
        part.inputs.forEach(visit);
        return;
      case 'binary':
        visit(part.left);
        visit(part.right);
        return;
      case 'figure':
      case 'flag':
        return;
      default:
        part satisfies never;
    }
  };
  visit(node);
  return [...names];
}
