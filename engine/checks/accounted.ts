import { flatMapped } from '../flat-mapped.ts';
import type { Edge } from '../geometry/curve.ts';
import { edgeEnd, edgeStart } from '../geometry/edge.ts';
import { vectorBetween } from '../geometry/point.ts';
import { RELATION } from '../geometry/tolerance.ts';
import { cross, unit, type Vector } from '../geometry/vector.ts';
import type { Issue } from '../issue.ts';
import type { Garment, Wearer } from '../pattern/garment.ts';
import type { CutCount, Piece } from '../pattern/piece.ts';
import type { Girth, GirthPart } from '../pattern/seam.ts';
import { inMm } from '../text/figure.ts';
import { unjoined } from './run-on.ts';
import type { Tape } from './tape.ts';

/**
 * Whatever a garment leaves out of account, so that “all true” cannot mean that little was looked at: an edge that is
 * sewn to nothing and not left open by name, a level line that its girth does not count, a girth that counts some pieces
 * oftener than they are cut or is not the wearer's, a line that goes on where nobody says how, an edge that may turn as it
 * likes, a piece that cannot be cut as it says, and numbers that do not follow each other.
 */
export function unaccounted(garment: Garment, tape: Tape): Issue[] {
  return [
    ...unsewn(garment),
    ...uncounted(garment),
    ...girthFaults(garment, tape),
    ...unjoined(garment, tape),
    ...flatMapped(garment.pieces, cutFaults),
    ...flatMapped(garment.pieces, overclaimed),
    ...misnumbered(garment.pieces),
  ];
}

/** Of these, what hangs on her measures: girths that count their pieces otherwise than they are cut, or are not the wearer's. */
export const girthFaults = ({ girths, wearer }: Garment, tape: Tape): Issue[] => [
  ...flatMapped(girths, (girth) => miscounted(girth, tape)),
  ...flatMapped(girths, (girth) => ofAnother(girth, wearer)),
];

/** The codes of what is left out of account. */
export const accountCodes = [
  'edge-unsewn',
  'level-uncounted',
  'girth-miscounted',
  'girth-of-another',
  'line-unjoined',
  'turns-overclaimed',
  'cut-cannot-be',
  'piece-misnumbered',
] as const;

type AccountCode = (typeof accountCodes)[number];

const keyOf = (piece: string, own: string): string => `${piece}\n${own}`;

function unsewn({ pieces, seams }: Garment): Issue[] {
  const sewn = new Set(
    flatMapped(seams, ({ a, b }) => [...a, ...b]).map(({ piece, edge }) => keyOf(piece, edge)),
  );
  return flatMapped(pieces, ({ name: piece, edges }) =>
    flatMapped(edges, ({ name, turn, allowance, open }) => {
      if (turn !== 'seam' || allowance === 0 || open || sewn.has(keyOf(piece, name))) return [];
      const message = `"${name}" of ${piece} has an allowance, but no seam sews it, and it is no hem, finished edge or edge left open.`;
      return [fault('edge-unsewn', `${piece}/${name}`, message)];
    }),
  );
}

/** Level lines that are part of a girth by their own account, and are counted in none. */
function uncounted({ pieces, girths }: Garment): Issue[] {
  const counted = new Set(
    flatMapped(girths, ({ parts }) =>
      flatMapped(parts, (part) => (part.kind === 'line' ? keyOf(part.piece, part.line) : [])),
    ),
  );
  return flatMapped(pieces, ({ name: piece, lines }) =>
    flatMapped(lines, ({ name, girth }) => {
      if (girth === undefined || counted.has(keyOf(piece, name))) return [];
      const message = `The ${name} of ${piece} belongs to the girth "${girth}", and is counted in none.`;
      return [fault('level-uncounted', `${piece}/${name}`, message)];
    }),
  );
}

/** Round the body each part counts as often as its piece is cut; round one of two arms once, of a piece or of a pair. */
function miscounted(girth: Girth, tape: Tape): Issue[] {
  const isCounted = (part: GirthPart): boolean => {
    const copies = copiesOf(part, tape);
    return copies === undefined || (girth.limb ? part.times === 1 && copies <= 2 : part.times === copies);
  };
  if (girth.parts.length > 0 && girth.parts.every(isCounted)) return [];
  const message =
    girth.parts.length === 0
      ? `The girth "${girth.level}" counts no piece at all.`
      : `The girth "${girth.level}" does not count each of its pieces as often as it is cut.`;
  return [fault('girth-miscounted', girth.level, message)];
}

/** A girth of the body that the sheet says of her by name, with another figure. */
function ofAnother({ level, body }: Girth, wearer: Wearer | undefined): Issue[] {
  const [around = ''] = level.split(',');
  const own = wearer && herGirths(wearer)[around];
  if (own === undefined || Math.abs(own - body) <= RELATION) return [];
  const message = `The girth "${level}" is for a body of ${inMm(body)}, and the wearer measures ${inMm(own)} there.`;
  return [{ ...fault('girth-of-another', level, message), value: body }];
}

const herGirths = ({ bust, underBust, waist, hip }: Wearer): Readonly<Record<string, number>> => ({
  bust,
  'under-bust': underBust,
  waist,
  hip,
});

/** Lines between two corners turn between hollow and round a few times; who may turn oftener is held to nothing. */
const MOST_TURNS = 6;

const overclaimed = ({ name, edges }: Piece): Issue[] =>
  edges
    .filter(({ inflections }) => !(inflections <= MOST_TURNS))
    .map((edge) => ({
      ...fault(
        'turns-overclaimed',
        `${name}/${edge.name}`,
        `The edge "${edge.name}" of ${name} may change ${edge.inflections} times between hollow and round, which no edge needs.`,
      ),
      value: edge.inflections,
      limits: { max: MOST_TURNS, unit: 'count' },
    }));

/**
 * How often a line or an edge is there once a piece is cut: twice for each copy whose other half lies across a fold.
 * Undefined where it is not there at all.
 */
function copiesOf(part: GirthPart, tape: Tape): number | undefined {
  const piece = tape.piece(part.piece);
  const line =
    part.kind === 'edge'
      ? tape.edge(part.piece, part.edge)
      : piece?.lines.find(({ name }) => name === part.line);
  const cut = piece?.cut[0];
  if (!piece || !cut || !line || line.curves.length === 0) return undefined;
  const along = chordOf(line);
  const mirrored = piece.edges.some(
    (edge) =>
      edge.turn === 'fold' && edge.curves.length > 0 && Math.abs(cross(along, chordOf(edge))) > ACROSS,
  );
  return cut.count * (cut.onFold && mirrored ? 2 : 1);
}

/** A line that runs at more than the sine of 45 degrees to a fold goes on beyond it. */
const ACROSS = Math.SQRT1_2;

const chordOf = (edge: Edge): Vector => unit(vectorBetween(edgeStart(edge), edgeEnd(edge)));

function cutFaults({ name, cut, edges, lines }: Piece): Issue[] {
  const folds = [
    ...edges.filter(({ turn }) => turn === 'fold'),
    ...lines.filter(({ kind }) => kind === 'fold'),
  ];
  const wrong = (what: string): Issue =>
    fault('cut-cannot-be', name, `${name} cannot be cut as it says: ${what}.`);
  return flatMapped(cut, ({ count, pair, onFold, cloth }: CutCount): Issue[] => [
    ...(Number.isInteger(count) && count > 0 ? [] : [wrong(`${count} of the ${cloth}`)]),
    ...(pair && count % 2 !== 0 ? [wrong(`${count} of the ${cloth}, in pairs`)] : []),
    ...(onFold && folds.length === 0 ? [wrong(`on a fold of the ${cloth}, and it has no fold`)] : []),
    ...(!onFold && edges.some(({ turn }) => turn === 'fold')
      ? [wrong(`flat of the ${cloth}, and one of its edges lies on a fold`)]
      : []),
  ]);
}

/** Pieces are numbered from 1 in their order. */
const misnumbered = (pieces: readonly Piece[]): Issue[] =>
  flatMapped(pieces, ({ name, number }, i) =>
    number === i + 1
      ? []
      : [fault('piece-misnumbered', name, `${name} has the number ${number} and should have ${i + 1}.`)],
  );

const fault = (code: AccountCode, path: string, message: string): Issue => ({
  code,
  severity: 'error',
  path,
  message,
});
