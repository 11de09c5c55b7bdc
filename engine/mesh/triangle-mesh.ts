/** Triangles over points (flat: x, y ..., mm). The points of the border come first, in their order. */
export interface TriangleMesh {
  readonly points: Float64Array;
  /** Three places among the points each, clockwise as drawn (y runs down). */
  readonly triangles: Int32Array;
  readonly borderCount: number;
}
