import type { Issue } from '../issue.ts';
import { earlierClasses, earlierStyleSheet, styleSheet } from '../render/line-types.ts';
import type { FoundElement, Markup } from './read-markup.ts';

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

/** The style sheets that a sheet may be drawn with: what each class of line looks like, and no more. */
export type KnownStyle = (text: string) => boolean;

/** The style sheet that is written here, with or without the look of an earlier outline. */
export const ownStyle: KnownStyle = (text) =>
  sameWords(text, styleSheet) || sameWords(text, earlierStyleSheet);

/** What a style may set without moving, hiding or covering a line that is measured. */
const harmless = new Set([
  'fill',
  'stroke',
  'stroke-width',
  'stroke-linejoin',
  'stroke-linecap',
  'stroke-dasharray',
  'font-family',
]);

/** The style sheet of any version of this program: none has ever set more than how a line looks. */
export const styleOfAnyVersion: KnownStyle = (text) =>
  !/[@\\]|\/\*|url/i.test(text) &&
  [...text.matchAll(/([\w-]*)\s*:/g)].every(([, property = '']) => harmless.has(property));

/**
 * Whatever on a sheet is drawn otherwise than its numbers say, or might be, by a style, a transform, a percentage or an
 * element that is not read: refused, for what is not measured must not be passed over. The outline of an earlier draft may
 * lie under a piece, where the style draws it grey and dashed; drawn like the others it would be a line that nobody
 * measured. One issue for each way, at its first place.
 */
export function drawnOtherwise(
  { elements: found, styledBeside, defining }: Markup,
  isKnown: KnownStyle,
): readonly Issue[] {
  const ways = new Map<string, Issue>();
  const showsEarlier = found.some(({ name, text }) => name === 'style' && text.includes('.earlier{'));
  if (styledBeside) ways.set(ownStyleSheet, refusal(ownStyleSheet));
  if (defining) ways.set('definitions', refusal('definitions of its own'));
  let lines = 0;
  for (const element of found) {
    if (ways.size >= MOST_WAYS) break;
    for (const way of waysOf(element, isKnown, showsEarlier).slice(0, MOST_WAYS))
      if (!ways.has(way)) ways.set(way, refusal(way));
    const covers = element.attributes.class === 'paper' && lines > 0;
    if (covers) ways.set('paper', refusal('paper laid over its lines'));
    if (element.name === 'path') lines++;
  }
  return [...ways.values()];
}

const ownStyleSheet = 'a style sheet of its own';

/** So many ways are told one by one: a sheet with as many was not written here. */
const MOST_WAYS = 12;

function waysOf(element: FoundElement, isKnown: KnownStyle, showsEarlier: boolean): readonly string[] {
  const { name, attributes: given, parent, text } = element;
  const renamed = Object.entries(given).some(
    ([key, value]) => key.startsWith('xmlns:') && value === nameSpace,
  );
  if (renamed) return ['elements under another name'];
  if (name.includes(':')) return [];
  if (!elements.has(name) || (name === 'svg' && parent !== undefined)) return [`<${name}>`];
  if (name === 'style' && !isKnown(text)) return [ownStyleSheet];
  if (!showsEarlier && given.class?.split(/\s+/).some(isEarlier))
    return ['an earlier outline that is drawn like a line of the pattern'];
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

const isEarlier = (word: string): boolean => earlierClasses.some((each) => each === word);

const sameWords = (one: string, other: string): boolean =>
  one.replace(/\s+/g, '') === other.replace(/\s+/g, '');

const refusal = (way: string): Issue => ({
  code: 'drawn-otherwise',
  severity: 'error',
  path: 'file',
  message: `The sheet uses ${way.slice(0, 60)}, which may draw a line elsewhere than its numbers say, or not at all. Only what is measured can be walked: write the sheet again, or save it without.`,
});
