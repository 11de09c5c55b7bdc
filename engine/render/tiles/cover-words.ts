import type { Garment } from '../../pattern/garment.ts';
import { lengthIn } from '../../text/length.ts';
import type { Unit } from '../../text/units.ts';
import type { ReadAs } from '../print-options.ts';
import type { CoverWords } from './cover.ts';
import { gridSide } from './grid.ts';
import { markStep } from './length-marks.ts';
import type { Paper } from './papers.ts';

/** What the first page, or the block beside the pieces, says in words. */
export function coverWords(
  garment: Garment,
  paper: Paper,
  { date, units = 'mm' }: ReadAs,
  tiles: number,
): CoverWords {
  const scale =
    paper.kind === 'projector' ? projecting(units) : [...printing(tiles, units), ...along(paper, units)];
  return {
    title: `${garment.name} for ${garment.body}`,
    below: [date, `${garment.pieces.length} pieces, all allowances included, 1:1`].filter(Boolean).join(', '),
    notes: tiles > 1 ? [scale, joining] : [scale],
  };
}

const printing = (tiles: number, units: Unit): readonly string[] => [
  'Check the scale before you cut.',
  `Print at 100 %, “actual size”, without fitting to the page${tiles > 1 ? ', and this page first' : ''}.`,
  `Lay a ruler on ${measured[units]}, across and along the paper.`,
  `If it does not, change the printer’s scale and print again: ${tooLittle[units]} over a hip.`,
];

/** How the length of a roll is measured. */
const along = ({ kind }: Paper, units: Unit): readonly string[] =>
  kind === 'roll'
    ? [
        `Along a roll measure the marks at its edges too, from the first to the last: one every ${lengthIn(markStep(units), units)}.`,
      ]
    : [];

/** The test squares as a reader measures them: in her own unit where she has but one. */
const both = 'both squares. Each side must measure 50 mm and 2 in';
const measured: Readonly<Record<Unit, string>> = {
  mm: both,
  cm: both,
  in: 'the square marked 2 in. Each side must measure just that',
};

/** What a fault of the squares makes of a hip of a metre, or of 40 in. */
const tooLittle: Readonly<Record<Unit, string>> = {
  mm: '1 mm too little here is 20 mm',
  cm: '0.1 cm too little here is 2 cm',
  in: '1/16 in too little here is 1 1/4 in',
};

const projecting = (units: Unit): readonly string[] => [
  'Check the scale before you cut.',
  `The squares of the grid are ${lengthIn(gridSide(units), units)} wide. Lay a ruler on ten of them, across and along the table: ${lengthIn(10 * gridSide(units), units)}.`,
  'Set zoom and keystone until both agree, and look at the grid again at all four corners.',
];

const joining: readonly string[] = [
  'Join the tiles.',
  'Lay them out as on the map. Cut each tile along the dotted lines on its left and at its top, and glue it',
  'onto the strip of the tile before it: the crossing marks must meet. Join each row first, then the rows.',
  'Where no line is dotted no piece runs on, and nothing needs joining.',
];
