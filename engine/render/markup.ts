import { type INode, stringify } from 'svgson';
import { withoutTurns } from '../text/without-turns.ts';

/** A piece of SVG as data; `document` below is the only way it becomes text. */
export type Node = INode;

/** An element with its attributes and children. Attributes without a value are left out. */
export function element(
  name: string,
  attributes: Readonly<Record<string, string | undefined>> = {},
  children: readonly Node[] = [],
): Node {
  const given: Record<string, string> = {};
  for (const [key, value] of Object.entries(attributes))
    if (value !== undefined) given[key] = printable(value);
  return { name, type: 'element', value: '', attributes: given, children: [...children] };
}

/**
 * Words inside an element. They are cut after every `]]`, because the library wraps text with markup in it as a
 * CDATA section, and a section must never hold its own end mark.
 */
export const words = (text: string): Node[] =>
  printable(text)
    .split(/(?<=\]\])(?=>)/)
    .map((value) => ({ name: '', type: 'text', value, attributes: {}, children: [] }));

/**
 * A whole SVG file. Everything in it is escaped, for HTML too, into which drawings are put: there the words of a `<title>` are
 * read as HTML, which knows no sections, and a tag in one would come alive.
 */
export const document = (root: Node): string =>
  `<?xml version="1.0" encoding="UTF-8"?>\n${stringify(root).replace(section, (_, held: string) => escaped(held))}\n`;

/** What the library wraps; in attributes it escapes, so that no section begins there. */
const section = /<!\[CDATA\[(.*?)\]\]>/gs;

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

/**
 * Text with what XML 1.0 (section 2.2) cannot carry replaced by a space: control characters, halves of
 * surrogate pairs, and the two non-characters; and with signs that turn the way of writing round taken out
 * (`withoutTurns`).
 */
export const printable = (text: string): string =>
  plain.test(text) ? text : withoutTurns(text).replace(unprintable, ' ');

/** Nearly all that is drawn is numbers. */
const plain = /^[ -~]*$/;

const unprintable = /[^ -~\u{a0}-\u{d7ff}\u{e000}-\u{fffd}\u{10000}-\u{10ffff}]/gu;
