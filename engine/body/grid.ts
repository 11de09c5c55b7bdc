/** Measurements as a body file holds them. */
export type BodyData = Readonly<Record<string, unknown>>;

/** The cups of the grid, from the smallest. */
export const gridCups = ['AA', 'A', 'B', 'C', 'D', 'E', 'F', 'G', 'H'] as const;

export type GridCup = (typeof gridCups)[number];

/** A body of the grid: bust girth and stature in mm, and her cup; waist, hip and back length in proportion. */
export const gridBody = (bustGirth: number, cup: GridCup, stature: number): BodyData => ({
  name: `bust ${bustGirth / 10}, cup ${cup}, stature ${stature / 10}`,
  units: 'mm',
  bustGirth,
  waistGirth: Math.round(0.85 * bustGirth - 20),
  hipGirth: Math.round(0.75 * bustGirth + 300),
  backNeckPointToWaist: Math.round(0.235 * stature + 0.02 * bustGirth),
  stature,
  cup,
});

/** Bodies of these busts, cups and statures, each with each. */
export const gridOf = (
  busts: readonly number[],
  cups: readonly GridCup[],
  statures: readonly number[],
): readonly BodyData[] =>
  busts.flatMap((bust) => cups.flatMap((cup) => statures.map((stature) => gridBody(bust, cup, stature))));

/** Bust girths from 75 to 150 cm, cups AA to H, three statures. */
export const bodyGrid = (): readonly BodyData[] =>
  gridOf(
    Array.from({ length: 16 }, (_, i) => 750 + 50 * i),
    gridCups,
    [1500, 1650, 1800],
  );

/** A woman of middle size, whom any draft for women should be able to draft for. */
export const middleBody = gridBody(920, 'B', 1650);
