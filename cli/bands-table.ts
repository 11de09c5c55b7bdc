import { type Figure, inBand } from '../engine/pattern/figure.ts';
import { type Column, fixed, table } from './table.ts';

/** A garment's figures beside the bands a pattern cutter expects, and why a figure may lie outside its band. */
export const bandsTable = (figures: readonly Figure[]): string =>
  table(
    columns,
    figures.map((figure) => {
      const digits = figure.unit === 'mm' || figure.unit === 'degrees' ? 1 : 2;
      const shown = (value: number): string => fixed(value, digits);
      return [
        figure.name,
        shown(figure.value),
        unitWord[figure.unit],
        `${shown(figure.low)} to ${shown(figure.high)}`,
        inBand(figure) ? '' : `outside: ${figure.outside}`,
      ];
    }),
  );

const unitWord: Readonly<Record<Figure['unit'], string>> = {
  mm: 'mm',
  degrees: '°',
  share: '',
  ratio: '',
};

const columns: readonly Column[] = [
  { title: 'figure' },
  { title: 'drafted', right: true },
  { title: '' },
  { title: 'usual band' },
  { title: '' },
];
