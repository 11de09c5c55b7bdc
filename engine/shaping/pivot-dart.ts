import type { Line } from '../geometry/curve.ts';
import {
  edgeEnd,
  edgeLength,
  edgeStart,
  endDirection,
  lengthUpTo,
  pointAlong,
  splitEdgeAt,
  startDirection,
} from '../geometry/edge.ts';
import { inflectionCount } from '../geometry/inflections.ts';
import { nearestOnEdge } from '../geometry/nearest.ts';
import { between, type Point } from '../geometry/point.ts';
import { cross, dot } from '../geometry/vector.ts';
import type { Result } from '../issue.ts';
import { SAME_LINE } from '../pattern/dart.ts';
import type { Notch, Piece, PieceEdge } from '../pattern/piece.ts';
import { fixedMm } from '../text/figure.ts';
import { blended } from './blend.ts';
import { cutUp, movesOf, noSuchEdge, type OutlinePlace, partAt } from './cut-up.ts';
import { type Dart, dartsOf, UNEQUAL, type UnequalDart, unequalDartsOf } from './darts.ts';
import { type Altered, reassembled } from './reassemble.ts';
import { refused } from './refusal.ts';
import { turnedAboutPin } from './rigid-move.ts';

/** Where a dart is pivoted to. */
export interface Pivot {
  /** Either leg of the dart, by the name of its edge; may be left out where there is only one dart. */
  readonly dart?: string;
  readonly to: OutlinePlace;
  /** How much of its angle goes there: 1 closes it, less leaves the rest. */
  readonly share: number;
}

/** A new dart this near to a corner would leave a sliver of an edge, mm. */
const SLIVER = 2;

/**
 * Pivots a dart to another place: cuts from there to its apex, turns one part about the apex until the old dart
 * is closed by the share asked for, and so opens a new one of the same angle. Its legs are as long as the cut, its
 * intake 2 leg sin(angle / 2); the angles about the apex sum to what they were. Once the dart is closed, its edge
 * runs on in one, blended over the place. The new legs are sewn to each other and keep their cloth between them.
 *
 * Issues: `no-such-edge`, `no-dart`, `which-dart`, `share-impossible`, `dart-at-corner`, `dart-into-itself`, and
 * those of `cutUp`.
 */
export function pivotDart(piece: Piece, { dart: wanted, to, share }: Pivot): Result<Altered> {
  const dart = findDart(piece, wanted);
  if (!dart.ok) return dart;
  if (!(share > 0 && share <= 1))
    return refused(
      'share-impossible',
      'share',
      'A dart can give more than nothing of its angle, and no more than all.',
      {
        value: share,
        limits: { min: 0, max: 1, unit: 'share' },
      },
    );
  const opened = splitForDart(piece, to, dart.value);
  if (!opened.ok) return opened;
  const { piece: split, after } = opened.value;
  const [first, second] = dart.value.legs;
  const slash = { from: { edge: second.name, at: 0 }, to: { edge: after, at: 0 } };
  const cut = cutUp(split.edges, [slash]);
  if (!cut.ok) return cut;
  const beyond = cut.value.stretches.find(({ edge }) => split.edges[edge]?.name === second.name)?.part;
  const turn = -share * dart.value.angle;
  const across = ({ child }: { readonly child: number }) =>
    turnedAboutPin(dart.value.apex, child === beyond ? turn : -turn);
  const fold = piece.edges.find((edge) => edge.turn === 'fold');
  const onFold = cut.value.stretches.find(({ edge }) => split.edges[edge]?.name === fold?.name)?.part;
  const keep = onFold ?? partAt(cut.value, between(piece.grain.from, piece.grain.to, 0.5));
  const laid = reassembled(split, cut.value, movesOf(cut.value, across, keep)).piece;
  const legged = withLegs(laid, after, dart.value.apex, first, freshNames(laid, `${to.edge} dart leg`));
  const closed = share === 1 ? closedUp(legged, [first.name, second.name]) : { piece: legged, deviation: 0 };
  return { ok: true, value: closed, issues: [] };
}

function findDart(piece: Piece, wanted: string | undefined): Result<Dart> {
  const darts = dartsOf(piece.edges);
  const listed = darts.map(({ legs }) => legs.map(({ name }) => name).join(' and ')).join('; ');
  const isMeant = ({ legs }: Pick<Dart, 'legs'>): boolean =>
    wanted === undefined || legs.some(({ name }) => name === wanted);
  const [found, another] = darts.filter(isMeant);
  const [unequal] = unequalDartsOf(piece.edges).filter(isMeant);
  if (!found && unequal) return legsDiffer(unequal);
  if (darts.length === 0)
    return refused('no-dart', 'dart', 'The outline has no dart: two legs that meet at a point inside.');
  if (!found)
    return refused('no-dart', wanted ?? 'dart', `“${wanted}” is no leg of a dart. Legs are: ${listed}.`);
  if (another)
    return refused('which-dart', 'dart', `There is more than one dart; name a leg of one: ${listed}.`);
  return { ok: true, value: found, issues: [] };
}

function legsDiffer({ legs, difference }: UnequalDart) {
  const [shorter, longer] = legs.toSorted((a, b) => edgeLength(a) - edgeLength(b)).map(({ name }) => name);
  return refused(
    'dart-legs-differ',
    legs[0].name,
    `“${shorter}” and “${longer}” meet like the legs of a dart, but “${shorter}” is ${fixedMm(difference, 1)} shorter; the legs of a dart may differ by ${UNEQUAL} mm. True it first: fold the dart shut, draw the edge on across its mouth, and trace the piece again.`,
    { value: difference, limits: { max: UNEQUAL, unit: 'mm' } },
  );
}

/** The edge in two where the new dart will open; `after` is the one that starts there. */
function splitForDart(
  piece: Piece,
  { edge: name, at }: OutlinePlace,
  { legs }: Dart,
): Result<{ readonly piece: Piece; readonly after: string }> {
  const edge = piece.edges.find((candidate) => candidate.name === name);
  if (!edge) return noSuchEdge(name, piece.edges);
  if (legs.includes(edge))
    return refused('dart-into-itself', name, 'A dart cannot be pivoted into its own leg.');
  const length = edgeLength(edge);
  if (!(at >= SLIVER && at <= length - SLIVER))
    return refused(
      'dart-at-corner',
      name,
      `The new dart should open within “${name}”, away from its corners.`,
      {
        value: at,
        limits: { min: SLIVER, max: length - SLIVER, unit: 'mm' },
      },
    );
  const halves = splitEdgeAt(edge, at, freshNames(piece, name)).map((half) => ({ ...edge, ...half }));
  const [before, after] = halves;
  if (!before || !after) return noSuchEdge(name, piece.edges);
  const value = {
    after: after.name,
    piece: {
      ...piece,
      edges: piece.edges.flatMap((candidate) => (candidate === edge ? halves : [candidate])),
      notches: piece.notches.map((notch): Notch => {
        if (notch.edge !== name) return notch;
        return notch.at <= at
          ? { ...notch, edge: before.name }
          : { ...notch, edge: after.name, at: notch.at - at };
      }),
    },
  };
  return { ok: true, value, issues: [] };
}

/** Two names that no edge has yet, after the edge they are cut from. */
function freshNames(piece: Piece, name: string): readonly [string, string] {
  const taken = new Set(piece.edges.map((edge) => edge.name));
  let [one, other] = [`${name} 1`, `${name} 2`];
  while (taken.has(one) || taken.has(other)) [one, other] = [`${one}'`, `${other}'`];
  return [one, other];
}

/** The legs of the new dart, drawn in before the edge that starts at it. */
function withLegs(
  piece: Piece,
  after: string,
  apex: Point,
  like: PieceEdge,
  names: readonly [string, string],
): Piece {
  const place = piece.edges.findIndex(({ name }) => name === after);
  const [before, next] = [piece.edges.at(place - 1), piece.edges[place]];
  if (!before || !next) return piece;
  const leg = (name: string, line: Line): PieceEdge => {
    return { ...like, name, curves: [line], turn: 'dart', allowance: 0, inflections: 0 };
  };
  const drawn = [
    leg(names[0], { kind: 'line', from: edgeEnd(before), to: apex }),
    leg(names[1], { kind: 'line', from: apex, to: edgeStart(next) }),
  ];
  return { ...piece, edges: [...piece.edges.slice(0, place), ...drawn, ...piece.edges.slice(place)] };
}

/** Takes out the closed legs and lets the edge they stood in run on. */
function closedUp(piece: Piece, legs: readonly [string, string]): Altered {
  const rest = piece.edges.filter((edge) => !legs.includes(edge.name));
  const firstLeg = piece.edges.findIndex(({ name }) => name === legs[0]);
  const before = piece.edges.at(firstLeg - 1);
  const follower = piece.edges[(firstLeg + 2) % piece.edges.length];
  const notches = piece.notches.filter(({ edge }) => !legs.includes(edge));
  if (!before || !follower || before === follower || !runsOn(before, follower))
    return { piece: { ...piece, edges: rest, notches }, deviation: 0 };
  const base = /^(.*) 1$/.exec(before.name)?.[1];
  const name = base !== undefined && follower.name === `${base} 2` ? base : before.name;
  const inflections = Math.max(before.inflections, follower.inflections);
  const blend = blended([before, follower], { inflections, straight: false });
  const joined: PieceEdge = {
    ...before,
    name,
    curves: blend.curves,
    inflections: Math.max(inflections, inflectionCount({ name, curves: blend.curves })),
  };
  const edges = rest.flatMap((edge) => (edge === before ? [joined] : edge === follower ? [] : [edge]));
  const placed = notches.map((notch) => {
    const on = [before, follower].find((edge) => edge.name === notch.edge);
    if (!on) return notch;
    const at = lengthUpTo(joined, nearestOnEdge(joined, pointAlong(on, notch.at).point));
    return { ...notch, edge: name, at };
  });
  return { piece: { ...piece, edges, notches: placed }, deviation: blend.deviation };
}

/** Whether two edges are one line over a closed dart, and not two that met at its mouth. */
function runsOn(before: PieceEdge, after: PieceEdge): boolean {
  const [into, outOf] = [endDirection(before), startDirection(after)];
  return Math.abs(Math.atan2(cross(into, outOf), dot(into, outOf))) < SAME_LINE && before.turn === after.turn;
}
