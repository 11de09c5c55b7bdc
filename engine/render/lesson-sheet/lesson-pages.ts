import type { Garment } from '../../pattern/garment.ts';
import { type Block, besideEachOther, rule, space, stack } from '../booklet/block.ts';
import { bookletPages, bookletSizes, bookletWidth as width } from '../booklet/pages.ts';
import { paragraph } from '../booklet/paragraph.ts';
import { pictureBlock } from '../booklet/picture-block.ts';
import type { ReadAs } from '../print-options.ts';
import type { Page } from '../tiles/page.ts';
import { type LessonPicture, type LessonStep, lessonContent } from './content.ts';

const { title: titleSize, heading: headingSize, text: textSize, small: smallSize } = bookletSizes;

/** Width of the words beside a drawing, where the drawing begins, and room for the number of a step, mm. */
const [wordsWidth, pictureAt, numberRoom] = [98, 102, 10];

/** The lesson as pages of A4; the same words and drawings as the page of HTML. */
export function lessonPages(garment: Garment, as: ReadAs = {}): readonly Page[] {
  const { title, lead, chapters } = lessonContent(garment, as);
  const bold = (said: string, size: number): Block => paragraph(said, width, { size, bold: true });
  return bookletPages([
    bold(title, titleSize),
    paragraph(lead, width, { size: textSize }),
    ...chapters.flatMap(({ heading, steps }): readonly Block[] => {
      const [first, ...others] = steps.map(stepBlock);
      // A heading stays with its first step.
      return [stack(space(3), bold(heading, headingSize), first ?? space(0)), ...others];
    }),
  ]);
}

function stepBlock({ number, title, sentence, source, places, lines, pictures }: LessonStep): Block {
  const across = pictures.length === 1 ? wordsWidth : width;
  const words = stack(
    paragraph(title, across, { size: 4, bold: true, sign: String(number), indent: numberRoom }),
    paragraph(sentence, across, { size: textSize }),
    ...[...places, ...lines].map((place) => paragraph(place, across, { size: textSize })),
    paragraph(source, across, { size: smallSize }),
  );
  const [first, ...others] = pictures.map(figure);
  if (!first) return stack(words, rule(width));
  if (others.length === 0) return stack(besideEachOther(words, pictureAt, first), rule(width));
  return stack(words, ...inPairs([first, ...others]), rule(width));
}

/** Drawings below the words, two beside each other. */
function inPairs(figures: readonly Block[]): readonly Block[] {
  const [first, second, ...others] = figures;
  if (!first) return [];
  return [second ? besideEachOther(first, width / 2, second) : first, ...inPairs(others)];
}

const figure = ({ caption, picture }: LessonPicture): Block =>
  stack(pictureBlock(picture), paragraph(caption, width / 2, { size: smallSize }));
