import { fail, ok, type Problem, type Result } from '../../core/index.ts';

/** An element of an XML text. What stands between elements is not kept: outlines have no text. */
export interface XmlElement {
  /** Without its namespace prefix. */
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
  readonly children: readonly XmlElement[];
  /** Where it begins, in characters. */
  readonly at: number;
}

const MOST_LEVELS = 200;
const MOST_ELEMENTS = 200_000;
const NAME = '[\\p{L}_:][\\p{L}\\p{N}._:-]*';

/**
 * The root element of an XML text (the part of XML 1.0 that SVG files use: elements, attributes, comments, character
 * data, processing instructions). Entities of a document's own are refused, and with them every bomb made of them.
 * Problems: `xml.unreadable` with line and column, `xml.too-large`.
 */
export function readXml(text: string, file: string): Result<XmlElement> {
  const markup = new RegExp(
    `<!--[\\s\\S]*?-->|<!\\[CDATA\\[[\\s\\S]*?\\]\\]>|<\\?[\\s\\S]*?\\?>|<!DOCTYPE[^>[]*>|</(${NAME})\\s*>|<(${NAME})((?:\\s+${NAME}\\s*=\\s*(?:"[^"<]*"|'[^'<]*'))*)\\s*(/?)>`,
    'uy',
  );
  const root: Growing = { name: '', attributes: new Map(), children: [], at: 0 };
  const open: Growing[] = [root];
  let count = 0;
  for (let at = text.indexOf('<'); at >= 0; at = text.indexOf('<', markup.lastIndex)) {
    markup.lastIndex = at;
    const found = markup.exec(text);
    if (!found) return fail(problemAt(text, at, file, 'markup that can be read'));
    const [, closing, opening, attributes, empty] = found;
    const top = open.at(-1)!;
    if (closing !== undefined) {
      const wanted = open.length > 1 ? `</${top.name}>` : 'no closing tag';
      if (top.name !== localName(closing)) return fail(problemAt(text, at, file, wanted));
      open.pop();
    } else if (opening !== undefined) {
      count++;
      if (open.length > MOST_LEVELS || count > MOST_ELEMENTS) return fail(tooLarge(file));
      const element = { name: localName(opening), attributes: readAttributes(attributes!), children: [], at };
      top.children.push(element);
      if (!empty) open.push(element);
    }
  }
  if (open.length > 1) return fail(problemAt(text, text.length, file, `</${open.at(-1)!.name}>`));
  const [only] = root.children;
  return only ? ok(only) : fail(problemAt(text, 0, file, 'an element'));
}

/** Line and column of a character, from 1. */
export function placeInText(text: string, at: number): { readonly line: number; readonly column: number } {
  const before = text.slice(0, at);
  return { line: before.split('\n').length, column: at - before.lastIndexOf('\n') };
}

interface Growing extends XmlElement {
  readonly children: Growing[];
}

function readAttributes(text: string): Map<string, string> {
  const each = new RegExp(`(${NAME})\\s*=\\s*(?:"([^"]*)"|'([^']*)')`, 'gu');
  return new Map(
    Array.from(text.matchAll(each), ([, name, double, single]) => [name!, plainText(double ?? single ?? '')]),
  );
}

function plainText(text: string): string {
  const named: Readonly<Record<string, string>> = { lt: '<', gt: '>', amp: '&', quot: '"', apos: "'" };
  return text.replace(/&(?:#(\d{1,7})|#x([\da-fA-F]{1,6})|(\w+));/g, (whole, decimal, hex, name) => {
    if (name !== undefined) return Object.hasOwn(named, name) ? named[name]! : whole;
    const code = decimal === undefined ? Number.parseInt(hex, 16) : Number(decimal);
    return code <= 0x10ffff ? String.fromCodePoint(code) : whole;
  });
}

function localName(name: string): string {
  return name.slice(name.lastIndexOf(':') + 1);
}

function tooLarge(file: string): Problem {
  const message = `The drawing is too large: at most ${MOST_ELEMENTS} elements, ${MOST_LEVELS} deep, are read.`;
  return { code: 'xml.too-large', message, file };
}

function problemAt(text: string, at: number, file: string, expected: string): Problem {
  const found = at >= text.length ? 'the end of the file' : `"${/^[^\n]{0,30}/.exec(text.slice(at))![0]}"`;
  return {
    code: 'xml.unreadable',
    message: `Found ${found}, expected ${expected}.`,
    file,
    ...placeInText(text, at),
    found,
    expected,
  };
}
