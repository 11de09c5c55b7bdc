import type { Body } from '../../engine/body/body.ts';
import type { Solution } from '../../engine/constraints/solution.ts';
import type { Figure } from '../../engine/pattern/figure.ts';
import { solvedPoint } from '../piece-edges.ts';
import type { SleeveStyling } from './choices.ts';
import type { HemElastic } from './hem-elastic.ts';
import type { SleeveLines } from './sleeve-lines.ts';

/** What a pattern cutter looks at in a puff sleeve; the armhole girth is that of the bodice, strap included. */
export function sleeveFigures(
  lines: SleeveLines,
  solution: Solution,
  body: Body,
  styling: SleeveStyling,
  armholeGirth: number,
  elastic: HemElastic,
): readonly Figure[] {
  const capHeight = -solvedPoint(solution, 'plain cap top').y;
  const spread = solution.scalars[lines.spread] ?? 0;
  return [
    {
      name: 'plain cap height, of armhole girth',
      value: capHeight / armholeGirth,
      unit: 'share',
      low: 0.28,
      high: 0.36,
      outside: 'a full arm in a small armhole flattens the cap, a slim arm in a large one raises it',
    },
    {
      name: 'fitted sleeve wider than the arm',
      value: lines.fitted - body.size.upperArmGirth,
      unit: 'mm',
      low: 40,
      high: 70,
      outside: 'as chosen',
    },
    {
      name: 'puffed sleeve, of fitted width',
      value: (lines.fitted + spread) / lines.fitted,
      unit: 'ratio',
      low: 1.3,
      high: 2,
      outside: 'as chosen',
    },
    { name: 'cap raised', value: styling.puffHeight, unit: 'mm', low: 25, high: 70, outside: 'as chosen' },
    {
      name: 'arm girth less hem elastic',
      value: elastic.arm - elastic.finished,
      unit: 'mm',
      low: 0,
      high: 25,
      outside: 'as chosen',
    },
  ];
}
