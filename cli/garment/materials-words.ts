import type { Materials } from '../../engine/materials/materials.ts';
import {
  besidesTable,
  clothNote,
  clothTable,
  cutTable,
  threadNote,
  type WordTable,
} from '../../engine/materials/words.ts';
import type { Garment } from '../../engine/pattern/garment.ts';
import type { Reader } from '../output/reader.ts';
import { table } from '../output/table.ts';
import type { CutListResult, MaterialsResult } from '../results/materials.ts';

/** The cut list as a table, and below it what no lay of the cloth goes under. */
export const leastLines = (garment: Garment, materials: Materials, reader: Reader): string =>
  `${cutLines(garment, reader)}\n${clothLines(materials, reader)}`;

/** The cut list, and what to buy: cloth, notions, thread. */
export function materialsLines(garment: Garment, materials: Materials, reader: Reader): string {
  const { units, columns: width } = reader;
  const { rows: bought } = besidesTable(materials, units);
  const notions =
    bought.length > 0
      ? `\n${table([{ title: 'to buy' }, { title: '', right: true }, { title: '' }], bought, width)}`
      : '';
  const note = materials.thread.length > 0 ? `${threadNote(units)}\n` : '';
  return `${cutLines(garment, reader)}\n${clothLines(materials, reader)}${clothNote}\n${notions}${note}`;
}

const cutLines = (garment: Garment, { columns: width }: Reader): string => printed(cutTable(garment), width);

const clothLines = ({ cloths }: Materials, { units, columns: width }: Reader): string =>
  printed(clothTable(cloths, units), width, true);

const printed = ({ titles, rows }: WordTable, width: number, figures = false): string =>
  table(
    titles.map((title, i) => (figures && i > 0 ? { title, right: true } : { title })),
    rows,
    width,
  );

/** The cut list as data. */
export const cutListResult = ({ pieces }: Garment): CutListResult =>
  pieces.map(({ number, name, cut }) => ({
    number,
    piece: name,
    cut: cut.map(({ cloth, count, onFold, pair, printedSide }) => ({
      cloth,
      count,
      onFold,
      pair,
      ...(printedSide && { printedSide }),
    })),
  }));

/** What to buy as data: lengths in mm. */
export const materialsResult = ({ cloths, thread, notions }: Materials): MaterialsResult => ({
  cloths: cloths.map(({ cloth, widths }) => ({
    cloth,
    widths: widths.map(({ width, laid = null, least = null, needed = null }) => ({
      width,
      laid,
      least,
      needed,
    })),
  })),
  thread: thread.map(({ stitch, stitched, thread: length }) => ({ stitch, stitched, length })),
  notions: notions.map(({ name, count, length, note }) => ({ name, count, length, note })),
});
