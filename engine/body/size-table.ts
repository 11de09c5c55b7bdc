import misses from '../../measurements/astm-d5585-misses.json' with { type: 'json' };

/** A straight line through points: `at(x)` anywhere along it. */
interface FittedLine {
  readonly at: (x: number) => number;
}

type Pair = readonly [number, number];

/** The line of least squares. */
function lineThrough(points: readonly Pair[]): FittedLine {
  const mean = (of: (point: Pair) => number): number =>
    points.reduce((total, point) => total + of(point), 0) / points.length;
  const [x, y] = [mean((p) => p[0]), mean((p) => p[1])];
  const slope = mean((p) => (p[0] - x) * (p[1] - y)) / mean((p) => (p[0] - x) ** 2);
  return { at: (at) => y + slope * (at - x) };
}

type SurveyRow = keyof typeof misses.rows;

/** Two rows of ASTM D5585-11e1, size by size, mm. */
const paired = (x: SurveyRow, y: SurveyRow): readonly Pair[] =>
  misses.rows[x].map((inches, size) => [inches * 25.4, (misses.rows[y][size] ?? 0) * 25.4]);

/** Mean bust girth and girth below the breast of 2,208 women (NATICK/TR-89/044, 1988), mm. */
const survey1988: Pair = [907.1, 769.7];

/** Under-bust girth for a bust girth, mm. */
export const underBustForBust = lineThrough([...paired('bustGirth', 'underBustGirth'), survey1988]);

/** Upper chest girth for a bust girth, and for an under-bust girth, mm. */
export const upperChestForBust = lineThrough(paired('bustGirth', 'upperChestGirth'));
export const upperChestForUnderBust = lineThrough(paired('underBustGirth', 'upperChestGirth'));
