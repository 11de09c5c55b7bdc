import type { ShapeClaim } from '../../engine/pattern/shape.ts';
import type { PuffSleeveTable, SleeveTable } from './choices.ts';
import type { FittedCap } from './fitted-cap.ts';
import type { HemElastic } from './hem-elastic.ts';

const onSleeve = { kind: 'drafted', piece: 'sleeve' } as const;

/** What a pattern cutter looks at in a cap; `raised` is what a puff stands higher than it would plain, mm. */
export const capFigures = ({ body }: SleeveTable, cap: FittedCap, raised = 0): readonly ShapeClaim[] => [
  {
    ...onSleeve,
    name: 'plain cap height, of armhole girth',
    value: (cap.height.value - raised) / cap.armhole.girth,
    unit: 'share',
    low: 0.28,
    high: 0.36,
    outside: 'a full arm in a small armhole flattens the cap, a slim arm in a large one raises it',
  },
  {
    ...onSleeve,
    name: 'fitted sleeve wider than the arm',
    value: cap.width.value - body.size.upperArmGirth,
    unit: 'mm',
    low: 40,
    high: 70,
    outside: 'as chosen, or a full arm in a small armhole leaves room for no more',
  },
];

/** The same in a puff sleeve, and how full it is. */
export const puffFigures = (
  table: PuffSleeveTable,
  cap: FittedCap,
  elastic: HemElastic,
): readonly ShapeClaim[] => [
  ...capFigures(table, cap, table.styling.puffHeight),
  {
    ...onSleeve,
    name: 'puffed sleeve, of fitted width',
    value: (cap.width.value + cap.spread) / cap.width.value,
    unit: 'ratio',
    low: 1.3,
    high: 2,
    outside: 'as chosen',
  },
  {
    ...onSleeve,
    name: 'cap raised',
    value: table.styling.puffHeight,
    unit: 'mm',
    low: 25,
    high: 70,
    outside: 'as chosen',
  },
  {
    ...onSleeve,
    name: 'arm girth less hem elastic',
    value: elastic.arm - elastic.finished,
    unit: 'mm',
    low: 0,
    high: 25,
    outside: 'as chosen',
  },
];
