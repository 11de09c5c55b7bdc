import { Bezier } from 'bezier-js';
import { arcLength, parameterAtLength } from '../../engine/geometry/arc-length.ts';
import { arcLengthGradient } from '../../engine/geometry/arc-length-gradient.ts';
import { ARC_LENGTH } from '../../engine/geometry/tolerance.ts';
import { typicalCubics } from './curves.ts';
import { figures, table, timed, timedTogether } from './timing.ts';

/** Arc length to 1e-6 mm beside bezier-js's length(), with the error of both against a reference to 1e-12 mm. */
export function arcLengthBench(): string {
  const cubics = typicalCubics(1000);
  const others = cubics.map(
    ({ from, handle1, handle2, to }) =>
      new Bezier(from.x, from.y, handle1.x, handle1.y, handle2.x, handle2.y, to.x, to.y),
  );
  const sumOf = <T>(items: readonly T[], length: (item: T) => number) => {
    return () => {
      let sum = 0;
      for (const item of items) sum += length(item);
      return sum;
    };
  };
  const [ours, theirs] = timedTogether([
    sumOf(cubics, (cubic) => arcLength(cubic, ARC_LENGTH)),
    sumOf(others, (other) => other.length()),
  ]);
  const gradient = timed(sumOf(cubics, (cubic) => arcLengthGradient(cubic, ARC_LENGTH).length));
  const inverse = timed(sumOf(cubics, (cubic) => parameterAtLength(cubic, 15, ARC_LENGTH)));
  const worst = (length: (index: number) => number): string =>
    Math.max(...cubics.map((cubic, i) => Math.abs(length(i) - arcLength(cubic, 1e-12)))).toExponential(1);
  const each = (time: number | undefined): string => figures(time ?? 0);
  return [
    'Arc length of 1000 cubics of 20 to 400 mm, time for one, error of the worst',
    table([
      ['', 'ns median', 'ns p99', 'error mm'],
      ['arcLength to 1e-6 mm', each(ours?.median), each(ours?.p99), worst((i) => lengthAt(i))],
      ['bezier-js length()', each(theirs?.median), each(theirs?.p99), worst((i) => others[i]?.length() ?? 0)],
      ['arcLengthGradient', each(gradient.median), each(gradient.p99), ''],
      ['parameterAtLength', each(inverse.median), each(inverse.p99), ''],
    ]),
    `  ratio: ${figures((theirs?.median ?? 0) / (ours?.median ?? 1))} times as fast as bezier-js`,
  ].join('\n');

  function lengthAt(index: number): number {
    const cubic = cubics[index];
    return cubic ? arcLength(cubic, ARC_LENGTH) : 0;
  }
}
