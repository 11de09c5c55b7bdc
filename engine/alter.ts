import { cupDifference } from './body/cup.ts';
import { edgeLength } from './geometry/edge.ts';
import { isSimple } from './geometry/inside.ts';
import { outlineBounds } from './geometry/outline.ts';
import type { Issue, Result } from './issue.ts';
import type { Piece } from './pattern/piece.ts';
import { addFullness } from './shaping/add-fullness.ts';
import type { Alteration, LengthOrShare, PlaceOnEdge } from './shaping/alteration.ts';
import type { OutlinePlace } from './shaping/cut-up.ts';
import { dartsOf, drawnShort, SHORT } from './shaping/darts.ts';
import { withGrainInside } from './shaping/grain.ts';
import { lengthen } from './shaping/lengthen.ts';
import { withDartsMarked } from './shaping/mark-darts.ts';
import { mirror } from './shaping/mirror.ts';
import { moveNotch } from './shaping/move-notch.ts';
import { pivotDart } from './shaping/pivot-dart.ts';
import type { Altered } from './shaping/reassemble.ts';
import { refused } from './shaping/refusal.ts';
import { slashAndSpread } from './shaping/slash-and-spread.ts';
import type { Slashing } from './shaping/slash-lines.ts';
import { inMm } from './text/figure.ts';

/** A piece after its alterations: how far blending took its edges at the most (mm), and what was done, in words. */
export interface AlteredPiece extends Altered {
  readonly done: readonly string[];
}

/**
 * Alters a piece, one alteration after the other in the order given: each finds the piece, its edges and their names as
 * the one before left them. After each its darts are marked and its grainline lies inside.
 *
 * Issues: those of the manipulations in `engine/shaping`; `cups-same`, `outline-crosses`. Where there are several
 * alterations, the first that cannot be done is told by its number.
 */
export function alter(piece: Piece, alterations: readonly Alteration[]): Result<AlteredPiece> {
  let altered: AlteredPiece = { piece: settled(piece), deviation: 0, done: [] };
  const issues: Issue[] = [];
  for (const [i, alteration] of alterations.entries()) {
    const next = altering(altered.piece, alteration);
    const counted = (list: readonly Issue[]): readonly Issue[] =>
      alterations.length === 1
        ? list
        : list.map((issue) => ({ ...issue, message: `Alteration ${i + 1}: ${issue.message}` }));
    if (!next.ok) return { ok: false, issues: counted(next.issues) };
    issues.push(...counted(next.issues));
    const made = settled(next.value.piece);
    if (!isSimple(made.edges))
      return {
        ok: false,
        issues: counted(
          refused(
            'outline-crosses',
            piece.name,
            'Altered so, the outline would cross itself. Alter it by less.',
          ).issues,
        ),
      };
    altered = {
      piece: made,
      deviation: Math.max(altered.deviation, next.value.deviation),
      done: [...altered.done, next.value.said],
    };
  }
  return { ok: true, value: altered, issues };
}

const settled = (piece: Piece): Piece => withDartsMarked(withGrainInside(piece));

/** A piece after one alteration, and what was done in words. */
interface Done extends Altered {
  readonly said: string;
}

function altering(piece: Piece, alteration: Alteration): Result<Done> {
  switch (alteration.kind) {
    case 'spread':
      return spreadBy(piece, alteration.slashing, alteration.amount);
    case 'another cup':
      return spreadToCup(piece, alteration);
    case 'gather':
      return gathered(piece, alteration);
    case 'pivot dart':
      return pivoted(piece, alteration);
    case 'lengthen':
      return lengthened(piece, alteration);
    case 'move notch':
      return plain(
        moveNotch(piece, alteration.notch, placeOn(piece, alteration.to)),
        `notch ${alteration.notch} moved`,
      );
    case 'mirror':
      return plain(mirror(piece, alteration.edge), `mirrored in ${alteration.edge}`);
  }
}

type Of<Kind extends Alteration['kind']> = Extract<Alteration, { readonly kind: Kind }>;

function spreadBy(piece: Piece, slashing: Slashing, amount: number): Result<Done> {
  const how = slashing.hinge === undefined ? 'in parallel' : `hinged on ${slashing.hinge}`;
  return said(
    slashAndSpread(piece, { ...slashing, amount }),
    `spread ${inMm(amount)} between ${slashing.lines} slash lines${where(slashing)}, ${how}`,
  );
}

const where = ({ between }: Slashing): string =>
  between ? ` from notch ${between[0]} to notch ${between[1]}` : '';

/**
 * What a front is spread by for another cup: half the difference of the two cups' girths on half a front, all of it
 * on a whole one (textbook convention, from memory), each cup taken at its middle (EN 13402).
 */
function spreadToCup(piece: Piece, { slashing, from, to, whole }: Of<'another cup'>): Result<Done> {
  const difference = (cupDifference(to) ?? 0) - (cupDifference(from) ?? 0);
  if (difference === 0)
    return refused('cups-same', 'cup', 'Both cups are the same; there is nothing to spread.');
  return spreadBy(piece, slashing, difference / (whole ? 1 : 2));
}

function gathered(piece: Piece, { slashing, ratio, edge: wanted, seam }: Of<'gather'>): Result<Done> {
  const edge = wanted ?? (slashing.from === slashing.hinge ? slashing.to : slashing.from);
  const own = piece.edges.find(({ name }) => name === edge);
  const length = ratio * (seam ?? (own ? edgeLength(own) : 0));
  const full = addFullness(piece, { ...slashing, edge, length });
  if (!full.ok) return full;
  return said(
    full,
    `spread ${inMm(full.value.amount)} between ${slashing.lines} slash lines${where(slashing)} to gather ${edge} ${ratio} to 1`,
  );
}

/** The dart turned; where some of it stays, the points of both darts are drawn short of the pin they turned about. */
function pivoted(piece: Piece, { to, dart, share, short }: Of<'pivot dart'>): Result<Done> {
  const how = { to: placeOn(piece, to), share, ...(dart === undefined ? {} : { dart }) };
  const turned = pivotDart(piece, how);
  if (!turned.ok) return turned;
  const back = short ?? (share < 1 ? SHORT : 0);
  const pins = dartsOf(piece.edges).filter(
    ({ legs }) => dart === undefined || legs.some(({ name }) => name === dart),
  );
  let { edges } = turned.value.piece;
  for (const { apex } of pins) edges = back > 0 ? drawnShort(edges, apex, back) : edges;
  const points = back > 0 ? `, points drawn ${inMm(back)} short` : '';
  const altered = { ...turned.value, piece: { ...turned.value.piece, edges } };
  return said({ ...turned, value: altered }, `dart pivoted to ${to.edge}${points}`);
}

function lengthened(piece: Piece, { amount, at }: Of<'lengthen'>): Result<Done> {
  const { top, bottom } = outlineBounds(piece.edges);
  const words = `${amount > 0 ? 'lengthened' : 'shortened'} by ${inMm(Math.abs(amount))}`;
  return said(lengthen(piece, { amount, at: top + lengthOf(at, bottom - top) }), words);
}

function placeOn(piece: Piece, { edge: name, at }: PlaceOnEdge): OutlinePlace {
  const edge = piece.edges.find((candidate) => candidate.name === name);
  return { edge: name, at: edge ? lengthOf(at, edgeLength(edge)) : 0 };
}

const lengthOf = (measure: LengthOrShare, whole: number): number =>
  'mm' in measure ? measure.mm : measure.share * whole;

const said = (altered: Result<Altered>, words: string): Result<Done> =>
  altered.ok ? { ...altered, value: { ...altered.value, said: words } } : altered;

const plain = (altered: Result<Piece>, words: string): Result<Done> =>
  altered.ok ? { ...altered, value: { piece: altered.value, deviation: 0, said: words } } : altered;
