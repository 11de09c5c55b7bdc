import { flatMapped } from '../../flat-mapped.ts';
import type { Issue } from '../../issue.ts';
import type { SewingCode } from '../../issue-codes/issue-codes.ts';
import type { Garment } from '../../pattern/garment.ts';
import type { EdgeRef, Seam } from '../../pattern/seam.ts';
import { reachedBefore, type Schedule, stepNamed } from './schedule.ts';

/**
 * Seams sewn out of order: before their pieces are marked, before a gathered side is gathered, before the pieces
 * along one side are joined to each other, or felled onto a seam that is not sewn yet.
 */
export function seamFaults(garment: Garment, schedule: Schedule): Issue[] {
  return flatMapped(garment.seams, (seam) => {
    const place = schedule.sewn.get(seam.name)?.[0];
    if (place === undefined) return [];
    return [
      ...rawPieces(seam, place, schedule),
      ...ungathered(seam, place, schedule),
      ...unjoined(garment, seam, place, schedule),
      ...laidOnNothing(garment, seam, place, schedule),
    ];
  });
}

function rawPieces(seam: Seam, place: number, schedule: Schedule): Issue[] {
  const pieces = new Set([...seam.a, ...seam.b].map(({ piece }) => piece));
  return flatMapped([...pieces], (piece) =>
    reachedBefore(schedule, place, piece, 'marked')
      ? []
      : [
          seamFault(
            'sewing-too-early',
            seam,
            place,
            schedule,
            `sews the ${piece} before it is cut and marked`,
          ),
        ],
  );
}

/** Gathers may be drawn up in the very step that sews them, but never later. */
function ungathered(seam: Seam, place: number, schedule: Schedule): Issue[] {
  if (seam.gatherRatio === 1) return [];
  return flatMapped(seam.gatherRatio > 1 ? seam.a : seam.b, ({ piece, edge }) =>
    reachedBefore(schedule, place + 1, piece, 'gathered', edge)
      ? []
      : [
          seamFault(
            'sewing-too-early',
            seam,
            place,
            schedule,
            `sews “${edge}” of the ${piece} before it is gathered`,
          ),
        ],
  );
}

/** Where one side of a seam runs over several pieces, these must have been sewn to each other. */
function unjoined(garment: Garment, seam: Seam, place: number, { sewn, steps }: Schedule): Issue[] {
  const joined = (one: string, other: string): boolean =>
    garment.seams.some(
      ({ name, a, b }) =>
        ((on(a, one) && on(b, other)) || (on(a, other) && on(b, one))) &&
        (sewn.get(name)?.[0] ?? Infinity) < place,
    );
  return flatMapped([seam.a, seam.b], (side) =>
    flatMapped(side.slice(1), ({ piece }, i) => {
      const before = side[i]?.piece ?? piece;
      if (before === piece || joined(before, piece)) return [];
      const what = `sews across from the ${before} to the ${piece} before these are sewn to each other`;
      return [seamFault('sewing-too-early', seam, place, { steps }, what)];
    }),
  );
}

/** What is felled covers seams: these must have been sewn. */
function laidOnNothing(garment: Garment, seam: Seam, place: number, schedule: Schedule): Issue[] {
  if (!seam.felled) return [];
  const covered = ({ felled, a, b }: Seam): boolean =>
    !felled && (seam.b.some((under) => names(a, under)) || seam.b.some((under) => names(b, under)));
  return flatMapped(garment.seams.filter(covered), ({ name }) => {
    if ((schedule.sewn.get(name)?.[0] ?? Infinity) < place) return [];
    return [
      seamFault('sewing-too-early', seam, place, schedule, `fells over the seam “${name}” before it is sewn`),
    ];
  });
}

const names = (side: readonly EdgeRef[], { piece, edge }: EdgeRef): boolean =>
  side.some((ref) => ref.edge === edge && ref.piece === piece);

const on = (side: readonly EdgeRef[], piece: string): boolean => side.some((ref) => ref.piece === piece);

/** Something wrong with the step at `place` on account of a seam. */
export function seamFault(
  code: SewingCode,
  seam: Seam,
  place: number,
  { steps }: Pick<Schedule, 'steps'>,
  what: string,
): Issue {
  const step = steps[place];
  const named = step ? stepNamed(place, step) : `step ${place + 1}`;
  return {
    code,
    severity: 'error',
    path: seam.name,
    message: `The sewing order cannot be followed: ${named}, ${what}.`,
  };
}
