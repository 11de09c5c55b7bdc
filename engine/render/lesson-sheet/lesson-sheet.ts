import type { Garment } from '../../pattern/garment.ts';
import { type Html, html, page } from '../booklet/html.ts';
import { pictureSvg } from '../booklet/picture.ts';
import { styleSheet } from '../booklet/style.ts';
import type { ReadAs } from '../print-options.ts';
import { type LessonContent, type LessonPicture, type LessonStep, lessonContent } from './content.ts';

/**
 * The construction of a garment as a page to print and to follow with pencil and ruler: heading by heading each step
 * with the numbers of this body, its source, and the drawing to scale. One file of HTML that needs nothing else; `as` says
 * what date is printed, as given, and in which unit lengths are.
 */
export const lessonSheet = (garment: Garment, as: ReadAs = {}): string =>
  lessonHtml(lessonContent(garment, as));

const lessonHtml = ({ title, lead, chapters }: LessonContent): string =>
  page(
    [
      html('meta', { charset: 'utf-8' }),
      html('meta', { name: 'viewport', content: 'width=device-width' }),
      html('title', {}, title),
      html('style', {}, { markup: styleSheet }),
    ],
    [
      html('h1', {}, title),
      html('p', { class: 'lead' }, lead),
      ...chapters.flatMap(({ heading, steps }) => [html('h2', {}, heading), ...steps.map(stepSection)]),
    ],
  );

function stepSection({ number, title, sentence, source, places, lines, pictures }: LessonStep): Html {
  const words = html(
    'div',
    {},
    html('h3', {}, html('span', { class: 'number' }, String(number)), title),
    html('p', {}, sentence),
    [...places, ...lines].map((place) => html('p', { class: 'place' }, place)),
    html('p', { class: 'source' }, source),
  );
  const wide = pictures.length !== 1;
  return html(
    'section',
    { class: wide ? 'step wide' : 'step' },
    words,
    pictures.map((picture) => figure(picture, number)),
  );
}

const figure = ({ caption, picture }: LessonPicture, number: number): Html =>
  html(
    'figure',
    {},
    pictureSvg(picture, `Step ${number} on the ${caption}`),
    html('figcaption', { class: 'source' }, caption),
  );
