import { describe, expect, it } from 'vitest';
import type { MeasurementName } from '../../../engine/body/body.ts';
import { edgeLength } from '../../../engine/geometry/edge.ts';
import { directionAt } from '../../../engine/geometry/evaluate.ts';
import { angleOf } from '../../../engine/geometry/vector.ts';
import type { GradedSize } from '../../../engine/grading/laid-size.ts';
import type { Piece } from '../../../engine/pattern/piece.ts';
import { chartOf, draftOf, gradedBy, shippedChart } from './charts.ts';

const perUnit: Readonly<Record<string, number>> = { in: 25.4, cm: 10 };

/** A column of a published table as it stands in the file, mm. */
function published(file: string, name: MeasurementName): readonly number[] {
  const chart = shippedChart(file) as { units?: string; sizes: readonly Record<string, string | number>[] };
  return chart.sizes.map((row) => Number(row[name]) * (perUnit[String(row.units ?? chart.units)] ?? 0));
}

const steps = (values: readonly number[]): readonly number[] =>
  values.slice(1).map((value, i) => value - (values[i] ?? value));

const finished = ({ made }: GradedSize, level: string): number =>
  made.report.girths.find((girth) => girth.level === level)?.finished ?? Number.NaN;

// What the files say was read where: ASTM D5585-11e1, Table 1; EN 13402-3:2005.
describe('the grade steps of published tables', () => {
  it.each([
    ['astm-d5585-misses-curvy.csv', ['bust', 'under-bust', 'waist']],
    ['astm-d5585-misses-straight.csv', ['bust', 'under-bust', 'waist']],
    ['en-13402-3-women.yaml', ['bust', 'waist']],
  ] as const)('of %s come out at the girths of the drafted pieces', (file, levels) => {
    const trial = draftOf('trial');
    const { sizes } = gradedBy(trial, chartOf(shippedChart(file), trial));
    const columns = { bust: 'bustGirth', 'under-bust': 'underBustGirth', waist: 'waistGirth' } as const;
    for (const level of levels) {
      const wanted = steps(published(file, columns[level]));
      const drafted = steps(sizes.map((size) => finished(size, level)));
      expect(drafted).toHaveLength(wanted.length);
      for (const [i, step] of wanted.entries()) expect(Math.abs((drafted[i] ?? 0) - step)).toBeLessThan(0.05);
    }
  });
});

/** The angle between the two seams of a gore where they meet the hem, radians, and how long they are below the hip. */
function gore({ edges, notches }: Piece): { readonly angle: number; readonly below: number } {
  const i = edges.findIndex(({ name }) => name === 'hem');
  const [before, after] = [edges.at(i - 1), edges[(i + 1) % edges.length]];
  const [down, up] = [before?.curves.at(-1), after?.curves[0]];
  if (!before || !down || !up) throw new Error('no gore');
  const back = directionAt(up, 'start');
  const angle = Math.abs(angleOf(directionAt(down, 'end')) - angleOf({ x: -back.x, y: -back.y }));
  const hip = notches.find(({ edge, name }) => edge === before.name && name === 'hip level');
  return { angle, below: hip ? edgeLength(before) - hip.at : Number.NaN };
}

// Arithmetic: between two levels a skirt whose gores run straight is part of a circle, f of it, and L further down it is
// wider by 2 pi f L, whatever its size.
describe('a skirt whose gores run straight below the hip', () => {
  const row = { backNeckPointToWaist: 40, waistToHip: 20.5 };
  const sizes = [88, 92, 98, 106].map((bust, i) => ({
    ...{ size: `${38 + 2 * i}`, bustGirth: bust, waistGirth: bust - 18, hipGirth: bust + 7, ...row },
    // A hem that grows with the size in its own steps.
    hemSweep: 1900 + 130 * i,
  }));

  it('is wider at the hem by 2 pi f L in every size, f being what its gores make together', () => {
    const skirt = draftOf('skirt');
    const { sizes: graded } = gradedBy(skirt, chartOf({ units: 'cm', sizes }, skirt));
    for (const [i, size] of graded.entries()) {
      const gores = size.made.garment.pieces.map(gore);
      // The centre front is drawn as a half and lies on the fold; all others are cut twice.
      const circle = 2 * gores.reduce((sum, { angle }) => sum + angle, 0);
      const [longest] = gores.map(({ below }) => below).filter(Number.isFinite);
      const grown = finished(size, 'hem') - finished(size, 'hip');
      expect(finished(size, 'hem')).toBeCloseTo(1900 + 130 * i, 0);
      expect(Math.abs(circle * (longest ?? 0) - grown) / grown).toBeLessThan(0.002);
    }
  });
});
