import { type Html, html } from '../booklet/html.ts';
import { pictureSvg } from '../booklet/picture.ts';
import type { ShownStep } from './content.ts';
import type { SeamRow } from './seam-words.ts';
import type { AmountWords } from './step-words.ts';

/** A numbered step as it stands on the page: what to do, its figures, its cautions, its drawing. */
export function stepSection({ words, picture, wide }: ShownStep): Html {
  const { number, title } = words;
  const paragraphs = (kind: string | undefined, texts: readonly string[]): readonly Html[] =>
    texts.map((text) => html('p', { class: kind }, text));
  const said = html(
    'div',
    {},
    html('h3', {}, html('span', { class: 'number' }, String(number)), title),
    paragraphs('ready', words.ready),
    paragraphs(undefined, words.how),
    paragraphs('use', words.uses),
    seamTable(words.seams),
    amountList(words.amounts),
    paragraphs('made-with', words.madeWith),
    words.cautions.map((caution) => html('p', { class: 'caution' }, html('b', {}, 'Care: '), caution)),
  );
  const drawn = picture
    ? html('figure', {}, pictureSvg(picture, `The pieces of step ${number}, what is worked on drawn heavy`))
    : [];
  return html('section', { class: wide ? 'step wide' : 'step' }, said, drawn);
}

const seamTable = (rows: readonly SeamRow[]): readonly Html[] =>
  rows.length === 0
    ? []
    : [
        html(
          'table',
          { class: 'seams' },
          rows.map(({ letter, what, length, how }) =>
            html(
              'tr',
              {},
              html('td', { class: 'key' }, letter),
              html('td', {}, what),
              html('td', { class: 'figure' }, length),
              html('td', {}, how),
            ),
          ),
        ),
      ];

const amountList = (amounts: readonly AmountWords[]): readonly Html[] =>
  amounts.length === 0
    ? []
    : [
        html(
          'ul',
          { class: 'amounts' },
          amounts.map(({ says, figure, sign }) =>
            html(
              'li',
              {},
              `${says}: `,
              html('b', {}, figure),
              sign ? html('span', { class: 'source' }, ` ${sign}`) : [],
            ),
          ),
        ),
      ];
