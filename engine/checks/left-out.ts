import { type Side, sides } from '../body/side.ts';
import type { Issue } from '../issue.ts';
import type { Garment } from '../pattern/garment.ts';
import type { Piece } from '../pattern/piece.ts';
import { type EdgeRef, piecesOfJoin } from '../pattern/seam.ts';
import { counted } from '../text/counted.ts';

/** Something that a garment has by name, as a whole or on one of its pieces. */
interface Claim {
  readonly kind:
    | 'shape'
    | 'seam'
    | 'join'
    | 'girth'
    | 'notion'
    | 'piece'
    | 'notch'
    | 'line'
    | 'mark'
    | 'cloth';
  readonly name: string;
  /** Only with what is told apart by its piece. */
  readonly piece?: string;
  /** The pieces whose edges it stands on by their names, and the name of a notch itself. */
  readonly on: readonly string[];
  /** The two sides of a seam. */
  readonly sewn?: readonly (readonly EdgeRef[])[];
}

/** A garment as one that was read from a file must be, or why there is none. */
export type Like =
  | { readonly kind: 'drafted'; readonly garment: Garment }
  /** For the very measurements and choices, so that all claims must be the same. */
  | { readonly kind: 'drafted again'; readonly garment: Garment }
  /** It says measurements and choices with which no such garment can be drafted. */
  | { readonly kind: 'cannot be' }
  /** The garment does not say with which choices it was made, or none that its draft has. */
  | { readonly kind: 'no choices' }
  /** Its draft is not known, or draws for none of the bodies that were tried. */
  | { readonly kind: 'unknown' };

/** Whoever drafts a garment like another, by its name and choices. */
export type LikeOf = (garment: Garment) => Like;

/** Everything that a garment has by name and a sheet says of it; a figure that is checked as it is drafted is on no sheet. */
const claimsOf = ({ shapes, seams, joins, girths, notions, pieces }: Garment): readonly Claim[] => [
  ...shapes.filter(({ kind }) => kind !== 'drafted').map(({ name }) => whole('shape', name)),
  ...seams.map(({ name, a, b }) => ({ ...whole('seam', name), sewn: [a, b] })),
  ...joins.map((join) => ({ ...whole('join', join.name), on: piecesOfJoin(join) })),
  ...girths.map(({ level }) => whole('girth', level)),
  ...notions.map(({ name }) => whole('notion', name)),
  ...pieces.flatMap(({ name: piece, notches, lines, marks, cut }): readonly Claim[] => [
    whole('piece', piece),
    ...notches.map(
      ({ name, edge }) => ({ kind: 'notch', name: `${name}, ${edge}`, piece, on: [piece, name] }) as const,
    ),
    ...lines
      .filter(({ kind }) => kind !== 'gathering')
      .map(({ name }) => ({ kind: 'line', name, piece, on: [] }) as const),
    ...marks.map(({ name }) => ({ kind: 'mark', name, piece, on: [] }) as const),
    ...cut.map(({ cloth }) => ({ kind: 'cloth', name: cloth, piece, on: [] }) as const),
  ]),
];

const whole = (kind: Claim['kind'], name: string): Claim => ({ kind, name, on: [] });

/**
 * What a garment read from a file leaves out, though one like it has it. On which piece a notch of the armhole lies is the body's
 * doing, and so is which edges it parts: of notches and joins on a piece that has other edges, of those notches elsewhere,
 * and of seams between edges that are not there, nothing is asked; nor of rows of gathering, which only what is full has.
 */
export function leftOut(garment: Garment, like: Like): readonly Issue[] {
  const { name } = garment;
  if (like.kind === 'cannot be')
    return [
      {
        code: 'claim-otherwise',
        severity: 'error',
        path: name,
        message: `No ${name} can be drafted for the measurements and choices that the sheet says. It was changed, or another version or draft wrote it. Write it again.`,
      },
    ];
  if (like.kind === 'unknown') {
    const message = `Which shapes and seams a “${name}” must have is not known here. Name its draft with --draft.`;
    return [{ code: 'shapes-unknown', severity: 'note', path: name, message }];
  }
  const said = (code: 'shape-unclaimed' | 'claim-left-out', message: string): Issue => ({
    code,
    severity: 'error',
    path: name,
    message,
  });
  if (like.kind === 'no choices')
    return [
      said(
        'shape-unclaimed',
        `The sheet does not say with which choices the ${name} was drafted, so whether it claims every shape cannot be told. Write it again.`,
      ),
    ];
  const lacking = lackingIn(garment, like.garment);
  const shapes = lacking.filter(({ kind }) => kind === 'shape');
  const others = lacking.filter(({ kind }) => kind !== 'shape');
  return [
    ...shapes
      .slice(0, 1)
      .map((shape) =>
        said(
          'shape-unclaimed',
          `The sheet is not held to “${shape.name}”${andMore(shapes, 'shape', 'nor to')}, as every such ${name} is. Write it again.`,
        ),
      ),
    ...others
      .slice(0, 1)
      .map((other) =>
        said(
          'claim-left-out',
          `The sheet leaves out ${wordsOf(other)}${andMore(others, 'thing', 'and')}, which every such ${name} has. Write it again.`,
        ),
      ),
  ];
}

/** What a garment like it has, and it has not; but for what is the body's doing. */
function lackingIn(garment: Garment, like: Garment): readonly Claim[] {
  const has = new Set(claimsOf(garment).map(keyOf));
  const edges = new Map(like.pieces.map((piece) => [piece.name, edgesOf(piece)]));
  const parted = garment.pieces.filter((piece) => edgesOf(piece) !== edges.get(pairOf(piece.name)));
  const asDrawn = new Set([
    ...parted.map(({ name }) => pairOf(name)),
    ...parted.flatMap(({ notches }) => notches.map(({ name }) => name)),
  ]);
  const isThere = ({ piece, edge }: EdgeRef): boolean =>
    garment.pieces.some(
      ({ name, edges }) => pairOf(name) === piece && edges.some((one) => one.name === edge),
    );
  return claimsOf(like).filter(
    (claim) =>
      !has.has(keyOf(claim)) &&
      !sides.every((side) => has.has(keyOf(onSide(side, claim)))) &&
      !claim.on.some((name) => asDrawn.has(name)) &&
      (claim.sewn ?? []).every((side) => side.some(isThere)),
  );
}

const keyOf = ({ kind, name, piece = '' }: Claim): string => JSON.stringify([kind, name, piece]);

/** The edges of a piece by name, in whichever order they follow each other. */
const edgesOf = ({ edges }: Piece): string => JSON.stringify(edges.map(({ name }) => name).toSorted());

/** What a piece of one side is called on a garment whose sides are alike. */
const pairOf = (piece: string): string =>
  sides.reduce((name, side) => (name.startsWith(`${side} `) ? name.slice(side.length + 1) : name), piece);

/** The same of one side, where left and right differ: what is on a piece is there under its old name. */
const onSide = (side: Side, claim: Claim): Claim =>
  claim.piece === undefined
    ? { ...claim, name: `${side} ${claim.name}` }
    : { ...claim, piece: `${side} ${claim.piece}` };

const andMore = (all: readonly Claim[], what: string, before: string): string =>
  all.length < 2 ? '' : `, ${before} ${counted(all.length - 1, `other ${what}`)}`;

const wordsOf = ({ kind, name, piece }: Claim): string =>
  `the ${kind} “${name}”${piece === undefined ? '' : ` of ${piece}`}`;
