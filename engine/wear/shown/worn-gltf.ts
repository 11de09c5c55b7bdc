import type { Form } from '../../form/form.ts';
import { placeAt } from '../../geometry/space.ts';
import { bodyMaterial, formSolids } from '../../render/form/gltf.ts';
import { gltf, type Material, type Solid } from '../../render/gltf.ts';
import { alongChain, type SewnPanel } from '../sewn.ts';
import type { Worn } from '../worn.ts';
import { panelTitle } from './grain-lines.ts';

const seam: Material = { name: 'seam', colour: [0.1, 0.1, 0.1] };

/** Colours that the colour-blind tell apart (Okabe & Ito, 2008), light enough for a seam to be seen on them. */
const cloths: readonly Material[] = (
  [
    [0.34, 0.71, 0.91],
    [0.9, 0.62, 0],
    [0, 0.62, 0.45],
    [0.94, 0.89, 0.26],
    [0.8, 0.47, 0.65],
  ] as const
).map((colour, i) => ({ name: `cloth ${i + 1}`, colour, bothSides: true }));

/** A worn garment as binary glTF 2.0: the body's parts, a mesh for each panel and a line for each seam, all by their names. */
export function wornGltf(form: Pick<Form, 'surface'>, { x, sewn }: Worn, title: string): Uint8Array {
  const names = [...new Set(sewn.panels.map(({ panel }) => panel.name))];
  const panels = sewn.panels.map((panel) => panelSolid(panel, x, names.indexOf(panel.panel.name)));
  const seams = sewn.seams.map(
    ({ name, a }): Solid => ({
      kind: 'line',
      name: `seam: ${name}`,
      material: seam.name,
      points: alongChain(sewn, a).map((p) => placeAt(x, p)),
      closed: false,
    }),
  );
  return gltf(title, [...formSolids(form), ...panels, ...seams], [bodyMaterial, seam, ...cloths]);
}

/** Drawn y downward, a panel's triangles are seen from the wrong side on the left; on the right their mirror image is not. */
function panelSolid(sewnPanel: SewnPanel, x: Float64Array, number: number): Solid {
  const { mesh, points } = sewnPanel;
  return {
    kind: 'surface',
    name: panelTitle(sewnPanel),
    material: (cloths[number % cloths.length] as Material).name,
    points: Float64Array.from([...points].flatMap((p) => placeAt(x, p))),
    triangles: mesh.triangles,
  };
}
