import { parseSync } from 'svgson';
import type { Issue, Result } from '../issue.ts';
import type { Node } from './markup.ts';

/** An element of a file being read, with what its surroundings do to it. */
export interface Found {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  /** As it stands in the file: the parser does not tell CDATA, which has no entities, from other text. */
  readonly text: string;
  /** It or something around it carries a transform, so its numbers are not those of the paper. */
  readonly transformed: boolean;
  /** The element it stands in; none for the root. */
  readonly parent: Found | undefined;
}

/** The elements of an SVG file in the order in which they stand; the first is the root. */
export function readMarkup(svg: string): Result<readonly Found[]> {
  let root: Node;
  try {
    const parsed: Node | readonly Node[] = parseSync(svg);
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
    const text = node.children.map((child) => (child.type === 'text' ? child.value : '')).join('');
    const element: Found = { name: node.name, attributes, text, transformed, parent };
    found.push(element);
    for (const child of node.children.toReversed()) open.push({ node: child, parent: element });
  }
  return { ok: true, value: found, issues: [] };
}

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
