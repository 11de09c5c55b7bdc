import { SaxesParser } from 'saxes';
import type { Issue, Result } from '../issue.ts';

/** An element of a file being read, with what its surroundings do to it. */
export interface FoundElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  /** Its own words, entities resolved. */
  readonly text: string;
  /** It or something around it carries a transform, so its numbers are not those of the paper. */
  readonly transformed: boolean;
  /** The element it stands in; none for the root. */
  readonly parent: FoundElement | undefined;
}

/** What an SVG file holds. */
export interface Markup {
  /** In the order in which they stand; the first is the root. */
  readonly elements: readonly FoundElement[];
  /** A style sheet stands beside the drawing (xml-stylesheet), of which no element speaks. */
  readonly styledBeside: boolean;
  /** The file defines things of its own before the root, such as attributes that nobody wrote. */
  readonly defining: boolean;
}

/** Reads a file as XML 1.0 has it, strictly: what is not well-formed is refused. */
export function readMarkup(svg: string): Result<Markup> {
  const elements: FoundElement[] = [];
  const open: Growing[] = [];
  let [parts, styledBeside, defining] = [0, false, false];
  const parser = new SaxesParser();
  parser.on('doctype', (words) => {
    if (!words.includes('[')) return;
    defining = true;
    Object.assign(parser.ENTITIES, shortEntities(words));
    if (svg.split('&').length > MOST_REFERENCES) throw new TooManyParts();
  });
  parser.on('processinginstruction', ({ target }) => {
    if (target.toLowerCase() === 'xml-stylesheet') styledBeside = true;
  });
  parser.on('attribute', () => count());
  parser.on('opentagstart', () => count());
  parser.on('opentag', ({ name, attributes }) => {
    const parent = open.at(-1);
    const transformed = (parent?.transformed ?? false) || attributes.transform !== undefined;
    const element: Growing = { name, attributes, text: '', transformed, parent };
    elements.push(element);
    open.push(element);
  });
  const said = (words: string): void => {
    const element = open.at(-1);
    if (element) element.text += words;
  };
  parser.on('text', said);
  parser.on('cdata', said);
  parser.on('closetag', () => open.pop());
  const count = (): void => {
    parts += 1;
    if (parts > MOST_PARTS) throw new TooManyParts();
  };
  try {
    parser.write(svg).close();
  } catch (error) {
    return { ok: false, issues: [error instanceof TooManyParts ? tooMuch : notSvg] };
  }
  if (elements[0]?.name !== 'svg') return { ok: false, issues: [notSvg] };
  return { ok: true, value: { elements, styledBeside, defining }, issues: [] };
}

/** An element whose words are still being read. */
type Growing = { -readonly [Key in keyof FoundElement]: FoundElement[Key] };

/** What drawing programs define before the root, to call name spaces by: short texts, with nothing in them to resolve. */
const shortEntities = (definitions: string): Readonly<Record<string, string>> =>
  Object.fromEntries(
    [
      ...definitions.matchAll(/<!ENTITY\s+([\w.-]{1,40})\s+(?:'([^'<&%]{0,200})'|"([^"<&%]{0,200})")\s*>/g),
    ].map(([, name = '', single, double]) => [name, single ?? double ?? '']),
  );

/** No drawing that defines such texts refers to them so often; more could make a file grow large. */
const MOST_REFERENCES = 20_000;

/** No drawing of a pattern has so many tags and attributes. */
const MOST_PARTS = 300_000;

class TooManyParts extends Error {}

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
