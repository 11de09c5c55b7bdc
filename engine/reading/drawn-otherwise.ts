import type { Issue } from '../issue.ts';
import { styleSheet } from '../render/line-types.ts';
import type { Found } from './read-markup.ts';

/** What a written sheet is made of; elements of other name spaces, such as a drawing program's notes, are not drawn. */
const elements = new Set([
  'svg',
  'title',
  'desc',
  'metadata',
  'style',
  'rect',
  'g',
  'path',
  'circle',
  'text',
]);

/**
 * The attributes a sheet is written with, and those by which others name things. Any other may hide, move, fade or clip
 * something, or stretch the page, without a number of any line telling so.
 */
const attributes = new Set([
  'xmlns',
  'version',
  'id',
  'class',
  'width',
  'height',
  'viewBox',
  'x',
  'y',
  'cx',
  'cy',
  'r',
  'd',
  'font-size',
  'font-weight',
  'text-anchor',
  'transform',
]);

/** Where numbers stand that are measured. */
const measured = ['x', 'y', 'width', 'height', 'cx', 'cy', 'r', 'font-size'] as const;

const nameSpace = 'http://www.w3.org/2000/svg';

/** The only transform of a sheet: words that read upwards. */
const quarterTurn = /^rotate\(-90 -?[\d.]+ -?[\d.]+\)$/;

/** A style sheet beside the drawing, and definitions that give elements attributes nobody wrote: no parser shows them. */
const before = [
  { way: 'a style sheet of its own', pattern: /<\?xml-stylesheet/i },
  { way: 'definitions of its own', pattern: /<!DOCTYPE[^>]{0,1000}\[/i },
] as const;

/**
 * Whatever on a sheet is drawn otherwise than its numbers say, or might be, by a style, a transform, a percentage or an
 * element that is not read: refused, for what is not measured must not be passed over. One issue for each way, at its first
 * place.
 */
export function drawnOtherwise(svg: string, found: readonly Found[]): readonly Issue[] {
  const ways = new Map<string, Issue>();
  for (const { way, pattern } of before) if (pattern.test(svg)) ways.set(way, refusal(way));
  let lines = 0;
  for (const element of found) {
    if (ways.size >= MOST_WAYS) break;
    for (const way of waysOf(element).slice(0, MOST_WAYS)) if (!ways.has(way)) ways.set(way, refusal(way));
    const covers = element.attributes.class === 'paper' && lines > 0;
    if (covers) ways.set('paper', refusal('paper laid over its lines'));
    if (element.name === 'path') lines++;
  }
  return [...ways.values()];
}

/** So many ways are told one by one: a sheet with as many was not written here. */
const MOST_WAYS = 12;

function waysOf(element: Found): readonly string[] {
  const { name, attributes: given, parent, text } = element;
  const renamed = Object.entries(given).some(
    ([key, value]) => key.startsWith('xmlns:') && value === nameSpace,
  );
  if (renamed) return ['elements under another name'];
  if (name.includes(':')) return [];
  if (!elements.has(name) || (name === 'svg' && parent !== undefined)) return [`<${name}>`];
  if (name === 'style' && !sameWords(text, styleSheet)) return ['a style sheet of its own'];
  return [
    ...Object.keys(given)
      .filter((key) => !attributes.has(key) && !/^data-|:/.test(key))
      .map((key) => `“${key}”`),
    ...(given.transform !== undefined && !(name === 'text' && quarterTurn.test(given.transform))
      ? ['“transform”']
      : []),
    ...(parent === undefined ? [] : measured.filter((each) => /[^-+.\deE\s]/.test(given[each] ?? ''))).map(
      (each) => `“${each}” with a unit or in percent`,
    ),
    ...(parent === undefined && (given.x ?? given.y) !== undefined ? ['a place for the page itself'] : []),
    ...(parent === undefined && !/^\s*0[\s,]+0[\s,]/.test(given.viewBox ?? '0 0 ')
      ? ['a “viewBox” that begins elsewhere than at 0 0']
      : []),
  ];
}

const sameWords = (one: string, other: string): boolean =>
  one.replace(/\s+/g, '') === other.replace(/\s+/g, '');

const refusal = (way: string): Issue => ({
  code: 'drawn-otherwise',
  severity: 'error',
  path: 'file',
  message: `The sheet uses ${way.slice(0, 60)}, which may draw a line elsewhere than its numbers say, or not at all. Only what is measured can be walked: write the sheet again, or save it without.`,
});
