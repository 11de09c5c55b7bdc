import { boundingBox } from '../geometry/bounds.ts';
import type { Edge } from '../geometry/curve.ts';
import { signedArea } from '../geometry/outline.ts';
import { type Point, vectorBetween } from '../geometry/point.ts';
import { polygonOf } from '../geometry/polygon.ts';
import { scaledFrom, transformedEdge } from '../geometry/transform.ts';
import type { Vector } from '../geometry/vector.ts';
import type { Issue } from '../issue.ts';
import type { IssueCode } from '../issue-codes/issue-codes.ts';
import { inWay, offRepeat } from '../lay/problem.ts';
import { overlap } from '../lay/proof.ts';
import { type FoundElement, readMarkup } from '../reading/read-markup.ts';
import { readPath } from '../reading/read-path.ts';
import type { LaidPiece } from './laid-piece.ts';
import { clear } from './outward.ts';

/** Chords of the lines read stray so little from them, mm, that the room kept between lines is more than all of it. */
const chords = clear / 5;

/** Digits of a written place, mm of cloth, with room to spare. */
const written = 1e-3;

/**
 * Lines whose areas differ by less than this share are one line, written and read: six digits of a millimetre. Larger: a piece
 * could pass for its lining.
 */
const SAME_AREA = 1e-5;

interface DrawnCopy {
  readonly piece: string;
  readonly line: Edge;
  readonly polygon: readonly Point[];
}

/**
 * Proves a written plan from its paths alone: every line is that of its piece, no two have an inner point in common, all lie on
 * the strip, on its fold and on its stripes, and each piece comes out as often as `asked` (by name, for this cloth). No issues is a proof.
 */
export function provePlan(
  svg: string,
  pieces: readonly LaidPiece[],
  asked: ReadonlyMap<string, number>,
): Issue[] {
  const markup = readMarkup(svg);
  if (!markup.ok) return [...markup.issues];
  const group = markup.value.elements.find(({ attributes }) => attributes.class === 'lay');
  if (!group) return [issue('plan-unreadable', '', 'The plan that was written cannot be read.')];
  const number = (name: string): number => Number(group.attributes[name]);
  const drawn = markup.value.elements
    .filter(({ name, attributes }) => name === 'path' && attributes.class === 'outline')
    .map((found) => drawnCopy(found, number('data-scale'), number('data-left'), number('data-top')));
  const copies = drawn.flatMap((copy) => copy ?? []);
  const unread =
    copies.length < drawn.length
      ? [issue('plan-unreadable', '', 'A line of the plan that was written cannot be read.')]
      : [];
  const low = number('data-start');
  const high = low + number('data-width');
  return [
    ...unread,
    ...copies.flatMap((copy, i) => [
      ...outside(copy, low, high, number('data-length')),
      ...copies.slice(i + 1).flatMap((other) => crossing(copy, other)),
    ]),
    ...counted(copies, pieces, asked, {
      start: low,
      repeat: Number(group.attributes['data-repeat'] ?? 0),
      repeatAcross: Number(group.attributes['data-repeat-across'] ?? 0),
    }),
  ];
}

function drawnCopy(found: FoundElement, scale: number, left: number, top: number): DrawnCopy | undefined {
  const { d = '', 'data-piece': piece = '' } = found.attributes;
  const read = readPath(d);
  if (!read.ok || !read.closed || found.transformed) return undefined;
  const larger = scaledFrom({ x: 0, y: 0 }, scale);
  const line = transformedEdge({ name: piece, curves: read.curves }, (p) =>
    larger({ x: p.x - left, y: p.y - top }),
  );
  return { piece, line, polygon: polygonOf([line], chords) };
}

function outside({ piece, polygon }: DrawnCopy, low: number, high: number, length: number): Issue[] {
  const strays = polygon.some(
    ({ x, y }) => x < -written || x > length + written || y < low - written || y > high + written,
  );
  return strays ? [issue('lay-outside', piece, `The ${piece} does not lie on the cloth.`)] : [];
}

function crossing(a: DrawnCopy, b: DrawnCopy): Issue[] {
  return overlap(a.polygon, b.polygon)
    ? [issue('lay-overlap', a.piece, `The ${a.piece} and the ${b.piece} overlap on the plan.`)]
    : [];
}

/** Where the strip begins across the cloth, and after which lengths its stripes repeat, along it and across; 0 for none. */
interface Repeats {
  readonly start: number;
  readonly repeat: number;
  readonly repeatAcross: number;
}

/** Each drawn line is that of one of its piece's kinds, by area, and together they give what is asked for. */
function counted(
  copies: readonly DrawnCopy[],
  pieces: readonly LaidPiece[],
  asked: ReadonlyMap<string, number>,
  strip: Repeats,
): Issue[] {
  const given = new Map<string, number>();
  const issues: Issue[] = [];
  const left = pieces.map(({ count }) => count);
  for (const { piece, line } of copies) {
    const own = signedArea([line]);
    const kind = pieces.findIndex(
      (laid, i) =>
        laid.piece === piece &&
        (left[i] ?? 0) > 0 &&
        Math.abs(Math.abs(own) - Math.abs(signedArea([laid.line]))) <= SAME_AREA * Math.abs(own),
    );
    const laid = pieces[kind];
    if (!laid) {
      issues.push(
        issue('lay-not-the-piece', piece, `What is drawn as the ${piece} is not its cutting line.`),
      );
      continue;
    }
    if (strip.repeat + strip.repeatAcross > 0 && offStripe(line, laid, strip) > written)
      issues.push(issue('lay-off-stripe', piece, `The ${piece} does not lie on its stripe.`));
    if (laid.onFold && Math.abs(boundingBox(line.curves).top - strip.start) > written)
      issues.push(issue('lay-off-fold', piece, `The ${piece} does not lie on the fold of the cloth.`));
    left[kind] = (left[kind] ?? 0) - 1;
    given.set(piece, (given.get(piece) ?? 0) + laid.gives);
  }
  for (const [piece, count] of asked)
    if ((given.get(piece) ?? 0) !== count)
      issues.push(
        issue(
          'lay-count',
          piece,
          `The ${piece} comes out ${given.get(piece) ?? 0} times of this plan; it is to be cut ${count} times.`,
        ),
      );
  return issues;
}

/** How far a drawn line lies from where its piece meets the stripes, mm: in any way in which it may lie as it is drawn. */
function offStripe(
  line: Edge,
  { line: own, onFold, ways, phase, phaseAcross }: LaidPiece,
  strip: Repeats,
): number {
  const shape = {
    name: own.name,
    outline: [],
    count: 1,
    ways,
    onFold,
    ...(phase !== undefined && { phase }),
    ...(phaseAcross !== undefined && { phaseAcross }),
  };
  return Math.min(
    ...ways.flatMap((way) => {
      const move = moveBetween(
        transformedEdge(own, (p) => inWay(p, way)),
        line,
      );
      return move
        ? offRepeat({ ...strip, width: 0, shapes: [] }, shape, { way, x: move.x, y: move.y - strip.start })
        : [];
    }),
  );
}

/** The move that takes one line to another, corner by corner; none where they are not the same line. */
function moveBetween(from: Edge, to: Edge): Vector | undefined {
  const moves = from.curves.map((curve, i) => vectorBetween(curve.from, to.curves[i]?.from ?? curve.from));
  const [first] = moves;
  const same =
    from.curves.length === to.curves.length &&
    moves.every(({ x, y }) => first && Math.hypot(x - first.x, y - first.y) <= written);
  return same ? first : undefined;
}

const issue = (code: IssueCode, path: string, message: string): Issue => ({
  code,
  severity: 'error',
  path,
  message,
});
