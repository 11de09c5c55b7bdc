import type { Copies } from './copies.ts';
import type { Posture } from './postures.ts';
import { type LayProblem, phaseIn } from './problem.ts';

/** Where on a strip copies may lie: inside it, on the fold where they are cut on it, and on stripes at their place of the repeat. */
export class Seats {
  private readonly copies: Copies;
  private readonly width: number;
  private readonly repeat: number;
  private readonly repeatAcross: number;
  /** Where on the repeat the middle of each posture lies, along the strip and across it. */
  private readonly phase: Float64Array;
  private readonly phaseAcross: Float64Array;

  constructor(problem: LayProblem, copies: Copies, byShape: readonly (readonly Posture[])[]) {
    const { shapes, width, repeat = 0, repeatAcross = 0 } = problem;
    this.copies = copies;
    this.width = width;
    this.repeat = repeat;
    this.repeatAcross = repeatAcross;
    this.phase = Float64Array.from(
      byShape.flatMap((own, i) => own.map(({ middle }) => middle.x + (shapes[i]?.phase ?? 0))),
    );
    this.phaseAcross = Float64Array.from(
      byShape.flatMap((own, i) => own.map(({ middle, way }) => middle.y + phaseIn(shapes[i] ?? {}, way))),
    );
  }

  /** The place across the strip nearest to a wanted one that is inside it and on its repeat; on the fold the only one. */
  across(i: number, posture: number, wanted: number): number {
    const half = this.copies.halfHeight[posture] as number;
    if (this.copies.onFold[i]) return half;
    const { repeatAcross } = this;
    if (repeatAcross === 0) return Math.max(half, Math.min(this.width - half, wanted));
    return onLattice(this.phaseAcross[posture] as number, repeatAcross, half, this.width - half, wanted);
  }

  /**
   * The place along a strip of some length nearest to a wanted one that is inside it and on its repeat. On a strip too short for that,
   * the first on the repeat.
   */
  along(posture: number, length: number, wanted: number): number {
    const half = this.copies.halfWidth[posture] as number;
    const { repeat } = this;
    if (repeat === 0) return Math.max(half, Math.min(length - half, wanted));
    return onLattice(this.phase[posture] as number, repeat, half, length - half, wanted);
  }

  /** The least move along the strip from one place to another that is worth a try. */
  stride(wanted: number): number {
    return wanted === 0 ? 0 : Math.max(wanted, this.repeat);
  }

  /** The same across the strip. */
  strideAcross(wanted: number): number {
    return wanted === 0 ? 0 : Math.sign(wanted) * Math.max(Math.abs(wanted), this.repeatAcross);
  }
}

/** The place a whole number of repeats behind `phase`, between two bounds, nearest to a wanted one; the first where none lies between. */
function onLattice(phase: number, repeat: number, least: number, most: number, wanted: number): number {
  const first = Math.ceil((least - phase) / repeat);
  const last = Math.floor((most - phase) / repeat);
  return phase + repeat * Math.max(first, Math.min(last, Math.round((wanted - phase) / repeat)));
}
