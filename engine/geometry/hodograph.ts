/**
 * How far the speed of a cubic is analytic about its interval: what decides how fast a quadrature converges.
 *
 * With u in [-1, 1] for t in [0, 1], the derivative is the complex quadratic z(u) = z + 2 e u + k u^2. The speed,
 * |z(u)| for real u, is sqrt(z(u) conj(z(conj u))) for complex u: analytic but for the two roots of z(u) and their
 * mirror images. The ellipse with foci -1 and 1 through the nearest root bounds where it is.
 *
 * Returned is Y = rho^2 / 2 + rho^(-2) / 2, rho the sum of the ellipse's half-axes: for a root r that is
 * |r|^2 + |r^2 - 1|. It is 1 for a root on the interval and at most `WIDEST`.
 */
export function analyticReach(
  zx: number,
  zy: number,
  ex: number,
  ey: number,
  kx: number,
  ky: number,
): number {
  // The root of the discriminant e^2 - z k, then q = e + that, with the sign that cancels nothing.
  const dx = ex * ex - ey * ey - (zx * kx - zy * ky);
  const dy = 2 * ex * ey - (zx * ky + zy * kx);
  const larger = Math.sqrt(0.5 * (Math.sqrt(dx * dx + dy * dy) + Math.abs(dx)));
  const smaller = larger === 0 ? 0 : (0.5 * dy) / larger;
  const sx = dx < 0 ? smaller : larger;
  const sy = dx < 0 ? larger : smaller;
  const alike = ex * sx + ey * sy >= 0;
  const qx = alike ? ex + sx : ex - sx;
  const qy = alike ? ey + sy : ey - sy;
  // The roots are -q / k and -z / q; both enter squared, so the minus is left out.
  const byK = 1 / (kx * kx + ky * ky);
  const farX = (qx * kx + qy * ky) * byK;
  const farY = (qy * kx - qx * ky) * byK;
  const byQ = 1 / (qx * qx + qy * qy);
  const nearX = (zx * qx + zy * qy) * byQ;
  const nearY = (zy * qx - zx * qy) * byQ;
  const far = reachOf(farX, farY);
  const near = reachOf(nearX, nearY);
  // A root at infinity comes out as Infinity or NaN, and neither is smaller.
  let reach = WIDEST;
  if (far < reach) reach = far;
  if (near < reach) reach = near;
  return reach;
}

/** Half-axis 5: beyond it an ellipse gains less by faster convergence than it loses by a larger bound. */
const WIDEST = 49;

function reachOf(x: number, y: number): number {
  const xx = x * x;
  const yy = y * y;
  const re = xx - yy - 1;
  const im = 2 * x * y;
  return xx + yy + Math.sqrt(re * re + im * im);
}
