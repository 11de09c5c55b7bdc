import type { Issue } from '../../issue.ts';
import type { EdgeRef, Garment, Seam } from '../../pattern/garment.ts';
import type { PieceEdge } from '../../pattern/piece.ts';
import { edgeKey, reachedBefore, type Schedule, stepNamed } from './schedule.ts';

/**
 * Seams sewn out of order: before their pieces are cut and marked, before a gathered side is gathered, before the
 * pieces along one side are joined to each other, or against the way in which their allowances were cut.
 */
export const seamFaults = (garment: Garment, schedule: Schedule): Issue[] => [
  ...garment.seams.flatMap((seam) => {
    const place = schedule.sewn.get(seam.name)?.[0];
    if (place === undefined) return [];
    return [
      ...rawPieces(seam, place, schedule),
      ...ungathered(seam, place, schedule),
      ...unjoined(garment, seam, place, schedule),
    ];
  }),
  ...crossings(garment, schedule),
];

function rawPieces(seam: Seam, place: number, schedule: Schedule): Issue[] {
  const raw = [...new Set([...seam.a, ...seam.b].map(({ piece }) => piece))].filter(
    (piece) =>
      !reachedBefore(schedule, place, piece, 'cut') || !reachedBefore(schedule, place, piece, 'marked'),
  );
  return raw.map((piece) =>
    fault('not-ready', seam, place, schedule, `sews the ${piece} before it is cut and marked`),
  );
}

/** Gathers may be drawn up in the very step that sews them, but never later. */
function ungathered(seam: Seam, place: number, schedule: Schedule): Issue[] {
  if (seam.gatherRatio === 1) return [];
  return (seam.gatherRatio > 1 ? seam.a : seam.b).flatMap(({ piece, edge }) =>
    reachedBefore(schedule, place + 1, piece, 'gathered', edge)
      ? []
      : [fault('not-ready', seam, place, schedule, `sews “${edge}” of the ${piece} before it is gathered`)],
  );
}

/** Where one side of a seam runs over several pieces, these must have been sewn to each other. */
function unjoined(garment: Garment, seam: Seam, place: number, { sewn, steps }: Schedule): Issue[] {
  const joined = (one: string, other: string): boolean =>
    garment.seams.some(
      ({ name, a, b }) =>
        (sewn.get(name)?.[0] ?? Infinity) < place &&
        ((on(a, one) && on(b, other)) || (on(a, other) && on(b, one))),
    );
  return [seam.a, seam.b].flatMap((side) =>
    side.slice(1).flatMap(({ piece }, i) => {
      const before = side[i]?.piece ?? piece;
      if (before === piece || joined(before, piece)) return [];
      const what = `sews across from the ${before} to the ${piece} before these are sewn to each other`;
      return [fault('not-ready', seam, place, { steps }, what)];
    }),
  );
}

const on = (side: readonly EdgeRef[], piece: string): boolean => side.some((ref) => ref.piece === piece);

/**
 * At every corner of a piece the edge of lower rank runs through and was cut to be sewn first, so that the other
 * can be sewn across it, and across allowances that have been pressed (common practice, no source).
 */
function crossings(garment: Garment, schedule: Schedule): Issue[] {
  const { sewn, pressed, turned } = schedule;
  const seamsOn = new Map<string, Seam[]>();
  for (const seam of garment.seams)
    for (const ref of [...seam.a, ...seam.b])
      seamsOn.set(edgeKey(ref), [...(seamsOn.get(edgeKey(ref)) ?? []), seam]);
  return garment.pieces.flatMap(({ name: piece, edges }) =>
    edges.flatMap((edge, i): Issue[] => {
      const next = edges[(i + 1) % edges.length];
      if (!next || next.rank === edge.rank) return [];
      const [first, then] = edge.rank < next.rank ? [edge, next] : [next, edge];
      const seamsOf = ({ name }: PieceEdge): readonly Seam[] =>
        seamsOn.get(edgeKey({ piece, edge: name })) ?? [];
      const crossed = Math.min(
        ...seamsOf(then).flatMap(({ name }) => sewn.get(name) ?? []),
        ...(turned.get(edgeKey({ piece, edge: then.name })) ?? []),
      );
      if (crossed === Infinity) return [];
      return seamsOf(first).flatMap((seam): Issue[] => {
        const place = sewn.get(seam.name)?.[0];
        if (place === undefined) return [];
        if (place > crossed)
          return [
            fault(
              'against-cut',
              seam,
              place,
              schedule,
              `sews “${first.name}” of the ${piece} after “${then.name}”, but its allowance is cut to be sewn first`,
            ),
          ];
        if (place === crossed || (pressed.get(seam.name)?.[0] ?? Infinity) < crossed) return [];
        return [
          fault(
            'not-pressed',
            seam,
            crossed,
            schedule,
            `crosses the seam “${seam.name}” at the ${piece} before it is pressed`,
          ),
        ];
      });
    }),
  );
}

function fault(
  code: string,
  seam: Seam,
  place: number,
  { steps }: Pick<Schedule, 'steps'>,
  what: string,
): Issue {
  const step = steps[place];
  const named = step ? stepNamed(place, step) : `step ${place + 1}`;
  return {
    code: `sewing-${code}`,
    severity: 'error',
    path: seam.name,
    message: `The sewing order cannot be followed: ${named}, ${what}.`,
  };
}
