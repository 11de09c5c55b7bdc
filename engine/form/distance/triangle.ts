/**
 * The point of a triangle nearest to x, y, z (C. Ericson, Real-Time Collision Detection, 2005, section 5.1.5). Writes into
 * `into` the squared distance, the nearest point, and which feature it lies on: 0, 1, 2 a corner; 3, 4, 5 the edge after that
 * corner; 6 the face. `a`, `b`, `c` say where each corner's coordinates begin.
 */
export function nearestOnTriangle(
  points: Float64Array,
  a: number,
  b: number,
  c: number,
  x: number,
  y: number,
  z: number,
  into: Float64Array,
): void {
  const ax = points[a] as number;
  const ay = points[a + 1] as number;
  const az = points[a + 2] as number;
  const abx = (points[b] as number) - ax;
  const aby = (points[b + 1] as number) - ay;
  const abz = (points[b + 2] as number) - az;
  const acx = (points[c] as number) - ax;
  const acy = (points[c + 1] as number) - ay;
  const acz = (points[c + 2] as number) - az;
  const apx = x - ax;
  const apy = y - ay;
  const apz = z - az;
  const d1 = abx * apx + aby * apy + abz * apz;
  const d2 = acx * apx + acy * apy + acz * apz;
  let v = 0;
  let w = 0;
  let feature = 6;
  const abab = abx * abx + aby * aby + abz * abz;
  const abac = abx * acx + aby * acy + abz * acz;
  const acac = acx * acx + acy * acy + acz * acz;
  const d3 = d1 - abab;
  const d4 = d2 - abac;
  const d5 = d1 - abac;
  const d6 = d2 - acac;
  const vc = d1 * d4 - d3 * d2;
  const vb = d5 * d2 - d1 * d6;
  const va = d3 * d6 - d5 * d4;
  if (d1 <= 0 && d2 <= 0) feature = 0;
  else if (d3 >= 0 && d4 <= d3) [v, feature] = [1, 1];
  else if (d6 >= 0 && d5 <= d6) [w, feature] = [1, 2];
  else if (vc <= 0 && d1 >= 0 && d3 <= 0) [v, feature] = [d1 / (d1 - d3), 3];
  else if (va <= 0 && d4 - d3 >= 0 && d5 - d6 >= 0) {
    w = (d4 - d3) / (d4 - d3 + (d5 - d6));
    [v, feature] = [1 - w, 4];
  } else if (vb <= 0 && d2 >= 0 && d6 <= 0) [w, feature] = [d2 / (d2 - d6), 5];
  else {
    const whole = va + vb + vc;
    [v, w] = [vb / whole, vc / whole];
  }
  const px = ax + v * abx + w * acx;
  const py = ay + v * aby + w * acy;
  const pz = az + v * abz + w * acz;
  into[0] = (x - px) ** 2 + (y - py) ** 2 + (z - pz) ** 2;
  into[1] = px;
  into[2] = py;
  into[3] = pz;
  into[4] = feature;
}
