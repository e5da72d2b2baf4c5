import {
  type Alias,
  Composer,
  type Document,
  isAlias,
  isMap,
  isSeq,
  isScalar as isYamlScalar,
  LineCounter,
  Parser,
  type Scalar as YamlScalar,
} from 'yaml';
import { fail, ok, type Problem, type Result } from '../../core/index.ts';
import { MOST_CHARACTERS, MOST_DEPTH, MOST_LINE_CHARACTERS, MOST_NODES } from './limits.ts';
import type { Place, Tree } from './place.ts';

export interface SourceTree {
  readonly tree: Tree;
  /** Place of every map, list and text by the path to it, and of every key by `path#key`. */
  readonly places: ReadonlyMap<string, Place>;
}

/** Names in a form: words that no language gives a meaning of its own to. */
const KEY = /^[a-z][a-z0-9_]{0,39}$/;
/** More problems than anyone reads at once. */
const MOST_PROBLEMS = 20;
const FORBIDDEN = new Set(['constructor', 'prototype']);

interface Walk {
  readonly text: string;
  readonly file: string;
  readonly lines: LineCounter;
  readonly places: Map<string, Place>;
  readonly problems: Problem[];
  nodes: number;
}

/**
 * The YAML text as plain data with places. Anchors, aliases, tags, merge keys, further documents, keys that are not
 * names, and anything beyond the limits are refused; time and memory are bounded whatever the text.
 */
export function readTree(text: string, file: string): Result<SourceTree> {
  const bySize = refuseBySize(text, file);
  if (bySize !== undefined) return fail(bySize);
  const lines = new LineCounter();
  const walk: Walk = { text, file, lines, places: new Map(), problems: [], nodes: 0 };
  const documents = compose(walk);
  if (documents === undefined) return fail(...walk.problems);
  const [first, second] = documents;
  if (second !== undefined) {
    return fail(
      problemAt(walk, 'form.documents', 'a form is one document', second.range[0], '', 'one document'),
    );
  }
  for (const error of first?.errors ?? []) {
    const message = error.message.split(' at line ')[0]!.replace(/\s+/g, ' ').trim();
    walk.problems.push(problemAt(walk, 'form.yaml', message, error.pos[0], '', 'YAML'));
    if (walk.problems.length >= MOST_PROBLEMS) break;
  }
  if (walk.problems.length > 0) return fail(...walk.problems);
  if (first === undefined || first.contents === null) {
    return fail({
      code: 'form.empty',
      message: 'the file is empty',
      file,
      line: 1,
      column: 1,
      expected: 'a form',
    });
  }
  const tree = treeOf(walk, first.contents, '', 0);
  if (tree === undefined || walk.problems.length > 0) return fail(...walk.problems);
  return ok({ tree, places: walk.places });
}

function refuseBySize(text: string, file: string): Problem | undefined {
  if (text.length > MOST_CHARACTERS) {
    const message = `the file has ${text.length} characters: a form has at most ${MOST_CHARACTERS}`;
    return { code: 'form.too-large', message, file, line: 1, column: 1, found: `${text.length} characters` };
  }
  const long = text.split(/\r\n|\r|\n/).findIndex((line) => line.length > MOST_LINE_CHARACTERS);
  if (long < 0) return undefined;
  const message = `line ${long + 1} has more than ${MOST_LINE_CHARACTERS} characters`;
  return { code: 'form.line-too-long', message, file, line: long + 1, column: MOST_LINE_CHARACTERS + 1 };
}

function compose(walk: Walk): Document.Parsed[] | undefined {
  try {
    // All texts stay texts: what a number or a yes means is for the grammar to say, not for YAML.
    const composer = new Composer({ schema: 'failsafe', uniqueKeys: false, lineCounter: walk.lines });
    const documents: Document.Parsed[] = [];
    for (const document of composer.compose(new Parser(walk.lines.addNewLine).parse(walk.text))) {
      documents.push(document as Document.Parsed);
      if (documents.length > 1) break;
    }
    return documents;
  } catch (error) {
    // The YAML library recurses into nested lists; too many of them end here and nowhere else.
    if (!(error instanceof RangeError)) throw error;
    walk.problems.push(tooDeep(walk, 0, ''));
    return undefined;
  }
}

function treeOf(walk: Walk, node: unknown, path: string, depth: number): Tree | undefined {
  if (walk.problems.length >= MOST_PROBLEMS) return undefined;
  walk.nodes += 1;
  const offset = offsetOf(node);
  if (walk.nodes > MOST_NODES)
    return refuse(walk, 'form.too-many', `more than ${MOST_NODES} entries`, offset, path);
  if (depth > MOST_DEPTH) {
    walk.problems.push(tooDeep(walk, offset, path));
    return undefined;
  }
  if (isAlias(node)) {
    const message = `*${(node as Alias).source.slice(0, 40)} is an alias: write the thing itself`;
    return refuse(walk, 'form.alias', message, offset, path);
  }
  const decorated = node as { anchor?: string; tag?: string };
  if (decorated.anchor !== undefined) {
    return refuse(
      walk,
      'form.alias',
      `&${decorated.anchor.slice(0, 40)} is an anchor, which a form cannot use`,
      offset,
      path,
    );
  }
  if (typeof decorated.tag === 'string' && !isStandardTag(decorated.tag)) {
    return refuse(
      walk,
      'form.tag',
      `${decorated.tag.slice(0, 40)} is a tag, which a form cannot use`,
      offset,
      path,
    );
  }
  walk.places.set(path, placeAt(walk, offset, path));
  if (isMap(node)) return mapOf(walk, node, path, depth);
  if (isSeq(node)) {
    const items = node.items.map((item, index) => treeOf(walk, item, join(path, index), depth + 1));
    return items.filter((item) => item !== undefined);
  }
  if (isYamlScalar(node)) return scalarOf(walk, node, path);
  return { kind: 'scalar', text: '', place: placeAt(walk, offset, path), oneLine: false };
}

function mapOf(
  walk: Walk,
  node: { items: readonly { key: unknown; value: unknown }[] },
  path: string,
  depth: number,
): Tree {
  const map: Record<string, Tree> = {};
  for (const { key, value } of node.items) {
    if (walk.problems.length >= MOST_PROBLEMS) return map;
    const offset = offsetOf(key);
    const name = isYamlScalar(key) && typeof key.value === 'string' ? key.value : '';
    if (!KEY.test(name) || FORBIDDEN.has(name)) {
      // Inside braces a comma ends the item, so half an expression turns up as a key.
      const message = /[()]/.test(name)
        ? `${show(name)} cannot be a name: an expression with a comma in it is quoted inside { } and [ ]`
        : `${show(name)} cannot be a name: names are small letters, digits and _, a letter first`;
      refuse(walk, 'form.name', message, offset, join(path, name.slice(0, 40)));
      continue;
    }
    const inner = join(path, name);
    if (Object.hasOwn(map, name)) {
      refuse(walk, 'form.twice', `${name} is given twice`, offset, inner);
      continue;
    }
    walk.places.set(`${path}#${name}`, placeAt(walk, offset, inner));
    const tree = treeOf(walk, value, inner, depth + 1);
    if (tree !== undefined) map[name] = tree;
  }
  return map;
}

function scalarOf(walk: Walk, node: YamlScalar, path: string): Tree {
  const text = String(node.value ?? '');
  const [start, end] = node.range ?? [0, 0];
  const raw = walk.text.slice(start, end);
  const quoted = raw.length === text.length + 2 && raw.slice(1, -1) === text;
  const oneLine = quoted || raw === text;
  return { kind: 'scalar', text, place: placeAt(walk, quoted ? start + 1 : start, path), oneLine };
}

function isStandardTag(tag: string): boolean {
  return (
    tag === 'tag:yaml.org,2002:map' || tag === 'tag:yaml.org,2002:seq' || tag === 'tag:yaml.org,2002:str'
  );
}

function offsetOf(node: unknown): number {
  return (node as { range?: readonly number[] | null } | null)?.range?.[0] ?? 0;
}

function placeAt(walk: Walk, offset: number, path: string): Place {
  const { line, col } = walk.lines.linePos(offset);
  return { line: Math.max(1, line), column: Math.max(1, col), path };
}

function join(path: string, key: string | number): string {
  return path === '' ? `${key}` : `${path}.${key}`;
}

function show(name: string): string {
  return name === '' ? 'this key' : `"${name.slice(0, 40)}"`;
}

function problemAt(
  walk: Walk,
  code: string,
  message: string,
  offset: number,
  path: string,
  expected?: string,
): Problem {
  const place = placeAt(walk, offset, path);
  const found = walk.text
    .slice(offset, offset + 24)
    .split('\n')[0]!
    .trim();
  return { code, message, file: walk.file, ...place, found, ...(expected === undefined ? {} : { expected }) };
}

function refuse(walk: Walk, code: string, message: string, offset: number, path: string): undefined {
  walk.problems.push(problemAt(walk, code, message, offset, path));
  return undefined;
}

function tooDeep(walk: Walk, offset: number, path: string): Problem {
  const message = `maps and lists lie more than ${MOST_DEPTH} deep in each other`;
  return problemAt(walk, 'form.too-deep', message, offset, path, `at most ${MOST_DEPTH}`);
}
