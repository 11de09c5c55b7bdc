import { flatMapped } from '../../flat-mapped.ts';
import type { Issue } from '../../issue.ts';
import type { SewingCode } from '../../issue-codes/issue-codes.ts';
import type { Garment } from '../../pattern/garment.ts';
import type { Piece } from '../../pattern/piece.ts';
import type { Condition, SewingStep } from '../../pattern/sewing.ts';
import { edgeKey, type Schedule, stateKey } from './schedule.ts';

/**
 * What is left out or done twice: every seam is sewn once, every hem and faced edge turned once, every piece cut
 * and marked, every line and mark on it put to use, every notion
 * used, every raw edge finished.
 */
export function completeness(garment: Garment, schedule: Schedule): Issue[] {
  const { sewn, turned, reached, steps } = schedule;
  const used = new Set(flatMapped(steps, ({ uses }) => uses ?? []));
  return [
    ...flatMapped(garment.seams, ({ name }) =>
      once('seam', name, `the seam “${name}”`, 'sewn', sewn.get(name)),
    ),
    ...flatMapped(garment.pieces, (piece) =>
      flatMapped(piece.edges, ({ name: edge, turn }) => {
        if (turn !== 'hem' && turn !== 'finished') return [];
        const places = turned.get(edgeKey({ piece: piece.name, edge }));
        return once('edge', `${piece.name}/${edge}`, `“${edge}” of the ${piece.name}`, 'turned', places);
      }),
    ),
    ...flatMapped(garment.pieces, (piece) =>
      flatMapped(asked(piece), ({ at, is }) => {
        if (reached.has(stateKey(piece.name, is, at))) return [];
        const where = at === undefined ? piece.name : `${piece.name}/${at}`;
        const what = at === undefined ? `the ${piece.name}` : `“${at}” of the ${piece.name}`;
        return [fault('sewing-left-out', where, `No step brings ${what} to be “${is}”`)];
      }),
    ),
    ...leftOpen(steps, reached),
    ...unfinished(steps),
    ...flatMapped(garment.notions, ({ name }) =>
      used.has(name) ? [] : [fault('sewing-left-out', name, `No step uses the ${name}`)],
    ),
  ];
}

/** What is done for a time only, what must follow, and what to say when it does not. */
const forATime: Readonly<Partial<Record<Condition, readonly [then: Condition, left: string]>>> = {
  'opening left': ['casing closed', 'No step closes the opening left in'],
  tacked: ['zip set in', 'No step sets a zip into the tacked seam at'],
};

/** Openings that were left and are never closed; seams that are tacked for a zip that is never set in. */
const leftOpen = (steps: readonly SewingStep[], reached: Schedule['reached']): Issue[] =>
  flatMapped(steps, ({ brings = [] }) =>
    flatMapped(brings, ({ piece, is, at = '' }) => {
      const [then, left] = forATime[is] ?? [];
      if (!then || reached.has(stateKey(piece, then, at))) return [];
      return [fault('sewing-left-out', `${piece}/${at}`, `${left} “${at}” of the ${piece}`)];
    }),
  );

/** Steps that leave raw edges without a word on how they are kept from fraying. */
const unfinished = (steps: readonly SewingStep[]): Issue[] =>
  flatMapped(steps, ({ title, sews = [], turns = [], finish }) =>
    finish !== undefined || sews.length + turns.length === 0
      ? []
      : [fault('sewing-no-finish', title, `The step “${title}” does not say how its raw edges are finished`)],
  );

/** What a piece asks for by what is drawn on it. */
function asked(piece: Piece): readonly Asked[] {
  const all: Asked[] = [{ is: 'cut' }, { is: 'marked' }];
  const holes = piece.marks.some(({ kind }) => kind === 'buttonhole');
  for (const { kind, name } of piece.lines) {
    if (kind === 'fold') all.push({ is: 'folded', at: name });
    if (kind === 'casing') {
      all.push({ is: 'casing stitched', at: name }, { is: 'threaded', at: name });
      if (holes) all.push({ is: 'buttonholes made', at: name });
    }
    if (kind !== 'gathering') continue;
    const at = placeOfRow(name);
    if (!all.some((other) => other.at === at)) all.push({ is: 'rows stitched', at }, { is: 'gathered', at });
  }
  return all;
}

interface Asked {
  readonly is: Condition;
  readonly at?: string;
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
  if (!places)
    return [fault(`sewing-${kind}-left-out`, path, `No step of the sewing order has ${what} ${done}`)];
  const steps = places.map((place) => place + 1).join(' and ');
  return [fault(`sewing-${kind}-twice`, path, `More than one step has ${what} ${done}: steps ${steps}`)];
}

const fault = (code: SewingCode, path: string, message: string): Issue => ({
  code,
  severity: 'error',
  path,
  message: `${message}.`,
});
