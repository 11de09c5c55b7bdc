import type { Issue } from '../issue.ts';
import type { EdgeRef } from '../pattern/seam.ts';
import type { ShapeUnit } from '../pattern/shape.ts';

/** What the checks found: every seam walked, every join trued, every girth closed, every shape measured. mm and degrees. */
export interface Report {
  readonly ok: boolean;
  readonly garment: string;
  readonly body: string;
  readonly seams: readonly SeamReport[];
  readonly joins: readonly JoinReport[];
  readonly girths: readonly GirthReport[];
  readonly shapes: readonly ShapeReport[];
  /** How many notches were looked at. */
  readonly notches: number;
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

/** A figure a pattern cutter looks at, measured on the pieces, beside the band it should lie in. */
export interface ShapeReport {
  readonly name: string;
  readonly piece: string;
  readonly value: number;
  readonly unit: ShapeUnit;
  /** No limit on a side where there is none. */
  readonly low?: number | undefined;
  readonly high?: number | undefined;
  readonly ok: boolean;
  /** Whether the draft fails when it lies outside. */
  readonly bound: boolean;
  /** What usually is the reason, or what it means, when it lies outside. */
  readonly outside: string;
}
