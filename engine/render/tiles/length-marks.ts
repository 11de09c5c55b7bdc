import { point } from '../../geometry/point.ts';
import { lengthIn } from '../../text/length.ts';
import { millimetres, type Unit } from '../../text/units.ts';
import { type Ink, stroke } from '../ink.ts';
import type { Size } from '../layout.ts';
import { textSizes } from '../line-types.ts';
import { margin } from './tile-page.ts';

/** From mark to mark along a roll, mm: what the reader's tape has. */
export const markStep = (units: Unit): number => (units === 'in' ? 20 * millimetres.in : 500);

/** How far from the edge of the roll its marks begin, mm; plotters reach farther out than printers (common practice, no source). */
const outermost = 4;

/** Room below a mark that its words take, mm. */
const below = 14;

/**
 * Marks at both edges of a page from a roll, beside everything else on it, so that a plotter's length can be measured from the
 * first to the last: strokes across the margin, with how far each is from the first.
 */
export function lengthMarks({ width, height }: Size, units: Unit): readonly Ink[] {
  const step = markStep(units);
  const many = Math.max(0, Math.floor((height - margin - below) / step) + 1);
  return Array.from({ length: many }, (_, i) => margin + i * step).flatMap((y, i): readonly Ink[] => {
    const middle = point(outermost + textSizes.small, y + below / 2);
    return [
      stroke('crossing', point(outermost, y), point(margin, y)),
      stroke('crossing', point(width - margin, y), point(width - outermost, y)),
      {
        kind: 'words',
        text: lengthIn(i * step, units),
        at: middle,
        size: textSizes.small,
        anchored: 'middle',
        turnedAbout: middle,
      },
    ];
  });
}
