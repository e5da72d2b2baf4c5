import { fail, ok, type Problem, type Result } from '../../core/index.ts';

/** One element of an XML text; character data are left out. */
export interface XmlElement {
  /** Without its namespace prefix. */
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
  readonly children: readonly XmlElement[];
  /** Of its start tag, from 1. */
  readonly line: number;
}

interface OpenElement {
  readonly name: string;
  readonly tag: string;
  readonly attributes: ReadonlyMap<string, string>;
  readonly children: XmlElement[];
  readonly line: number;
}

/** Bounds on what a text may ask for. */
const MOST_CHARACTERS = 50_000_000;
const DEEPEST = 200;
const MOST_ELEMENTS = 500_000;

/**
 * The elements of an XML text: start and end tags, attributes, comments, CDATA, processing instructions. A strict reader of the part
 * of the language that a drawing needs: a document type with declarations of its own is refused, so that no entity can expand;
 * of entities only the five predefined ones and character numbers are known. Time grows with the length of the text.
 * Source: XML 1.0 (W3C Recommendation, fifth edition).
 */
export function xmlElements(text: string): Result<XmlElement> {
  if (text.length > MOST_CHARACTERS)
    return xmlFault(text, 0, 'too long', `at most ${MOST_CHARACTERS} characters`);
  const open: OpenElement[] = [];
  let root: XmlElement | undefined;
  let count = 0;
  let line = 1;
  let counted = 0;
  const lineAt = (at: number): number => {
    for (; counted < at; counted++) if (text.charCodeAt(counted) === 10) line++;
    return line;
  };
  let at = 0;
  while (true) {
    const next = text.indexOf('<', at);
    const loose = text.slice(at, next === -1 ? undefined : next);
    if (open.length === 0 && /[^\s\ufeff]/.test(loose))
      return xmlFault(text, at, 'text outside the drawing', 'a tag');
    if (next === -1) break;
    const passed = passedOver(text, next);
    if (passed !== undefined) {
      if (passed < 0)
        return xmlFault(
          text,
          next,
          text.slice(next, next + 12),
          'a comment, instruction or section that ends, and no declarations',
        );
      at = passed;
      continue;
    }
    if (text[next + 1] === '/') {
      const end = text.indexOf('>', next);
      const tag = text.slice(next + 2, end === -1 ? undefined : end).trimEnd();
      const closing = open.pop();
      if (end === -1 || closing === undefined || closing.tag !== tag) {
        return xmlFault(
          text,
          next,
          `</${tag.slice(0, 40)}`,
          closing === undefined ? 'a start tag' : `</${closing.tag}>`,
        );
      }
      at = end + 1;
      const element = finished(closing);
      const parent = open.at(-1);
      if (parent === undefined) root = element;
      else parent.children.push(element);
      continue;
    }
    if (open.length === 0 && root !== undefined) return xmlFault(text, next, 'a second root', 'the end');
    const start = readStartTag(text, next);
    if (typeof start === 'string') return xmlFault(text, next, text.slice(next, next + 30), start);
    if (++count > MOST_ELEMENTS) return xmlFault(text, next, 'too many elements', `at most ${MOST_ELEMENTS}`);
    if (open.length >= DEEPEST) return xmlFault(text, next, 'nested too deeply', `at most ${DEEPEST} levels`);
    const element: OpenElement = {
      tag: start.tag,
      name: start.tag.slice(start.tag.indexOf(':') + 1),
      attributes: start.attributes,
      children: [],
      line: lineAt(next),
    };
    at = start.end;
    if (!start.isEmpty) open.push(element);
    else {
      const parent = open.at(-1);
      if (parent === undefined) root = finished(element);
      else parent.children.push(finished(element));
    }
  }
  const unclosed = open.at(-1);
  if (unclosed !== undefined) return xmlFault(text, text.length, 'the end', `</${unclosed.tag}>`);
  if (root === undefined) return xmlFault(text, text.length, 'no element', 'a drawing');
  return ok(root);
}

function finished({ name, attributes, children, line }: OpenElement): XmlElement {
  return { name, attributes, children, line };
}

/** The end of a comment, CDATA section, instruction or plain document type at `at`; −1 when it is broken; else undefined. */
function passedOver(text: string, at: number): number | undefined {
  const until = (mark: string, from: number): number => {
    const end = text.indexOf(mark, from);
    return end === -1 ? -1 : end + mark.length;
  };
  if (text.startsWith('<!--', at)) return until('-->', at + 4);
  if (text.startsWith('<![CDATA[', at)) return until(']]>', at + 9);
  if (text.startsWith('<?', at)) return until('?>', at + 2);
  if (!text.startsWith('<!', at)) return undefined;
  const end = until('>', at);
  return text.slice(at, end).includes('[') ? -1 : end;
}

interface StartTag {
  readonly tag: string;
  readonly attributes: ReadonlyMap<string, string>;
  readonly isEmpty: boolean;
  readonly end: number;
}

/** A start tag, or what was expected instead. */
function readStartTag(text: string, at: number): StartTag | string {
  const name = /[A-Za-z_][\w.:-]*/y;
  name.lastIndex = at + 1;
  const tag = name.exec(text)?.[0];
  if (tag === undefined) return 'the name of an element';
  let here = name.lastIndex;
  const attributes = new Map<string, string>();
  const attribute = /\s+([A-Za-z_][\w.:-]*)\s*=\s*(?:"([^"<]*)"|'([^'<]*)')/y;
  const close = /\s*(\/?)>/y;
  while (true) {
    close.lastIndex = here;
    const end = close.exec(text);
    if (end !== null) return { tag, attributes, isEmpty: end[1] === '/', end: close.lastIndex };
    attribute.lastIndex = here;
    const found = attribute.exec(text);
    if (found === null) return 'an attribute="value" or >';
    const key = found[1]!;
    if (attributes.has(key)) return `only one ${key}`;
    const value = unescaped(found[2] ?? found[3] ?? '');
    if (value === undefined) return 'an entity that is known (&amp; &lt; &gt; &quot; &apos; or a number)';
    attributes.set(key, value);
    here = attribute.lastIndex;
  }
}

const ENTITIES: ReadonlyMap<string, string> = new Map([
  ['amp', '&'],
  ['lt', '<'],
  ['gt', '>'],
  ['quot', '"'],
  ['apos', "'"],
]);

function unescaped(value: string): string | undefined {
  if (!value.includes('&')) return value;
  let isKnown = true;
  const text = value.replace(/&([^;&]{0,12});?/g, (whole, name: string) => {
    const number = /^#(?:x([0-9a-fA-F]{1,6})|(\d{1,7}))$/.exec(name);
    const code = number === null ? undefined : Number.parseInt(number[1] ?? number[2]!, number[1] ? 16 : 10);
    const known =
      code === undefined ? ENTITIES.get(name) : code <= 0x10ffff ? String.fromCodePoint(code) : undefined;
    if (known === undefined || !whole.endsWith(';')) isKnown = false;
    return known ?? '';
  });
  return isKnown ? text : undefined;
}

function xmlFault(
  text: string,
  at: number,
  found: string,
  expected: string,
): { ok: false; problems: readonly Problem[] } {
  const before = text.slice(0, at);
  const line = before.split('\n').length;
  const column = at - before.lastIndexOf('\n');
  return fail({
    code: 'svg.unreadable',
    message: `The drawing cannot be read at line ${line}, column ${column}: found ${found}, expected ${expected}.`,
    line,
    column,
    found,
    expected,
  });
}
