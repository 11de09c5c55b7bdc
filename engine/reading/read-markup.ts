import { parseSync } from 'svgson';
import type { Issue, Result } from '../issue.ts';
import type { Node } from '../render/markup.ts';

/** An element of a file being read, with what its surroundings do to it. */
export interface Found {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  /** Its own words, entities resolved. */
  readonly text: string;
  /** It or something around it carries a transform, so its numbers are not those of the paper. */
  readonly transformed: boolean;
  /** The element it stands in; none for the root. */
  readonly parent: Found | undefined;
}

/** The elements of an SVG file in the order in which they stand; the first is the root. */
export function readMarkup(svg: string): Result<readonly Found[]> {
  if (partsIn(svg) > MOST_PARTS) return { ok: false, issues: [tooMuch] };
  const text = withoutSections(svg);
  if (text === undefined) return { ok: false, issues: [notSvg] };
  let root: Node;
  try {
    const parsed: Node | readonly Node[] = parseSync(text);
    if (Array.isArray(parsed)) return { ok: false, issues: [notSvg] };
    root = parsed as Node;
  } catch {
    return { ok: false, issues: [notSvg] };
  }
  const found: Found[] = [];
  const open: { readonly node: Node; readonly parent: Found | undefined }[] = [
    { node: root, parent: undefined },
  ];
  for (let next = open.pop(); next; next = open.pop()) {
    const { node, parent } = next;
    if (node.type !== 'element') continue;
    const attributes = Object.fromEntries(
      Object.entries(node.attributes).map(([key, value]) => [key, decoded(value)]),
    );
    const transformed = (parent?.transformed ?? false) || attributes.transform !== undefined;
    const said = decoded(node.children.map((child) => (child.type === 'text' ? child.value : '')).join(''));
    const element: Found = { name: node.name, attributes, text: said, transformed, parent };
    found.push(element);
    for (const child of node.children.toReversed()) open.push({ node: child, parent: element });
  }
  return { ok: true, value: found, issues: [] };
}

/** No drawing of a pattern has so many tags and attributes. */
const MOST_PARTS = 300_000;

/** How many tags and attributes a file has; no more are counted than matter. */
function partsIn(svg: string): number {
  let count = 0;
  for (const sign of ['<', '="'])
    for (let at = svg.indexOf(sign); at >= 0 && count <= MOST_PARTS; at = svg.indexOf(sign, at + 1))
      count += 1;
  return count;
}

const [OPENING, CLOSING] = ['<![CDATA[', ']]>'];

/**
 * A file with its CDATA sections (XML 1.0, section 2.7) as other text: the parser would take the square of a section's
 * length to read it. Undefined where one does not end.
 */
function withoutSections(svg: string): string | undefined {
  const kept: string[] = [];
  let from = 0;
  for (;;) {
    const start = svg.indexOf(OPENING, from);
    if (start < 0) return kept.join('') + svg.slice(from);
    const end = svg.indexOf(CLOSING, start);
    if (end < 0) return undefined;
    const words = svg.slice(start + OPENING.length, end);
    kept.push(
      svg.slice(from, start),
      words.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;'),
    );
    from = end + CLOSING.length;
  }
}

const tooMuch: Issue = {
  code: 'drawing-too-large',
  severity: 'error',
  path: 'file',
  message: 'This drawing is made of more parts than any pattern. Save the lines of one piece by themselves.',
};

const notSvg: Issue = {
  code: 'not-svg',
  severity: 'error',
  path: 'file',
  message: 'This file is not a whole SVG drawing. It may be damaged, or cut short.',
};

const named: Readonly<Record<string, string>> = { lt: '<', gt: '>', amp: '&', quot: '"', apos: "'" };

/** The parser leaves the five entities of XML and character numbers as they are written. */
const decoded = (text: string): string =>
  text.replace(/&(?:#x([0-9a-f]{1,6})|#(\d{1,7})|(\w{2,4}));/gi, (whole, hex, decimal, name) => {
    if (name !== undefined) return named[name] ?? whole;
    const code = hex === undefined ? Number(decimal) : Number.parseInt(hex, 16);
    return code <= 0x10ffff ? String.fromCodePoint(code) : whole;
  });
