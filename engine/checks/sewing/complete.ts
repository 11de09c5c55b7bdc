import type { Issue } from '../../issue.ts';
import type { Garment } from '../../pattern/garment.ts';
import type { InsideLine, Piece } from '../../pattern/piece.ts';
import type { Condition, SewingStep } from '../../pattern/sewing.ts';
import { edgeKey, type Schedule, stateKey } from './schedule.ts';

/**
 * What is left out or done twice: every seam is sewn once, every hem and faced edge turned once, every piece cut
 * and marked, every line and mark on it put to use, every notion used.
 */
export function completeness(garment: Garment, schedule: Schedule): Issue[] {
  const { sewn, turned, reached, steps } = schedule;
  const used = new Set(steps.flatMap(({ uses }) => uses ?? []));
  return [
    ...garment.seams.flatMap(({ name }) => once('seam', name, `the seam “${name}”`, 'sewn', sewn.get(name))),
    ...garment.pieces.flatMap((piece) =>
      piece.edges.flatMap(({ name: edge, turn }) => {
        if (turn !== 'hem' && turn !== 'finished') return [];
        const places = turned.get(edgeKey({ piece: piece.name, edge }));
        return once('edge', `${piece.name}/${edge}`, `“${edge}” of the ${piece.name}`, 'turned', places);
      }),
    ),
    ...garment.pieces.flatMap((piece) =>
      asked(piece).flatMap(({ at, is }) => {
        const done = reached.get(stateKey(piece.name, is, at));
        const where = at === undefined ? piece.name : `${piece.name}/${at}`;
        const what = at === undefined ? `the ${piece.name}` : `“${at}” of the ${piece.name}`;
        if (done?.length === 1 || (done && is !== 'cut')) return [];
        return [fault('left-out', where, `No step brings ${what} to be “${is}”`)];
      }),
    ),
    ...openCasings(steps, reached),
    ...garment.notions.flatMap(({ name }) =>
      used.has(name) ? [] : [fault('left-out', name, `No step uses the ${name}`)],
    ),
  ];
}

/** Openings that were left and are never closed. */
const openCasings = (steps: readonly SewingStep[], reached: Schedule['reached']): Issue[] =>
  steps.flatMap(({ brings = [] }) =>
    brings.flatMap(({ piece, is, at = '' }) =>
      is !== 'opening left' || reached.has(stateKey(piece, 'casing closed', at))
        ? []
        : [fault('left-out', `${piece}/${at}`, `No step closes the opening left in “${at}” of the ${piece}`)],
    ),
  );

/** What a piece asks for by what is drawn on it. */
function asked(piece: Piece): readonly { readonly is: Condition; readonly at?: string }[] {
  const lines = (kind: InsideLine['kind']): readonly InsideLine[] =>
    piece.lines.filter((line) => line.kind === kind);
  const casings = lines('casing').map(({ name }) => name);
  const gathers = new Set(lines('gathering').map(({ name }) => placeOfRow(name)));
  const holes = piece.marks.some(({ kind }) => kind === 'buttonhole') ? casings : [];
  return [
    { is: 'cut' },
    { is: 'marked' },
    ...[...gathers].flatMap((at) => [
      { is: 'rows stitched' as const, at },
      { is: 'gathered' as const, at },
    ]),
    ...casings.flatMap((at) => [
      { is: 'casing stitched' as const, at },
      { is: 'threaded' as const, at },
    ]),
    ...holes.map((at) => ({ is: 'buttonholes made' as const, at })),
    ...lines('fold').map(({ name }) => ({ is: 'folded' as const, at: name })),
  ];
}

/** The edge that a gathering row gathers: rows are called by it, such as `crown, gathering row 1`. */
export const placeOfRow = (row: string): string => row.split(', ')[0] ?? row;

function once(
  kind: 'seam' | 'edge',
  path: string,
  what: string,
  done: string,
  places: readonly number[] | undefined,
): Issue[] {
  if (places?.length === 1) return [];
  if (!places) return [fault(`${kind}-left-out`, path, `No step of the sewing order has ${what} ${done}`)];
  const steps = places.map((place) => place + 1).join(' and ');
  return [fault(`${kind}-twice`, path, `More than one step has ${what} ${done}: steps ${steps}`)];
}

const fault = (code: string, path: string, message: string): Issue => ({
  code: `sewing-${code}`,
  severity: 'error',
  path,
  message: `${message}.`,
});
