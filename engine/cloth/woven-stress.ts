/** What a woven cloth withstands, N/mm, and the share of it that threads keep which are pressed together. */
export interface WovenStiffness {
  readonly weft: number;
  readonly warp: number;
  readonly coupling: number;
  readonly shear: number;
  readonly pressed: number;
}

/**
 * Energy per area at Green's strains along weft and warp and their shear angle; writes the stresses along weft, warp and in
 * shear, and the stiffness of the first two (along weft, along warp, between them), from the beginning of `out`.
 *
 * Orthotropic (St Venant-Kirchhoff). Pressed together, a thread keeps only a share of its stiffness: the energy is then that of
 * the most favourable fold, min over folds p, q >= 0 of the energy at strains plus p, q (Pipkin, 1986, "The relaxed energy
 * density for isotropic elastic membranes", IMA Journal of Applied Mathematics 36, thread by thread), which leaves it convex and
 * smooth.
 */
export function writeStress(
  out: Float64Array,
  { weft: ku, warp: kv, coupling: c, shear, pressed }: WovenStiffness,
  u: number,
  v: number,
  angle: number,
): number {
  const fullU = ku * u + c * v;
  const fullV = c * u + kv * v;
  let d11 = ku;
  let d22 = kv;
  let d12 = c;
  if (fullU < 0 || fullV < 0) {
    const onlyV = kv - (c * c) / ku;
    const onlyU = ku - (c * c) / kv;
    d11 = 0;
    d12 = 0;
    d22 = 0;
    if (fullU < 0 && onlyV * v >= 0) d22 = onlyV;
    else if (fullV < 0 && onlyU * u >= 0) d11 = onlyU;
    const kept = 1 - pressed;
    d11 = kept * d11 + pressed * ku;
    d12 = kept * d12 + pressed * c;
    d22 = kept * d22 + pressed * kv;
  }
  const su = d11 * u + d12 * v;
  const sv = d12 * u + d22 * v;
  out[0] = su;
  out[1] = sv;
  out[2] = shear * angle;
  out[3] = d11;
  out[4] = d12;
  out[5] = d22;
  return (su * u + sv * v + shear * angle * angle) / 2;
}
