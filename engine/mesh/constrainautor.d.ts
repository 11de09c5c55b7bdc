import type Delaunator from 'delaunator';

/** What is used of the package @kninnug/constrainautor, whose own types are sources that our compiler's options refuse. */
export default class Constrainautor {
  constructor(delaunay: Delaunator<Float64Array>);
  /** Makes two points the ends of a side. */
  constrainOne(from: number, to: number): number;
  /** Makes all sides Delaunay again that are not constrained; `deep`: until none is left that is not. */
  delaunify(deep?: boolean): this;
}
