import type { Edge } from '../../../geometry/curve.ts';
import type { Garment } from '../../../pattern/garment.ts';
import { type Block, besideEachOther, rule, space, stack } from '../../booklet/block.ts';
import { bookletPages, bookletSizes, bookletWidth as width } from '../../booklet/pages.ts';
import { paragraph } from '../../booklet/paragraph.ts';
import type { Picture } from '../../booklet/picture.ts';
import { pictureBlock } from '../../booklet/picture-block.ts';
import type { ReadAs } from '../../print-options.ts';
import type { Page } from '../../tiles/page.ts';
import { faultsSay, finishedSays, openSays, type SheetContent, sheetContent } from '../content.ts';
import type { ListRow } from '../lists.ts';
import type { ToBuy } from '../to-buy.ts';
import { stepBlock } from './step-block.ts';

const { title: titleSize, heading: headingSize, text: textSize, small: smallSize } = bookletSizes;

/** The sewing sheet as pages of A4; the same words and drawings as the page of HTML. */
export const sewingPages = (
  garment: Garment,
  cutLines: ReadonlyMap<string, Edge>,
  as: ReadAs = {},
  toBuy?: ToBuy,
  finished: readonly Picture[] = [],
): readonly Page[] => bookletPages(blocksOf(sheetContent(garment, cutLines, as, toBuy, finished)));

function blocksOf(content: SheetContent): readonly Block[] {
  const { title, lead, faults, finished, cut, notions, cloth, steps, open, notes } = content;
  const text = (said: string): Block => paragraph(said, width, { size: textSize });
  const item = (said: string): Block => paragraph(said, width, { size: textSize, sign: '•', indent: 4.5 });
  const bold = (said: string, size: number): Block => paragraph(said, width, { size, bold: true });
  const half = (width - 8) / 2;
  return [
    bold(title, titleSize),
    text(lead),
    ...(finished.length > 0 ? shown(finished) : []),
    ...(faults.length > 0 ? [bold(faultsSay, headingSize), ...faults.map(item)] : []),
    space(3),
    besideEachOther(
      list('To cut', cut, half, 8, 36),
      half + 8,
      list('To have at hand', notions, half, 24, 46),
    ),
    ...(cloth ? clothToBuy(cloth) : []),
    rule(width),
    ...steps.map((step) => stepBlock(step, width)),
    ...(open.length > 0 ? [bold('Left open', headingSize), text(openSays), ...open.map(item)] : []),
    space(2),
    ...notes.map((note) => paragraph(note, width, { size: smallSize })),
  ];
}

/** The finished garment, its sides beside each other. */
const shown = (finished: readonly Picture[]): readonly Block[] => [
  space(2),
  finished.reduceRight<Block>(
    (right, picture) => besideEachOther(pictureBlock(picture), picture.width + 12, right),
    space(0),
  ),
  space(2),
  paragraph(finishedSays, width, { size: smallSize }),
];

/** Lengths of cloth by width, in columns of one width behind the names. */
function clothToBuy({ titles, rows, note }: ToBuy['cloth']): readonly Block[] {
  const across = width / (titles.length + 1);
  const cell = (said: string, i: number): Block =>
    paragraph(said, across * (i === 0 ? 2 : 1) - 2, { size: 3.1, after: 0.8 });
  const row = (cells: readonly string[]): Block =>
    cells.reduceRight<Block>(
      (right, said, i) => besideEachOther(cell(said, i), across * (i === 0 ? 2 : 1), right),
      space(0),
    );
  return [
    space(2),
    paragraph('Cloth to buy', width, { size: headingSize, bold: true }),
    ...[titles, ...rows].map(row),
    paragraph(note, width, { size: smallSize }),
  ];
}

/** A list under a heading; its second and third column begin at `second` and `third` mm. */
function list(
  heading: string,
  rows: readonly ListRow[],
  across: number,
  second: number,
  third: number,
): Block {
  const cell = (text: string, room: number): Block => paragraph(text, room, { size: 3.1, after: 0.8 });
  return stack(
    paragraph(heading, across, { size: headingSize, bold: true }),
    ...rows.map(([what, quantity, note]) =>
      besideEachOther(
        cell(what, second),
        second,
        besideEachOther(cell(quantity, third - second), third - second, cell(note, across - third)),
      ),
    ),
  );
}
