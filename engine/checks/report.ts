import type { Issue } from '../issue.ts';
import type { EdgeRef } from '../pattern/garment.ts';

/** What the checks found: every seam walked, every join trued, every girth closed. mm and degrees. */
export interface Report {
  readonly ok: boolean;
  readonly garment: string;
  readonly body: string;
  readonly seams: readonly SeamReport[];
  readonly joins: readonly JoinReport[];
  readonly girths: readonly GirthReport[];
  readonly issues: readonly Issue[];
}

export interface SeamReport {
  readonly name: string;
  readonly a: readonly EdgeRef[];
  readonly b: readonly EdgeRef[];
  readonly lengthA: number;
  readonly lengthB: number;
  readonly ease: number;
  readonly gatherRatio: number;
  /** The worse of the whole seam and its stretches between notches, mm. */
  readonly mismatch: number;
}

export interface JoinReport {
  readonly name: string;
  readonly pieces: readonly string[];
  /** The corner left when sewn, degrees; 0 runs on perfectly. */
  readonly angle: number;
}

export interface GirthReport {
  readonly level: string;
  readonly body: number;
  readonly ease: number;
  readonly target: number;
  readonly finished: number;
  readonly error: number;
}
