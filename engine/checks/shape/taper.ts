import { alongChain } from './chain.ts';
import { summedLength } from './length.ts';
import type { Measured, MeasureOf } from './measured.ts';

/** How much narrower a width is than a straight taper from one above it to one below, mm. */
export function hollowOfTaper(measure: MeasureOf<'taper'>, on: Measured): number | undefined {
  const { down, notches } = measure;
  const [upper, middle, lower] = [measure.upper, measure.middle, measure.lower].map((parts) =>
    summedLength({ parts }, on),
  );
  const edge = on.tape.edge(down.piece, down.edge);
  const [top, between] = notches.map((notch) => alongChain({ edges: [down] }, notch, on.tape));
  if (!edge || top === undefined || between === undefined) return undefined;
  if (upper === undefined || middle === undefined || lower === undefined) return undefined;
  const share = (between - top) / (on.tape.length(edge) - top);
  return upper + share * (lower - upper) - middle;
}
