import { edgeLength } from '../geometry/edge.ts';
import { between, distance, vectorBetween } from '../geometry/point.ts';
import { WALK } from '../geometry/tolerance.ts';
import { dot, outward, scaled, type Vector } from '../geometry/vector.ts';
import type { Issue, Result } from '../issue.ts';
import type { InsideLine, Piece } from '../pattern/piece.ts';
import { fixedMm } from '../text/figure.ts';
import { cutUp, movesOf, partAt, type SlashCut } from './cut-up.ts';
import { type Altered, reassembled } from './reassemble.ts';
import { refused } from './refusal.ts';
import { asTransform, type RigidMove, shifted, stays, turnedAboutPin } from './rigid-move.ts';
import { type Slashing, slashLines } from './slash-lines.ts';

/** How a piece is slashed and spread. */
export interface Spreading extends Slashing {
  /** How far it opens in all, mm: along the guide when parallel, at the other edge when hinged. */
  readonly amount: number;
  /** The length that a blended edge has to come out at, mm, by its name. */
  readonly lengths?: ReadonlyMap<string, number>;
}

/**
 * Slashes a piece into strips and spreads them evenly, in parallel or hinged on one edge.
 *
 * In parallel the strips part along the guide, so a level guide line stays level, every width across the slash
 * lines grows by exactly the amount and no length down them changes. Hinged by angles a1, a2 ..., each of
 * 2 asin(opening / (2 slash length)), an edge at distance d from the hinges grows by d (a1 + a2 + ...), and the
 * hinge edge keeps its length as far as a smooth line can (`hinge-edge-changed` warns where not). The part that lies
 * on a fold stays, or else the part with the grainline. Cut edges are blended.
 *
 * Issues: `spread-impossible`, and those of `slashLines` and `cutUp`.
 */
export function slashAndSpread(piece: Piece, spread: Spreading): Result<Altered> {
  const slashes = slashLines(piece, spread);
  if (!slashes.ok) return slashes;
  const cut = cutUp(piece.edges, slashes.value);
  if (!cut.ok) return cut;
  const opening = spread.amount / spread.lines;
  const across = acrossCuts(cut.value.cuts, opening, spread.hinge);
  if (!across)
    return refused(
      'spread-impossible',
      spread.from,
      `The slash lines are too short to be opened by ${fixedMm(Math.abs(opening), 1)} each.`,
      { value: opening },
    );
  const fold = piece.edges.findIndex(({ turn }) => turn === 'fold');
  const onFold = cut.value.stretches.find(({ edge }) => edge === fold)?.part;
  const keep = onFold ?? partAt(cut.value, between(piece.grain.from, piece.grain.to, 0.5));
  const moves = movesOf(cut.value, across, keep);
  const { hinge } = spread;
  const hinged = piece.edges.find(({ name }) => name === hinge);
  const lengths = new Map([
    ...(hinged ? [[hinged.name, edgeLength(hinged)] as const] : []),
    ...(spread.lengths ?? []),
  ]);
  const altered = reassembled(piece, cut.value, moves, lengths);
  const before = piece.lines.filter(({ kind }) => kind === 'slash').length;
  const drawn = cut.value.cuts.map((made, i) => gapLine(made, moves, before + i + 1));
  return {
    ok: true,
    value: { ...altered, piece: { ...altered.piece, lines: [...altered.piece.lines, ...drawn] } },
    issues: hinge === undefined ? [] : hingeRemark(piece, altered.piece, hinge),
  };
}

/** A smooth line cannot be as long as one with a sharp kink between the same ends: few lines opened far cost length. */
function hingeRemark(before: Piece, after: Piece, hinge: string): readonly Issue[] {
  const [was, is] = [before, after].map((piece) => {
    const edge = piece.edges.find(({ name }) => name === hinge);
    return edge ? edgeLength(edge) : 0;
  });
  const change = (is ?? 0) - (was ?? 0);
  if (Math.abs(change) <= WALK) return [];
  const message = `Smoothed, the hinge edge “${hinge}” is ${fixedMm(Math.abs(change), 2)} ${change < 0 ? 'shorter' : 'longer'} than before; more slash lines keep it truer.`;
  const limits = { min: -WALK, max: WALK, unit: 'mm' };
  return [{ code: 'hinge-edge-changed', severity: 'warning', path: hinge, message, value: change, limits }];
}

/** What each cut does to the part beyond it; nothing when a slash line is too short to open so far. */
function acrossCuts(
  cuts: readonly SlashCut[],
  opening: number,
  hinge: string | undefined,
): ((cut: SlashCut) => RigidMove) | undefined {
  if (hinge === undefined) {
    const guide = guideOf(cuts);
    return ({ p, q }) => {
      const side = Math.sign(dot(outward(vectorBetween(p, q)), guide));
      return shifted(scaled(guide, side * opening));
    };
  }
  if (cuts.some(({ p, q }) => Math.abs(opening) >= distance(p, q))) return undefined;
  return ({ p, q, slash, first }) => {
    const angle = 2 * Math.asin(opening / (2 * distance(p, q)));
    const pin = slash.from.edge === hinge ? slash.from : slash.to;
    // The part beyond lies on the left of the heading from p to q, and opens to the left.
    return pin === first ? turnedAboutPin(p, -angle) : turnedAboutPin(q, angle);
  };
}

/** Strips that stand upright part sideways, strips that lie part upwards and down. */
function guideOf(cuts: readonly SlashCut[]): Vector {
  const [across, down] = cuts.reduce(
    ([x, y], { p, q }) => [x + Math.abs(q.x - p.x), y + Math.abs(q.y - p.y)],
    [0, 0],
  );
  return down >= across ? { x: 1, y: 0 } : { x: 0, y: 1 };
}

/** Where a slash was: the middle of the gap it left; lines of an earlier spread keep their numbers. */
function gapLine({ p, q, parent, child }: SlashCut, moves: readonly RigidMove[], number: number): InsideLine {
  const [one, other] = [asTransform(moves[parent] ?? stays), asTransform(moves[child] ?? stays)];
  return {
    name: `slash line ${number}`,
    kind: 'slash',
    curves: [{ kind: 'line', from: between(one(p), other(p), 0.5), to: between(one(q), other(q), 0.5) }],
  };
}
