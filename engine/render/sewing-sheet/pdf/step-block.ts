import { type Block, besideEachOther, rule, space, stack } from '../../booklet/block.ts';
import { paragraph } from '../../booklet/paragraph.ts';
import { pictureBlock } from '../../booklet/picture-block.ts';
import { type ShownStep, wordsWidth } from '../content.ts';
import type { SeamRow } from '../seam-words.ts';
import type { StepWords } from '../step-words.ts';

/** Font sizes, mm. */
const [titleSize, textSize, smallSize] = [4.2, 3.4, 2.9];

/** Room for the number of a step, and for a letter or bullet, mm. */
const [numberRoom, signRoom] = [8, 4.5];

/** White between the words of a step and its drawing, mm. */
const gutter = 4;

/** A step with its drawing, on a page of this width (mm). */
export function stepBlock({ words, picture, wide }: ShownStep, width: number): Block {
  const said = wordsBlock(words, wide ? width : wordsWidth);
  const drawn = picture ? pictureBlock(picture) : space(0);
  const both = wide ? stack(said, space(2), drawn) : besideEachOther(said, wordsWidth + gutter, drawn);
  return stack(both, rule(width));
}

function wordsBlock(words: StepWords, width: number): Block {
  const text = (size: number, texts: readonly string[], sign?: string, indent = 0): readonly Block[] =>
    texts.map((said) => paragraph(said, width, { size, indent, ...(sign && { sign }) }));
  const amounts = words.amounts.map(({ says, figure, sign }) => `${says}: ${figure} ${sign}`.trim());
  return stack(
    paragraph(words.title, width, {
      size: titleSize,
      bold: true,
      sign: String(words.number),
      indent: numberRoom,
    }),
    ...text(smallSize, words.ready),
    ...text(textSize, words.how),
    ...words.uses.map((use) => paragraph(use, width, { size: textSize, bold: true })),
    ...words.seams.map((row) => seamParagraph(row, width)),
    ...text(textSize, amounts, '•', signRoom),
    ...text(smallSize, words.madeWith),
    ...text(
      textSize,
      words.cautions.map((caution) => `Care: ${caution}`),
      '!',
      signRoom,
    ),
  );
}

const seamParagraph = ({ letter, what, length, how }: SeamRow, width: number): Block =>
  paragraph([`${what}: ${length}`, how].filter(Boolean).join('; '), width, {
    size: textSize,
    indent: signRoom,
    sign: letter || '–',
  });
