import type { Issue } from '../issue.ts';
import { styleSheet } from './line-types.ts';
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

/** What would hide, move or clip something, or stretch the page, without a number of any line telling so. */
const attributes = [
  'style',
  'display',
  'visibility',
  'opacity',
  'clip-path',
  'clip',
  'mask',
  'filter',
  'transform-origin',
  'transform-box',
  'preserveAspectRatio',
  'requiredFeatures',
  'requiredExtensions',
  'systemLanguage',
] as const;

/** Where numbers stand that are measured. */
const measured = ['x', 'y', 'width', 'height', 'cx', 'cy', 'r', 'font-size'] as const;

/** The only transform of a sheet: words that read upwards. */
const quarterTurn = /^rotate\(-90 -?[\d.]+ -?[\d.]+\)$/;

/**
 * Whatever on a sheet is drawn otherwise than its numbers say, or might be, by a style, a transform, a percentage or an
 * element that is not read: refused, for what is not measured must not be passed over. One issue for each way, at its first
 * place.
 */
export function drawnOtherwise(found: readonly Found[]): readonly Issue[] {
  const ways = new Map<string, Issue>();
  for (const element of found)
    for (const way of waysOf(element)) if (!ways.has(way)) ways.set(way, refusal(way));
  return [...ways.values()];
}

function waysOf(element: Found): readonly string[] {
  const { name, attributes: given, parent, text } = element;
  if (name.includes(':')) return [];
  if (!elements.has(name) || (name === 'svg' && parent !== undefined)) return [`<${name}>`];
  if (name === 'style') return sameWords(text, styleSheet) ? [] : ['a style sheet of its own'];
  return [
    ...attributes.filter((attribute) => given[attribute] !== undefined).map((attribute) => `“${attribute}”`),
    ...(given.transform !== undefined && !(name === 'text' && quarterTurn.test(given.transform))
      ? ['“transform”']
      : []),
    ...(parent === undefined ? [] : measured.filter((each) => /[^-+.\deE\s]/.test(given[each] ?? ''))).map(
      (each) => `“${each}” with a unit or in percent`,
    ),
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
