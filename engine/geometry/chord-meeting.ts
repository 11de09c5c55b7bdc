import { orient2d } from 'robust-predicates';

/** Where two chains of chords cross: which chord of the first, and the parameters on the two curves. */
export interface ChordMeeting {
  readonly chord: number;
  readonly s: number;
  readonly t: number;
}

/** How two curves of a closed chain follow each other: 0 for a curve and itself, 1 for one and the next. */
export interface ChainOrder {
  readonly apart: number;
  /** Whether the second also leads back into the first. */
  readonly closes: boolean;
}

/**
 * The first place along a chain of chords `p` that another, `q`, crosses; both as `chordPoints` gives them. Chords
 * that follow each other share an end and do not count.
 */
export function firstMeeting(
  p: readonly number[],
  q: readonly number[],
  { apart, closes }: ChainOrder,
): ChordMeeting | undefined {
  const lastP = p.length / 2 - 2;
  const lastQ = q.length / 2 - 2;
  for (let i = 0; i <= lastP; i++) {
    const start = apart === 0 ? i + 2 : apart === 1 && i === lastP ? 1 : 0;
    const end = closes && i === 0 ? lastQ - 1 : lastQ;
    const ax = p[2 * i] as number;
    const ay = p[2 * i + 1] as number;
    const bx = p[2 * i + 2] as number;
    const by = p[2 * i + 3] as number;
    for (let j = start; j <= end; j++) {
      // From the start of the one to both ends of the other, which must have one on either side of it to cross it: told
      // exactly, or a chord would seem to pass by the end of another that it meets.
      const fx = (q[2 * j] as number) - ax;
      const fy = (q[2 * j + 1] as number) - ay;
      const tx = (q[2 * j + 2] as number) - ax;
      const ty = (q[2 * j + 3] as number) - ay;
      const sideFrom = -orient2d(ax, ay, bx, by, q[2 * j] as number, q[2 * j + 1] as number);
      const sideTo = -orient2d(ax, ay, bx, by, q[2 * j + 2] as number, q[2 * j + 3] as number);
      if ((sideFrom > 0 && sideTo > 0) || (sideFrom < 0 && sideTo < 0) || sideFrom === sideTo) continue;
      const alongB = sideFrom / (sideFrom - sideTo);
      const alongA = (fx * (ty - fy) - fy * (tx - fx)) / (sideTo - sideFrom);
      if (alongA < 0 || alongA > 1) continue;
      return { chord: i, s: (i + alongA) / (lastP + 1), t: (j + alongB) / (lastQ + 1) };
    }
  }
  return undefined;
}
