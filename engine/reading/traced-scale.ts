import { distance, type Point } from '../geometry/point.ts';
import type { Issue, Result } from '../issue.ts';
import type { IssueCode } from '../issue-codes/issue-codes.ts';
import type { TracedPiece } from '../shaping/traced.ts';
import { significant } from '../text/figure.ts';
import type { FoundElement } from './read-markup.ts';
import { readScale } from './read-scale.ts';
import type { DrawnLine } from './read-shapes.ts';

/** Side of the test square, mm. */
const SIDE = 50;

/** Sides of the squares that are drawn to test a scale by, mm: a second one is of 2 in. */
const TESTED = [SIDE, 50.8];

/** A square may be skew or drawn by this share; two ways to tell the scale may differ by as much without a word. */
const SKEW = 0.01;

/** How large the drawing is, and how that is known. */
export type Scale = Pick<TracedPiece, 'mmPerUnit' | 'scaleFrom'>;

/**
 * Millimetres in a unit of a traced drawing: as told, or from the marked test square of 50 mm (the smaller where
 * there are two, since the other is the one of 2 in), or from the size the drawing gives itself.
 *
 * Issues: `scale-not-a-number`, `scale-unknown`, `square-not-square`; as warnings `scale-from-drawing` and
 * `scales-differ`, as a note `square-missing`.
 */
export function tracedScale(
  root: FoundElement | undefined,
  squares: readonly DrawnLine[],
  told: number | undefined,
): Result<Scale> {
  if (told !== undefined && !(told > 0 && told < 1e4))
    return refuse('scale-not-a-number', 'The mm in a unit of the drawing should be a number above 0.');
  const sides = squares.map(sideOf);
  const sound = sides.filter((side) => side !== undefined);
  const square = sound.length > 0 ? SIDE / Math.min(...sound) : undefined;
  const size = readScale(root?.attributes ?? {});
  const drawing = size.ok && isPhysical(root) ? size.value : undefined;
  if (told === undefined && square === undefined && squares.length > 0)
    return refuse('square-not-square', 'The marked test square is not square: its sides or corners differ.');
  const chosen: Scale | undefined =
    told !== undefined
      ? { mmPerUnit: told, scaleFrom: 'given' }
      : square !== undefined
        ? { mmPerUnit: square, scaleFrom: 'square' }
        : drawing !== undefined
          ? { mmPerUnit: drawing, scaleFrom: 'drawing' }
          : undefined;
  if (!chosen)
    return refuse(
      'scale-unknown',
      'There is no test square in this drawing, and nothing else says how large it is. Draw a 50-mm square called “test square”, or say --mm-per-unit.',
    );
  const others = [square, drawing].filter((other) => other !== undefined);
  const differing = others.find((other) => Math.abs(other / chosen.mmPerUnit - 1) > SKEW);
  const issues = [
    ...(chosen.scaleFrom === 'drawing' ? [warning('scale-from-drawing', noSquare)] : []),
    ...(chosen.scaleFrom === 'given' && square === undefined ? [squareMissing(chosen.mmPerUnit)] : []),
    ...(differing === undefined ? [] : [warning('scales-differ', differ(chosen, differing))]),
  ];
  return { ok: true, value: chosen, issues };
}

const noSquare =
  'There is no test square that is called so; the size is the one the drawing gives itself. Measure before you cut.';

const squareMissing = (mmPerUnit: number): Issue => ({
  code: 'square-missing',
  severity: 'note',
  path: 'scale',
  message: `There is no test square to try the scale by; one unit is taken as ${significant(mmPerUnit, 5)} mm, as you said.`,
});

/**
 * Whether a line, in mm, is a square as they are drawn to test a scale by. Nobody's piece is: one that lost its name must not
 * be taken for the piece.
 */
export function isTestSquare(line: DrawnLine): boolean {
  const side = line.closed ? sideOf(line) : undefined;
  return side !== undefined && TESTED.some((tested) => Math.abs(side / tested - 1) <= SKEW);
}

const how = { given: 'as you said', square: 'from the test square', drawing: 'from the drawing' } as const;

const differ = ({ mmPerUnit, scaleFrom }: Scale, other: number): string =>
  `One unit is taken as ${significant(mmPerUnit, 5)} mm (${how[scaleFrom]}), but the drawing also speaks of ` +
  `${significant(other, 5)} mm. Measure before you cut.`;

/** A size in pixels, or in nothing, says how large it is on a screen and not on paper. */
const isPhysical = (root: FoundElement | undefined): boolean =>
  /(?:mm|cm|Q|in|pt|pc)\s*$/.test(root?.attributes.width ?? '');

/** Mean side of a line of four corners, in units; nothing when it is no square. */
function sideOf({ curves }: DrawnLine): number | undefined {
  const corners = curves.map(({ from }) => from).filter((p, i, all) => distance(p, all.at(i - 1) ?? p) > 0);
  const [a, b, c, d, more] = corners;
  if (!a || !b || !c || !d || more) return undefined;
  const side = (p: Point, q: Point): number => distance(p, q);
  const sides = [side(a, b), side(b, c), side(c, d), side(d, a)];
  const mean = sides.reduce((sum, each) => sum + each, 0) / 4;
  const diagonals = [side(a, c) / Math.SQRT2, side(b, d) / Math.SQRT2];
  const even = [...sides, ...diagonals].every((each) => Math.abs(each / mean - 1) <= SKEW);
  return even && mean > 0 ? mean : undefined;
}

const warning = (code: IssueCode, message: string): Issue => ({
  code,
  severity: 'warning',
  path: 'scale',
  message,
});

const refuse = (code: IssueCode, message: string): Extract<Result<never>, { ok: false }> => ({
  ok: false,
  issues: [{ code, severity: 'error', path: 'scale', message }],
});
