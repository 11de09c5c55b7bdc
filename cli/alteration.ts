import { cupDifference } from '../engine/body/cup.ts';
import { edgeLength } from '../engine/geometry/edge.ts';
import { outlineBounds } from '../engine/geometry/outline.ts';
import type { Result } from '../engine/issue.ts';
import type { Piece } from '../engine/pattern/piece.ts';
import { addFullness } from '../engine/shaping/add-fullness.ts';
import type { OutlinePlace } from '../engine/shaping/cut-up.ts';
import { dartsOf, drawnShort, SHORT } from '../engine/shaping/darts.ts';
import { lengthen } from '../engine/shaping/lengthen.ts';
import { mirror } from '../engine/shaping/mirror.ts';
import { moveNotch } from '../engine/shaping/move-notch.ts';
import { pivotDart } from '../engine/shaping/pivot-dart.ts';
import type { Altered } from '../engine/shaping/reassemble.ts';
import { slashAndSpread } from '../engine/shaping/slash-and-spread.ts';
import type { Slashing } from '../engine/shaping/slash-lines.ts';
import type { AlterOptions, Measure, Place } from './alter-options.ts';
import { unusable } from './unusable.ts';

/** A piece after its alteration, and what was done in words. */
export interface Done extends Altered {
  readonly said: string;
}

/**
 * Does to a piece the one thing that was asked for; the piece as it is when nothing was. `partner` is the length
 * of the edge it will be sewn to, mm.
 */
export function alteration(piece: Piece, options: AlterOptions, partner: number | undefined): Result<Done> {
  const { spread, gather, cupFrom, cupTo, pivotDart: pivot, moveNotch: notch } = options;
  if (spread !== undefined) return spreadBy(piece, options, spread);
  if (cupFrom !== undefined || cupTo !== undefined) return spreadBy(piece, options, cupSpread(options));
  if (gather !== undefined) return gathered(piece, options, gather, partner);
  if (pivot) return pivoted(piece, options, pivot);
  if (options.lengthen !== undefined || options.shorten !== undefined) return lengthened(piece, options);
  if (notch) return plain(moveNotch(piece, notch[0], placeOn(piece, notch[1])), `notch ${notch[0]} moved`);
  if (options.mirror !== undefined)
    return plain(mirror(piece, options.mirror), `mirrored in ${options.mirror}`);
  return { ok: true, value: { piece, deviation: 0, said: 'nothing altered' }, issues: [] };
}

function spreadBy(piece: Piece, options: AlterOptions, amount: number): Result<Done> {
  const { hinge, lines } = options;
  const how = hinge === undefined ? 'in parallel' : `hinged on ${hinge}`;
  const spread = slashAndSpread(piece, { ...slashing(options), amount });
  return said(spread, `spread ${mm(amount)} between ${lines} slash lines${where(options)}, ${how}`);
}

/** Where the slash lines run. */
function slashing(options: AlterOptions): Slashing {
  const [from, to] = slashed(options);
  const { hinge, lines, between } = options;
  return {
    from,
    to,
    lines,
    ...(hinge === undefined ? {} : { hinge }),
    ...(between === undefined ? {} : { between }),
  };
}

const where = ({ between }: AlterOptions): string =>
  between ? ` from notch ${between[0]} to notch ${between[1]}` : '';

/** The dart turned; where some of it stays, the points of both darts are drawn short of the pin they turned about. */
function pivoted(piece: Piece, { dart, share, short }: AlterOptions, to: Place): Result<Done> {
  const how = { to: placeOn(piece, to), share, ...(dart === undefined ? {} : { dart }) };
  const turned = pivotDart(piece, how);
  if (!turned.ok) return turned;
  const back = short ?? (share < 1 ? SHORT : 0);
  const pins = dartsOf(piece.edges).filter(
    ({ legs }) => dart === undefined || legs.some(({ name }) => name === dart),
  );
  let { edges } = turned.value.piece;
  for (const { apex } of pins) edges = back > 0 ? drawnShort(edges, apex, back) : edges;
  const points = back > 0 ? `, points drawn ${mm(back)} short` : '';
  const altered = { ...turned.value, piece: { ...turned.value.piece, edges } };
  return said({ ...turned, value: altered }, `dart pivoted to ${to.edge}${points}`);
}

function gathered(
  piece: Piece,
  options: AlterOptions,
  ratio: number,
  partner: number | undefined,
): Result<Done> {
  const slashes = slashing(options);
  const edge = options.seam ?? (slashes.from === slashes.hinge ? slashes.to : slashes.from);
  const own = piece.edges.find(({ name }) => name === edge);
  const length = ratio * (partner ?? (own ? edgeLength(own) : 0));
  const full = addFullness(piece, { ...slashes, edge, length });
  if (!full.ok) return full;
  return said(
    full,
    `spread ${mm(full.value.amount)} between ${options.lines} slash lines${where(options)} to gather ${edge} ${ratio} to 1`,
  );
}

function lengthened(piece: Piece, { lengthen: more, shorten: less, at }: AlterOptions): Result<Done> {
  if (!at)
    throw unusable('level-missing', '--at', 'Say where to cut across, below the top: --at 120 or --at 40%.');
  const { top, bottom } = outlineBounds(piece.edges);
  const amount = more ?? -(less ?? 0);
  const words = `${amount > 0 ? 'lengthened' : 'shortened'} by ${mm(Math.abs(amount))}`;
  return said(lengthen(piece, { amount, at: top + inMm(at, bottom - top) }), words);
}

/**
 * What a front is spread by for another cup: half the difference of the two cups' girths on half a front, all of it
 * on a whole one (textbook convention, from memory), each cup taken at its middle (EN 13402).
 */
function cupSpread({ cupFrom, cupTo, whole }: AlterOptions): number {
  const [from, to] = [cupFrom, cupTo].map((letter) =>
    letter === undefined ? undefined : cupDifference(letter),
  );
  if (from === undefined || to === undefined)
    throw unusable('cup-missing', '--cup-to', 'Say both cups: --cup-from B --cup-to D.');
  if (from === to)
    throw unusable('cups-same', '--cup-to', 'Both cups are the same; there is nothing to spread.');
  return (to - from) / (whole ? 1 : 2);
}

function slashed({ along }: AlterOptions): readonly [string, string] {
  if (!along)
    throw unusable(
      'along-missing',
      '--along',
      'Say which two edges the slash lines run between: --along top..hem.',
    );
  return along;
}

function placeOn(piece: Piece, { edge: name, at }: Place): OutlinePlace {
  const edge = piece.edges.find((candidate) => candidate.name === name);
  return { edge: name, at: edge ? inMm(at, edgeLength(edge)) : 0 };
}

const inMm = (measure: Measure, whole: number): number =>
  'mm' in measure ? measure.mm : measure.share * whole;

const mm = (value: number): string => `${Number(value.toFixed(1))} mm`;

const said = (altered: Result<Altered>, words: string): Result<Done> =>
  altered.ok ? { ...altered, value: { ...altered.value, said: words } } : altered;

const plain = (altered: Result<Piece>, words: string): Result<Done> =>
  altered.ok ? { ...altered, value: { piece: altered.value, deviation: 0, said: words } } : altered;
