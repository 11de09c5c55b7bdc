import { describe, expect, it } from 'vitest';
import { chosenSizes, shownSizes } from '../../../engine/grading/chosen-sizes.ts';
import { chartOf, shippedChart } from './charts.ts';

const chart = chartOf(shippedChart('workshop-stock.yaml'));
const namesOf = (names: string) => {
  const chosen = chosenSizes(chart, names);
  return chosen.ok ? chosen.value.map(({ name }) => name) : chosen.issues.map(({ message }) => message);
};

describe('sizes of a chart', () => {
  it('are chosen by size and cup however they are written, or by size alone in the cup that is shown', () => {
    expect(namesOf('40 E, 42c,34')).toEqual(['40 E', '42 C', '34 C']);
  });

  it('are there as often as they are named', () => {
    expect(namesOf('40,40')).toEqual(['40 C', '40 C']);
  });

  it('are refused where the chart has them not, with one that is like it', () => {
    expect(chosenSizes(chart, '41').issues).toEqual([
      expect.objectContaining({ code: 'unknown-size', severity: 'error', path: '--only' }),
    ]);
    expect(namesOf('40 C,41')[0]).toMatch(/“41” is no size of this chart/);
    expect(namesOf(' ,')[0]).toContain('no size of this chart');
  });

  it('are shown in the middle cup', () => {
    expect(shownSizes(chart).map(({ name }) => name)).toEqual(chart.sizes.map((size) => `${size} C`));
  });
});
