import { claim, type SourcedBand } from '../../engine/pattern/band-table.ts';
import type { ShapeClaim } from '../../engine/pattern/shape.ts';
import { sleeveBands as bands } from './bands.ts';
import type { PuffSleeveTable, SleeveTable } from './choices.ts';
import type { FittedCap } from './fitted-cap.ts';
import type { HemElastic } from './hem-elastic.ts';

const figure = (band: SourcedBand, value: number, outside = 'as chosen'): ShapeClaim =>
  claim(band, { kind: 'drafted', piece: 'sleeve', value, unit: band.unit }, outside);

/** What a pattern cutter looks at in a cap; `raised` is what a puff stands higher than it would plain, mm. */
export const capFigures = ({ body }: SleeveTable, cap: FittedCap, raised = 0): readonly ShapeClaim[] => [
  figure(
    bands.capHeight,
    (cap.height.value - raised) / cap.armhole.girth,
    'a full arm in a small armhole flattens the cap, a slim arm in a large one raises it',
  ),
  figure(
    bands.width,
    cap.width.value - body.size.upperArmGirth,
    'as chosen, or a full arm in a small armhole leaves room for no more',
  ),
];

/** The same in a puff sleeve, and how full it is. */
export const puffFigures = (
  table: PuffSleeveTable,
  cap: FittedCap,
  elastic: HemElastic,
): readonly ShapeClaim[] => [
  ...capFigures(table, cap, table.styling.puffHeight),
  figure(bands.puffWidth, (cap.width.value + cap.spread) / cap.width.value),
  figure(bands.raised, table.styling.puffHeight),
  figure(bands.elastic, elastic.arm - elastic.finished),
];
