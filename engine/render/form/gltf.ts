import { measurementWords } from '../../body/measurement-words.ts';
import type { Form } from '../../form/form.ts';
import { gltf, type Material, type Solid } from '../gltf.ts';

export const bodyMaterial: Material = { name: 'body', colour: [0.78, 0.69, 0.62] };

const tape: Material = { name: 'tape', colour: [0.55, 0.11, 0.35] };

/** The parts of a form as solids, each with its own points. */
export const formSolids = ({ surface }: Pick<Form, 'surface'>): readonly Solid[] =>
  surface.parts.map(({ name, firstPoint, points, firstTriangle, triangles }) => ({
    kind: 'surface',
    name,
    material: bodyMaterial.name,
    points: surface.points.subarray(3 * firstPoint, 3 * (firstPoint + points)),
    triangles: Array.from(
      surface.triangles.subarray(3 * firstTriangle, 3 * (firstTriangle + triangles)),
      (corner) => corner - firstPoint,
    ),
  }));

/** A form as binary glTF 2.0: a mesh for each part, a line for each tape under its name. */
export const formGltf = (form: Form): Uint8Array =>
  gltf(
    form.body,
    [
      ...formSolids(form),
      ...form.tapes.map(
        ({ measurement, points, closed }): Solid => ({
          kind: 'line',
          name: measurementWords(measurement),
          material: tape.name,
          points,
          closed,
        }),
      ),
    ],
    [bodyMaterial, tape],
  );
