import { flatMapped } from '../flat-mapped.ts';
import type { Issue } from '../issue.ts';
import type { IssueCode } from '../issue-codes/issue-codes.ts';
import type { Garment } from '../pattern/garment.ts';
import type { Join } from '../pattern/seam.ts';
import type { Tape } from './tape.ts';

/**
 * Everything in a garment that names a piece, edge or line which does not exist, or a name used twice. The
 * other checks leave such seams, joins and girths out, so a garment with misnamed parts is never true.
 */
export function misnamed(garment: Garment, tape: Tape): Issue[] {
  const edge = (path: string, piece: string, name: string): Issue[] => {
    if (!tape.piece(piece)) return [missing('no-such-piece', path, `the piece "${piece}"`)];
    if (!tape.edge(piece, name)) {
      return [missing('no-such-edge', path, `the edge "${name}" of the piece "${piece}"`)];
    }
    return [];
  };
  const line = (path: string, piece: string, name: string): Issue[] => {
    const found = tape.piece(piece);
    if (!found) return [missing('no-such-piece', path, `the piece "${piece}"`)];
    if (found.lines.some((drawn) => drawn.name === name)) return [];
    return [missing('no-such-line', path, `the line "${name}" of the piece "${piece}"`)];
  };

  return [
    ...twice(garment.pieces.map((piece) => piece.name)).map((name) => repeated(name, `the piece "${name}"`)),
    ...flatMapped(garment.pieces, (piece) =>
      twice(piece.edges.map((e) => e.name)).map((name) =>
        repeated(`${piece.name}/${name}`, `the edge "${name}" of the piece "${piece.name}"`),
      ),
    ),
    ...flatMapped(garment.seams, (seam) =>
      flatMapped([...seam.a, ...seam.b], (ref) => edge(seam.name, ref.piece, ref.edge)),
    ),
    ...flatMapped(garment.joins, (join) =>
      flatMapped(edgesOf(join), (e) => edge(join.name, e.piece, e.edge)),
    ),
    ...flatMapped(garment.girths, (girth) =>
      flatMapped(girth.parts, (part) =>
        part.kind === 'line'
          ? line(girth.level, part.piece, part.line)
          : edge(girth.level, part.piece, part.edge),
      ),
    ),
    ...flatMapped(garment.pieces, (piece) =>
      flatMapped(piece.notches, (notch) => edge(`${piece.name}/${notch.edge}`, piece.name, notch.edge)),
    ),
  ];
}

function edgesOf(join: Join): { piece: string; edge: string }[] {
  if (join.kind === 'along') {
    return [
      { piece: join.piece, edge: join.from },
      { piece: join.piece, edge: join.to },
    ];
  }
  const corners = join.kind === 'across' ? [join.a, join.b] : [join.a];
  return flatMapped(corners, (corner) => [
    { piece: corner.piece, edge: corner.edge },
    { piece: corner.piece, edge: corner.seam },
  ]);
}

const twice = (names: readonly string[]): string[] => [
  ...new Set(names.filter((name, i) => names.indexOf(name) !== i)),
];

const missing = (code: IssueCode, path: string, what: string): Issue => ({
  code,
  severity: 'error',
  path,
  message: `"${path}" speaks of ${what}, which is not there.`,
});

const repeated = (path: string, what: string): Issue => ({
  code: 'name-used-twice',
  severity: 'error',
  path,
  message: `There is more than one of ${what}, so seams cannot tell which is meant.`,
});
