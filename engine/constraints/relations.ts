/** A coordinate of a named point, or a named scalar, with a factor: one term of a sum. */
export type Term =
  | { readonly point: string; readonly axis: 'x' | 'y'; readonly times: number }
  | { readonly scalar: string; readonly times: number };

/** The end of a curve, where its direction or curvature is asked for. */
export interface CurveEnd {
  readonly curve: string;
  readonly end: 'start' | 'end';
}

/** A length as a sum: the named curves' arc lengths, times a factor. */
export interface LengthTerm {
  readonly curves: readonly string[];
  readonly times: number;
}

/**
 * What must hold. Each carries the name the draft gave it; reports use that name. Lengths in mm, angles in
 * radians.
 */
export type Relation =
  /** Two points are the same place. */
  | { readonly kind: 'coincident'; readonly name: string; readonly a: string; readonly b: string }
  /** A point lies on the straight line through two others. */
  | {
      readonly kind: 'on line';
      readonly name: string;
      readonly point: string;
      readonly through: readonly [string, string];
    }
  /** Two points are this far apart. */
  | {
      readonly kind: 'distance';
      readonly name: string;
      readonly a: string;
      readonly b: string;
      readonly mm: number;
    }
  /** The heading from a to b is this angle. */
  | {
      readonly kind: 'heading';
      readonly name: string;
      readonly a: string;
      readonly b: string;
      readonly angle: number;
    }
  /** The angle turned from the direction of one curve end to another is this (0: parallel, pi/2: square). */
  | {
      readonly kind: 'turn';
      readonly name: string;
      readonly from: CurveEnd;
      readonly to: CurveEnd;
      readonly angle: number;
    }
  /** A weighted sum of coordinates and scalars has this value: levels, girths, shared angles. */
  | { readonly kind: 'sum'; readonly name: string; readonly terms: readonly Term[]; readonly value: number }
  /** A weighted sum of arc lengths has this value: an edge's length, equal edges, ease, gather ratio, a girth. */
  | {
      readonly kind: 'length';
      readonly name: string;
      readonly terms: readonly LengthTerm[];
      readonly mm: number;
    }
  /** Two curve ends that meet run in one direction (G1). */
  | { readonly kind: 'tangent'; readonly name: string; readonly a: CurveEnd; readonly b: CurveEnd }
  /** Two curve ends that meet have the same signed curvature (G2, next to G1). */
  | { readonly kind: 'curvature'; readonly name: string; readonly a: CurveEnd; readonly b: CurveEnd }
  /**
   * A line running across a sewn seam has no corner there: the angle between the running edge and the seam on
   * one piece, and that on the other, make a straight angle. Each corner is the turn from one curve end to the
   * other along its own outline.
   */
  | {
      readonly kind: 'smooth across seam';
      readonly name: string;
      readonly a: { readonly from: CurveEnd; readonly to: CurveEnd };
      readonly b: { readonly from: CurveEnd; readonly to: CurveEnd };
    }
  /** The curvature of a cubic keeps one sign throughout (+1 turns clockwise as drawn, -1 the other way). */
  | { readonly kind: 'no inflection'; readonly name: string; readonly curve: string; readonly turns: 1 | -1 }
  /** The curvature of a cubic stays below 1/radius in size. */
  | { readonly kind: 'least radius'; readonly name: string; readonly curve: string; readonly mm: number };

/** What would be nice. `weight` is per mm squared (near, length) or on a scale-free measure (bending, fairness). */
export type Wish =
  /** A weighted sum of coordinates and scalars comes near this value. */
  | {
      readonly kind: 'near';
      readonly name: string;
      readonly terms: readonly Term[];
      readonly value: number;
      readonly weight: number;
    }
  /**
   * Little bending: the integral of the squared second derivative over the parameter, by chord squared. For a curve
   * of even speed, chord times the integral of curvature squared over arc length.
   */
  | { readonly kind: 'low bending'; readonly name: string; readonly curve: string; readonly weight: number }
  /** Little change of bend: the squared third derivative by chord squared. */
  | {
      readonly kind: 'fair';
      readonly name: string;
      readonly curve: string;
      readonly weight: number;
    };
