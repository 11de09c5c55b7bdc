import type { Body } from '../../engine/body/body.ts';
import { figure } from '../../engine/text/figure.ts';
import type { Foundation } from '../foundation/foundation.ts';
import type { LevelTexts } from './panel-cut.ts';

/** The ease that the fitting left at each level, mm: the girths it took in or let out are meant. */
export const easeLeft = ({ ease, widths: { taken } }: Foundation): Foundation['ease'] => ({
  bust: ease.bust - 2 * taken.bust,
  underBust: ease.underBust - 2 * taken.underBust,
  waist: ease.waist - 2 * taken.waist,
});

/** What the level lines say. */
export function levelTexts({ size }: Body, foundation: Foundation): LevelTexts {
  const left = easeLeft(foundation);
  const finished = (level: string, girth: number): string => `${level}: finished girth ${figure(girth)} mm`;
  return {
    bust: finished('bust', size.bustGirth + left.bust),
    underBust: finished('under-bust', size.underBustGirth + left.underBust),
  };
}
