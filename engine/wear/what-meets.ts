import type { Obstacle } from '../cloth/obstacle.ts';
import type { Garment } from '../pattern/garment.ts';
import type { Sewn } from './sewn.ts';
import type { Stand } from './stand.ts';

/** The pieces that go round an arm. */
export const sleevesOf = ({ girths }: Garment): ReadonlySet<string> =>
  new Set(girths.filter(({ limb }) => limb).flatMap(({ parts }) => parts.map(({ piece }) => piece)));

/** What each point of a sewn garment meets: a sleeve the arm, all else, the armhole with it, the trunk. */
export function metBy(
  garment: Garment,
  { panels, sheet }: Pick<Sewn, 'panels' | 'sheet'>,
  { obstacle, trunk }: Stand,
): readonly Obstacle[] {
  const sleeves = sleevesOf(garment);
  const met: Obstacle[] = Array.from({ length: sheet.count }, () => obstacle);
  for (const { panel, points } of panels)
    if (!sleeves.has(panel.name)) for (const p of points) met[p] = trunk;
  return met;
}

/** Whether a garment reaches below the waist. */
export const reachesBelow = ({ girths }: Garment): boolean => girths.some(({ level }) => level === 'hip');
