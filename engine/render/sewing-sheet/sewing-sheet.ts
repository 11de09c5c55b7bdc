import type { Edge } from '../../geometry/curve.ts';
import type { Garment } from '../../pattern/garment.ts';
import { type Html, html, page } from '../booklet/html.ts';
import { type Picture, pictureSvg } from '../booklet/picture.ts';
import { styleSheet } from '../booklet/style.ts';
import type { ReadAs } from '../print-options.ts';
import { faultsSay, finishedSays, openSays, type SheetContent, sheetContent } from './content.ts';
import { stepSection } from './step-section.ts';
import type { ToBuy } from './to-buy.ts';

/**
 * The sewing order as a page to print: what to cut, what to have at hand, and every step with its figures for this
 * body and a drawing of its pieces. One file of HTML that needs nothing else. `cutLines` holds the cutting lines by
 * piece name; `as` says what date is printed, as given, and in which unit
 * lengths are; `toBuy` what to buy, where that was found; `finished` what it looks like when it is worn.
 */
export const sewingSheet = (
  garment: Garment,
  cutLines: ReadonlyMap<string, Edge>,
  as: ReadAs = {},
  toBuy?: ToBuy,
  finished: readonly Picture[] = [],
): string => sheetHtml(sheetContent(garment, cutLines, as, toBuy, finished));

function sheetHtml(content: SheetContent): string {
  const { title, lead, faults, finished, cut, notions, cloth, steps, open, notes } = content;
  const head = [
    html('meta', { charset: 'utf-8' }),
    html('meta', { name: 'viewport', content: 'width=device-width' }),
    html('title', {}, title),
    html('style', {}, { markup: styleSheet }),
  ];
  return page(head, [
    html('h1', {}, title),
    html('p', { class: 'lead' }, lead),
    ...(finished.length > 0 ? [shown(finished)] : []),
    ...(faults.length > 0 ? [warning(faults)] : []),
    html(
      'div',
      { class: 'lists' },
      html('div', {}, html('h2', {}, 'To cut'), list(cut)),
      html('div', {}, html('h2', {}, 'To have at hand'), list(notions)),
    ),
    ...(cloth ? clothToBuy(cloth) : []),
    html('h2', {}, 'Step by step'),
    ...steps.map(stepSection),
    ...(open.length > 0 ? leftOpen(open) : []),
    ...notes.map((note) => html('p', { class: 'source' }, note)),
  ]);
}

const list = (rows: readonly (readonly string[])[]): Html =>
  html(
    'table',
    {},
    rows.map((row) =>
      html(
        'tr',
        {},
        row.map((text) => html('td', {}, text)),
      ),
    ),
  );

const clothToBuy = ({ titles, rows, note }: ToBuy['cloth']): readonly Html[] => [
  html('h2', {}, 'Cloth to buy'),
  list([titles, ...rows]),
  html('p', { class: 'source' }, note),
];

const shown = (finished: readonly Picture[]): Html =>
  html(
    'figure',
    { class: 'finished' },
    finished.map((picture, i) => pictureSvg(picture, `The finished garment, ${i === 0 ? 'front' : 'back'}`)),
    html('figcaption', { class: 'source' }, finishedSays),
  );

const items = (texts: readonly string[]): Html =>
  html(
    'ul',
    {},
    texts.map((text) => html('li', {}, text)),
  );

/** A sheet whose order does not hold must say so before anyone sews by it. */
const warning = (faults: readonly string[]): Html =>
  html('div', { class: 'faults' }, html('b', {}, faultsSay), items(faults));

const leftOpen = (open: readonly string[]): readonly Html[] => [
  html('h2', {}, 'Left open'),
  html('p', {}, openSays),
  items(open),
];
