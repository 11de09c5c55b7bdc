import type { Body } from '../../engine/body/body.ts';
import type { ShapeClaim } from '../../engine/pattern/shape.ts';
import { armholeShapes } from './armhole-shapes.ts';
import { bustShapes } from './bust-shapes.ts';
import { backTaper, sideBalance, upright, waistLevel } from './hang-shapes.ts';
import type { PanelCut } from './panel-cut.ts';

/** What a cutter looks at on the panels of a bodice, measured as they are written; `plain` where a plain sleeve is set in. */
export function bodiceShapes(cut: PanelCut, body: Body, plain: boolean): readonly ShapeClaim[] {
  const { bustGirth, underBustGirth, waistGirth } = body.size;
  const tapersIn = waistGirth < underBustGirth;
  return [
    ...armholeShapes(cut, body, plain),
    sideBalance,
    ...bustShapes(cut, bustGirth - underBustGirth),
    ...waistLevel(cut, tapersIn),
    ...upright,
    ...backTaper(tapersIn),
  ];
}
