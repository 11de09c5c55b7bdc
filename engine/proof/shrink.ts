import type { TrialCase } from './trial-case.ts';

/** So often a case is tried again at the most while it is made smaller. */
const ATTEMPTS = 40;

/**
 * A case of which the same comes with fewer choices made otherwise: they are dropped in halves, in quarters, at last one
 * by one, until none can be (A. Zeller and R. Hildebrandt, 2002, "Simplifying and isolating failure-inducing input"),
 * and the body is given up for the first of the plainer ones with which it comes too.
 */
export async function shrunk(
  found: TrialCase,
  plainer: readonly TrialCase['body'][],
  same: (smaller: TrialCase) => Promise<boolean>,
): Promise<TrialCase> {
  let attempts = ATTEMPTS;
  const still = async (smaller: TrialCase): Promise<boolean> => attempts-- > 0 && (await same(smaller));
  let best = found;
  let names = Object.keys(best.styling);
  let size = Math.ceil(names.length / 2);
  while (names.length > 0 && attempts > 0) {
    let dropped = false;
    for (let i = 0; i < names.length && !dropped; i += size) {
      const left = [...names.slice(0, i), ...names.slice(i + size)];
      const smaller = { ...best, styling: only(best.styling, left) };
      dropped = await still(smaller);
      if (!dropped) continue;
      best = smaller;
      names = left;
    }
    if (!dropped && size === 1) break;
    size = dropped ? Math.min(size, Math.max(1, names.length)) : Math.ceil(size / 2);
  }
  for (const body of plainer) {
    if (body === best.body) return best;
    if (await still({ ...best, body })) return { ...best, body };
  }
  return best;
}

const only = (styling: TrialCase['styling'], names: readonly string[]): TrialCase['styling'] =>
  Object.fromEntries(Object.entries(styling).filter(([name]) => names.includes(name)));
