import type { Solution } from '../../engine/constraints/solution.ts';
import type { ShapeClaim } from '../../engine/pattern/shape.ts';
import { solvedPoint } from '../piece-edges.ts';
import type { Arm } from './arm.ts';
import type { Armhole } from './armhole.ts';
import type { CapLines } from './cap-lines.ts';
import type { HemElastic } from './hem-elastic.ts';
import type { SleeveTable } from './sleeve.ts';

/** What a pattern cutter looks at in a sleeve before it is cut. */
export function sleeveFigures(drawn: {
  readonly table: SleeveTable;
  readonly solution: Solution;
  readonly lines: CapLines;
  readonly arm: Arm;
  readonly armhole: Armhole;
  readonly elastic: HemElastic | undefined;
}): readonly ShapeClaim[] {
  const { table, solution, lines, arm, armhole, elastic } = drawn;
  const { body, styling } = table;
  const plain = styling.sleeve === 'plain';
  const capHeight = -solvedPoint(solution, lines.top).y - (plain ? 0 : styling.puffHeight);
  const spread = solution.scalars[lines.spread] ?? 0;
  const onSleeve = { kind: 'drafted', piece: 'sleeve' } as const;
  return [
    {
      ...onSleeve,
      name: 'plain cap height, of armhole girth',
      value: capHeight / armhole.girth,
      unit: 'share',
      low: 0.28,
      high: 0.36,
      outside: 'a full arm in a small armhole flattens the cap, a slim arm in a large one raises it',
    },
    {
      ...onSleeve,
      name: 'fitted sleeve wider than the arm',
      value: arm.width.value - body.size.upperArmGirth,
      unit: 'mm',
      low: 40,
      high: 70,
      outside: 'as chosen',
    },
    ...(plain
      ? []
      : [
          {
            ...onSleeve,
            name: 'puffed sleeve, of fitted width',
            value: (arm.width.value + spread) / arm.width.value,
            unit: 'ratio' as const,
            low: 1.3,
            high: 2,
            outside: 'as chosen',
          },
          {
            ...onSleeve,
            name: 'cap raised',
            value: styling.puffHeight,
            unit: 'mm' as const,
            low: 25,
            high: 70,
            outside: 'as chosen',
          },
        ]),
    ...(elastic === undefined
      ? []
      : [
          {
            ...onSleeve,
            name: 'arm girth less hem elastic',
            value: elastic.arm - elastic.finished,
            unit: 'mm' as const,
            low: 0,
            high: 25,
            outside: 'as chosen',
          },
        ]),
  ];
}
