import { normal, type Random, randomFrom } from '../numeric/random.ts';
import { type Remembered, somePosture } from './copies.ts';
import { exchangeTwo } from './exchange.ts';
import { layOf } from './lay-of.ts';
import { Layout } from './layout.ts';
import { leastLength } from './least-length.ts';
import { areaOf, type Lay, type LayProblem } from './problem.ts';
import { faultsOf } from './proof.ts';
import { onStrip, type Readied, readiedFor } from './readied.ts';
import { type Patience, separate } from './separate.ts';

/** How the search stands after a round: the best lay so far that was proven, none at the very beginning. */
export interface LayProgress {
  readonly rounds: number;
  readonly best: Lay | undefined;
}

/** By which share the strip is shortened while exploring: boldly at first, less as that grows hard. */
const firstStep = 0.05;
const leastStep = 0.001;

/** What a lay still overlaps that ran out of time, or that was parted but could not be proven. */
const unproven = Number.MIN_VALUE;

/** A lay is as short as can be when no more than this share could be saved. */
const shortestShare = 1e-6;

/** The longer a length resists, the longer each try at it goes on: a short try seldom finds what others have missed. */
const patienceAfter = (failures: number): Patience => ({
  passes: Math.min(250, Math.round(80 * (1 + 0.15 * failures))),
  strikes: failures > 3 ? 3 : 2,
});

/** What share of the search explores; the rest presses the best lay together. */
const exploring = 0.8;

/** Places to begin with take so much more than the shapes' area. */
const firstDensity = 0.7;

/**
 * Seeks a short lay: yields after every round, and may be left after any. `spent` tells which share (0 to 1) of the search
 * is over after so many rounds; at 1 it ends. `ready` saves working out again what depends on the shapes alone. The same seed and the same shares give the same lay.
 *
 * Explores by shortening the strip and parting what then overlaps; when that fails, by trying again from places that nearly
 * fitted, two large shapes exchanged; then presses the best together by ever smaller steps (the scheme of
 * arXiv 2509.13329, 2025; overlaps here are depths in no-fit regions, as in S. Umetani, S. Murakami, arXiv 2104.04525).
 */
export function* planLay(
  problem: LayProblem,
  seed: number,
  spent: (rounds: number) => number,
  ready: Readied = readiedFor(problem.width, problem.shapes),
): Generator<LayProgress, void, void> {
  const random = randomFrom(seed);
  const layout = new Layout(problem, onStrip(ready, problem.width));
  const search = new Search(problem, layout, random, spent);
  yield* search.begin();
  yield* search.explore();
  yield* search.press();
  yield search.progress();
}

class Search {
  private rounds = 0;
  private best: Lay | undefined;
  private bestPlaces: Remembered | undefined;
  private readonly problem: LayProblem;
  private readonly layout: Layout;
  private readonly random: Random;
  private readonly spent: (rounds: number) => number;

  /** No strip can be shorter. */
  private readonly least: number;

  constructor(problem: LayProblem, layout: Layout, random: Random, spent: (rounds: number) => number) {
    this.problem = problem;
    this.least = leastLength(problem);
    this.layout = layout;
    this.random = random;
    this.spent = spent;
  }

  progress(): LayProgress {
    return { rounds: this.rounds, best: this.best };
  }

  private share(): number {
    return this.spent(this.rounds);
  }

  /** Tries to part what overlaps; tells whether it did, and what was least. */
  private *part(
    passes: number,
    strikes: number,
    until: number,
  ): Generator<LayProgress, Remembered & { least: number }, void> {
    const { layout } = this;
    const trying = separate(layout, this.random, { passes, strikes });
    for (;;) {
      const { done, value } = trying.next();
      this.rounds += 1;
      if (done) {
        layout.recall(value.places);
        const least = value.done && this.keep() ? 0 : Math.max(value.least, unproven);
        yield this.progress();
        return { ...value.places, least };
      }
      yield this.progress();
      if (this.share() >= until) return { ...layout.remember(), least: Math.max(layout.total(), unproven) };
    }
  }

  /** Keeps the places as they are as the best, if they are proven; tells whether they are. */
  private keep(): boolean {
    const lay = layOf(this.problem, this.layout);
    if (faultsOf(this.problem, lay).length > 0) return false;
    this.best = lay;
    this.bestPlaces = { ...this.layout.remember(), length: this.layout.reach() };
    return true;
  }

  *begin(): Generator<LayProgress, void, void> {
    const { layout, random } = this;
    layout.length = Math.max(this.least, areaOf(this.problem) / (this.problem.width * firstDensity));
    for (let i = 0; i < layout.count; i++) {
      layout.posture[i] = somePosture(layout.copies, i, random);
      layout.x[i] = random() * layout.length;
      layout.y[i] = random() * layout.width;
      layout.keepInside(i);
    }
    while (!this.best) {
      yield* this.part(100, 2, Infinity);
      if (!this.best) layout.length *= 1.05;
    }
  }

  /** The length to try next, not below what is possible; none when the best is as short as can be. */
  private shorterThan(best: number, wanted: number): number | undefined {
    return best <= this.least * (1 + shortestShare) ? undefined : Math.max(wanted, this.least);
  }

  /** Shortens the strip and moves what stands beyond into it. */
  private shorten(length: number): void {
    const { layout } = this;
    layout.length = length;
    for (let i = 0; i < layout.count; i++) layout.keepInside(i);
  }

  *explore(): Generator<LayProgress, void, void> {
    const { layout, random } = this;
    let step = firstStep;
    while (this.share() < exploring && this.bestPlaces) {
      layout.recall(this.bestPlaces);
      const length = this.shorterThan(this.bestPlaces.length, this.bestPlaces.length * (1 - step));
      if (length === undefined) return;
      this.shorten(length);
      const started = this.rounds;
      const nearly: (Remembered & { least: number })[] = [];
      for (;;) {
        const { passes, strikes } = patienceAfter(nearly.length);
        const tried = yield* this.part(passes, strikes, exploring);
        if (this.share() >= exploring) return;
        if (tried.least === 0) break;
        if (step > leastStep) {
          step = Math.max(leastStep, step / 2);
          break;
        }
        nearly.push(tried);
        nearly.sort((a, b) => a.least - b.least);
        const chosen =
          nearly[Math.min(nearly.length - 1, Math.floor(Math.abs(normal(random)) * 0.25 * nearly.length))];
        if (chosen) layout.recall({ ...chosen, length });
        exchangeTwo(layout, random);
      }
      if (this.rounds - started > 30) step = Math.max(leastStep, step * 0.7);
    }
  }

  /** Presses the best lay together by steps that shrink as time goes on, cut out of the strip anywhere. */
  *press(): Generator<LayProgress, void, void> {
    const { layout, random } = this;
    while (this.share() < 1 && this.bestPlaces) {
      const done = Math.max(0, (this.share() - exploring) / (1 - exploring));
      const step = 0.0005 * (0.00001 / 0.0005) ** done;
      layout.recall(this.bestPlaces);
      const length = this.shorterThan(this.bestPlaces.length, this.bestPlaces.length * (1 - step));
      if (length === undefined) return;
      const shift = this.bestPlaces.length - length;
      const cut = random() * this.bestPlaces.length;
      for (let i = 0; i < layout.count; i++)
        if ((layout.x[i] as number) > cut) layout.x[i] = (layout.x[i] as number) - shift;
      this.shorten(length);
      yield* this.part(100, 2, 1);
    }
  }
}
