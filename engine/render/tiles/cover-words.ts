import type { Garment } from '../../pattern/garment.ts';
import type { CoverWords } from './cover.ts';
import type { Paper } from './papers.ts';

/** What the first page, or the block beside the pieces, says in words. */
export function coverWords(
  garment: Garment,
  paper: Paper,
  date: string | undefined,
  tiles: number,
): CoverWords {
  const scale = paper.kind === 'projector' ? projecting : printing(tiles);
  return {
    title: `${garment.name} for ${garment.body}`,
    below: [date, `${garment.pieces.length} pieces, all allowances included, 1:1`].filter(Boolean).join(', '),
    notes: tiles > 1 ? [scale, joining] : [scale],
  };
}

const printing = (tiles: number): readonly string[] => [
  'Check the scale before you cut.',
  `Print at 100 %, “actual size”, without fitting to the page${tiles > 1 ? ', and this page first' : ''}.`,
  'Lay a ruler on both squares. Each side must measure 50 mm and 2 in, across and along the paper.',
  'If it does not, change the printer’s scale and print again: 1 mm too little here is 20 mm over a hip.',
];

const projecting: readonly string[] = [
  'Check the scale before you cut.',
  'The squares of the grid are 50 mm wide. Lay a ruler on ten of them, across and along the table: 500 mm.',
  'Set zoom and keystone until both agree, and look at the grid again at all four corners.',
];

const joining: readonly string[] = [
  'Join the tiles.',
  'Lay them out as on the map. Cut each tile along the dotted lines on its left and at its top, and glue it',
  'onto the strip of the tile before it: the crossing marks must meet. Join each row first, then the rows.',
  'Where no line is dotted no piece runs on, and nothing needs joining.',
];
