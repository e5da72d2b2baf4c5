import { commonKind, type Kind, nameOfKind } from './kind.ts';
import type { Node, Span } from './node.ts';

/** What an expression is checked against. */
export interface KindScope {
  /** The kind of part of the expression. */
  readonly infer: (node: Node) => Kind | undefined;
  readonly text: string;
  /** The kind of a declared name; nothing when it is unknown or wrong, which the scope has then reported. */
  readonly kindOf: (name: string, span: Span) => Kind | undefined;
  readonly report: (span: Span, code: string, message: string, expected?: string) => void;
}

/** The kind of an expression that must be a quantity of some kind. */
export function inferQuantity(node: Node, scope: KindScope): Kind | undefined {
  const kind = scope.infer(node);
  if (kind === undefined || kind.type === 'quantity' || kind.type === 'zero') return kind;
  scope.report(node, 'form.kind', `${describe(node, kind, scope)}: a figure is needed here`, 'a figure');
  return undefined;
}

/** The wanted kind, when the expression is of that kind. */
export function expectKind(node: Node, wanted: Kind, scope: KindScope): Kind | undefined {
  const kind = scope.infer(node);
  if (kind === undefined) return undefined;
  if (commonKind(kind, wanted) !== undefined) return wanted;
  const expected = nameOfKind(wanted);
  scope.report(node, 'form.kind', `${describe(node, kind, scope)}: ${expected} is needed here`, expected);
  return undefined;
}

/** The one kind of several expressions; `doing` finishes the sentence when they differ. */
export function inferCommon(
  nodes: readonly Node[],
  scope: KindScope,
  doing: string,
  infer: (node: Node, scope: KindScope) => Kind | undefined = (node) => scope.infer(node),
): Kind | undefined {
  // Each part is inferred once: asking twice at every level would take time exponential in the depth.
  const kinds = nodes.map((node) => infer(node, scope));
  let common: Kind | undefined;
  let witness = 0;
  for (const [index, kind] of kinds.entries()) {
    if (kind === undefined) return undefined;
    if (common === undefined) {
      common = kind;
      continue;
    }
    const next = commonKind(common, kind);
    if (next === undefined) {
      reportDifference(nodes[witness]!, common, nodes[index]!, kind, doing, scope);
      return undefined;
    }
    if (next !== common) witness = index;
    common = next;
  }
  return common;
}

function reportDifference(a: Node, kindA: Kind, b: Node, kindB: Kind, doing: string, scope: KindScope): void {
  const both = `${nameOfKind(kindA)} and ${nameOfKind(kindB)} ${doing}`;
  const message = `${both}: ${describe(a, kindA, scope)}, ${describe(b, kindB, scope)}`;
  scope.report({ from: a.from, to: b.to }, 'form.kind', message, `${nameOfKind(kindA)} on both sides`);
}

/** `overall_height is a length`. */
export function describe(node: Node, kind: Kind, scope: KindScope): string {
  const text = scope.text.slice(node.from, node.to);
  return `${text.length > 48 ? `${text.slice(0, 45)}…` : text} is ${nameOfKind(kind)}`;
}
