import { dress } from '../../drafts/dress.ts';
import { evaluate } from '../../engine/evaluate.ts';
import { walkSheet } from '../../engine/reading/walk-sheet.ts';
import { sheetSvg } from '../../engine/render/sheet.ts';
import { plausibleBodies } from '../plausible-bodies.ts';
import { figures, table } from './timing.ts';

/**
 * What `draft` pays for a sheet it can vouch for: the dress drafted and checked, its sheet written, and that walked again
 * from its text. Medians over some plausible bodies, warm.
 */
export function benchSheet(count = 24): string {
  const times = { draft: [] as number[], write: [] as number[], walk: [] as number[] };
  const timed = <T>(into: number[], work: () => T): T => {
    const start = performance.now();
    const made = work();
    into.push(performance.now() - start);
    return made;
  };
  for (const body of plausibleBodies(count)) {
    const made = timed(times.draft, () => evaluate(dress, body, {}));
    if (!made.ok) throw new Error('not drafted');
    const { garment, cutLines } = made.value;
    const sheet = timed(times.write, () => sheetSvg(garment, cutLines));
    const walked = timed(times.walk, () => walkSheet(sheet));
    if (!walked.ok || !walked.value.ok) throw new Error('a sheet that is not true');
  }
  const warm = (all: readonly number[]): string => {
    const later = all.slice(all.length / 3).toSorted((a, b) => a - b);
    return figures(later[later.length >> 1] ?? 0);
  };
  return [
    `a dress and its sheet, ${count} bodies`,
    table([
      ['', 'drafted and checked', 'sheet written', 'sheet walked again'],
      ['ms', warm(times.draft), warm(times.write), warm(times.walk)],
    ]),
  ].join('\n');
}
