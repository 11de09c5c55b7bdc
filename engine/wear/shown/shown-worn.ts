import type { Form, Part } from '../../form/form.ts';
import { placeAt, triangleNormal } from '../../geometry/space.ts';
import { smoothNormals } from '../../render/smooth-normals.ts';
import type { Stand } from '../stand.ts';
import type { Worn } from '../worn.ts';

/** Points and triangles that are drawn, wound so that normals point away from the body; one normal at each point. */
export interface ShownSurface {
  readonly points: Float64Array;
  readonly triangles: Uint32Array;
  readonly normals: Float32Array;
}

/** A worn garment made ready to be shown, from whatever side. */
export interface ShownWorn {
  readonly worn: Worn;
  /** Its triangles are those of the sheet, in their order. */
  readonly cloth: ShownSurface;
  readonly body: ShownSurface & { readonly parts: readonly Part[] };
  /** It has sleeves: else arms would hide what they hang beside. */
  readonly sleeved: boolean;
  readonly levels: Stand['levels'];
}

/** The form is shown so much slimmer than it is, mm: the sides of triangles of cloth cut across its roundings. */
const SLIMMER = 3;

/** A garment that hangs, and the form it hangs on, as triangles to be drawn (mm): all of them wound to be seen from outside. */
export function shownWorn({ surface }: Pick<Form, 'surface'>, worn: Worn, stand: Stand): ShownWorn {
  const triangles = outwardTriangles(worn, stand);
  const cloth = { points: worn.x, triangles, normals: smoothNormals({ points: worn.x, triangles }) };
  const normals = smoothNormals(surface);
  const points = surface.points.map((at, k) => at - SLIMMER * (normals[k] as number));
  const body = { points, triangles: surface.triangles, normals, parts: surface.parts };
  const sleeved = worn.sewn.panels.some(({ panel }) => /\bsleeve\b/.test(panel.name));
  return { worn, cloth, body, sleeved, levels: stand.levels };
}

/** The triangles of a worn sheet, those of each panel turned round where most of them look at the body. */
function outwardTriangles({ sewn, x }: Worn, stand: Stand): Uint32Array {
  const triangles = Uint32Array.from(sewn.sheet.triangles);
  const out = new Float64Array(4);
  for (const { triangles: own } of sewn.panels) {
    const [first, end] = [3 * own[0], 3 * (own[0] + own[1])];
    let outward = 0;
    for (let t = first; t < end; t += 3) {
      const [a, b, c] = [triangles[t] as number, triangles[t + 1] as number, triangles[t + 2] as number];
      stand.obstacle(...placeAt(x, a), out);
      const normal = triangleNormal(x, a, b, c);
      for (let k = 0; k < 3; k++) outward += (normal[k] as number) * (out[k + 1] as number);
    }
    if (outward > 0) continue;
    for (let t = first; t < end; t += 3) {
      const second = triangles[t + 1] as number;
      triangles[t + 1] = triangles[t + 2] as number;
      triangles[t + 2] = second;
    }
  }
  return triangles;
}
