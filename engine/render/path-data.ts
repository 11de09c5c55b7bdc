import type { Curve } from '../geometry/curve.ts';
import type { Point } from '../geometry/point.ts';
import { type Pen, trace } from './pen.ts';

/**
 * Digits behind the point of a written millimetre: six, as exact as anything is drawn. A curve of a tenth of a millimetre,
 * such as is left where a notch stands beside a joint, keeps its heading and its bend so; four digits would drown them.
 */
const digits = 6;

/** A number as SVG reads it: no exponent, no trailing zeros, no negative zero. */
export const numeral = (value: number, places = digits): string => {
  const text = value.toFixed(places).replace(/\.?0+$/, '');
  return text === '-0' ? '0' : text;
};

/**
 * The `d` attribute of one chain of curves (mm, absolute commands, so that rounding does not add up), with so many digits
 * behind the point. A line too short to be seen in the digits is left out.
 */
export function pathData(curves: readonly Curve[], closed = false, places = digits): string {
  const commands: string[] = [];
  let here = '';
  const at = (p: Point): string => `${numeral(p.x, places)} ${numeral(p.y, places)}`;
  const go = (letter: string, ...points: readonly Point[]): void => {
    const stops = points.map(at);
    if (stops.every((stop) => stop === here)) return;
    commands.push(letter + stops.join(' '));
    here = stops.at(-1) ?? here;
  };
  const pen: Pen = {
    moveTo: (to) => go('M', to),
    lineTo: (to) => go('L', to),
    cubicTo: (handle1, handle2, to) => go('C', handle1, handle2, to),
    close: () => commands.push('Z'),
  };
  trace(pen, curves, closed);
  return commands.join('');
}
