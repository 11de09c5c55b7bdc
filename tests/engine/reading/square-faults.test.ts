import { describe, expect, test } from 'vitest';
import { squareFaults } from '../../../engine/reading/square-faults.ts';

const rect = (width: string, height = width, kind = 'square', name = 'rect') => ({
  name,
  attributes: { width, height, class: kind },
  text: '',
  transformed: false,
  parent: undefined,
});

const values = (squares: Parameters<typeof squareFaults>[0], scale = 1) =>
  squareFaults(squares, scale).map(({ value }) => value);

describe('the test squares of a sheet', () => {
  test('measure 50 mm and 2 in, at the scale of the paper, to a tenth of a millimetre', () => {
    expect(values([rect('50'), rect('50.8')])).toEqual([]);
    expect(values([rect('25'), rect('25.4')], 2)).toEqual([]);
    expect(values([rect('50.09'), rect('50.71')])).toEqual([]);
    expect(values([rect('50.2'), rect('50.8')])).toEqual([50.2]);
    expect(values([rect('49.8'), rect('50.8', '51')])).toEqual([49.8, 51]);
    expect(values([rect('50', '45'), rect('50.8')])).toEqual([45]);
    expect(values([rect('50'), rect('50.8')], 0.9)).toEqual([45, 0.9 * 50.8]);
    expect(values([rect('wide'), rect('50.8')])).toEqual([Number.NaN]);
  });

  test('are told of where they are missing', () => {
    expect(values([])).toHaveLength(2);
    expect(values([rect('50')])).toHaveLength(1);
    expect(values([rect('50', '50', 'paper'), rect('50', '50', 'square', 'path')])).toHaveLength(2);
  });
});
