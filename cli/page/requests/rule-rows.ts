import {
  type AxisGrade,
  decimalCell,
  type Uneven,
  type Unit,
  type WordTable,
} from '../../../drafts/index.ts';

/** The rule table of one piece along an axis, and which of its rows have an uneven step. */
export function ruleRows(
  { names, pieces, uneven }: AxisGrade & { readonly uneven: readonly Uneven[] },
  piece: string,
  units: Unit,
): { readonly rules: WordTable; readonly uneven: readonly number[] } {
  const grade = pieces.find((one) => one.piece === piece);
  const cell = (mm: number): string => decimalCell(mm, units, 1);
  const odd = new Set(
    uneven.filter((one) => one.piece === piece).map(({ what, quantity }) => `${what} ${quantity}`),
  );
  const rows = [
    ...(grade?.edges ?? []).map(({ edge, lengths, steps }) => ({
      key: `${edge} length`,
      cells: [`${edge}, length`, cell(lengths[0] ?? 0), ...steps.map(cell)],
    })),
    ...(grade?.points ?? []).flatMap(({ point, places, steps }) =>
      (['x', 'y'] as const).map((axis) => ({
        key: `${point} d${axis}`,
        cells: [
          `${point}, ${axis === 'x' ? 'across' : 'down'}`,
          cell(places[0]?.[axis] ?? 0),
          ...steps.map((step) => cell(step[axis])),
        ],
      })),
    ),
  ];
  return {
    rules: {
      titles: ['', `at ${names[0] ?? ''}`, ...names.slice(1).map((name) => `to ${name}`)],
      rows: rows.map(({ cells }) => cells),
    },
    uneven: rows.flatMap(({ key }, i) => (odd.has(key) ? [i] : [])),
  };
}
