import { measurementWords } from '../../body/measurement-words.ts';
import type { Form, Part, Surface } from '../../form/form.ts';

/** glTF counts in metres. */
const METRE = 1000;

const [FLOAT, UNSIGNED_SHORT] = [5126, 5123];
const [VERTICES, INDICES] = [34962, 34963];
const [LINE_LOOP, LINE_STRIP, TRIANGLES] = [2, 3, 4];

/** A piece of the binary part: what its numbers are, and the bytes. */
interface Stretch {
  readonly bytes: Uint8Array;
  readonly target: number;
  readonly accessor: Readonly<Record<string, unknown>>;
}

/**
 * A form as binary glTF 2.0 (Khronos Group, 2021): a mesh for each part with smooth normals, a line for each tape under its
 * name. y up and z forward, as there; metres.
 */
export function formGltf(form: Form): Uint8Array {
  const stretches: Stretch[] = [];
  const meshes: object[] = [];
  const put = (stretch: Stretch): number => stretches.push(stretch) - 1;
  for (const part of form.surface.parts) {
    const { points, normals, corners } = partNumbers(form.surface, part);
    const attributes = { POSITION: put(vectors(points, true)), NORMAL: put(vectors(normals, false)) };
    const indices = put({
      bytes: new Uint8Array(corners.buffer),
      target: INDICES,
      accessor: { componentType: UNSIGNED_SHORT, count: corners.length, type: 'SCALAR' },
    });
    meshes.push({ name: part.name, primitives: [{ attributes, indices, material: 0, mode: TRIANGLES }] });
  }
  for (const { measurement, points, closed } of form.tapes) {
    const at = Float32Array.from(points.flat(), (value) => value / METRE);
    meshes.push({
      name: measurementWords(measurement),
      primitives: [
        {
          attributes: { POSITION: put(vectors(at, true)) },
          material: 1,
          mode: closed ? LINE_LOOP : LINE_STRIP,
        },
      ],
    });
  }
  let offset = 0;
  const bufferViews = stretches.map(({ bytes, target }) => {
    const view = { buffer: 0, byteOffset: offset, byteLength: bytes.length, target };
    offset += padded(bytes.length);
    return view;
  });
  const binary = new Uint8Array(offset);
  for (const [i, { bytes }] of stretches.entries()) binary.set(bytes, bufferViews[i]?.byteOffset ?? 0);
  const colour = (r: number, g: number, b: number) => ({
    pbrMetallicRoughness: { baseColorFactor: [r, g, b, 1], metallicFactor: 0, roughnessFactor: 0.9 },
  });
  const json = {
    asset: { version: '2.0', generator: 'bodkin' },
    scene: 0,
    scenes: [{ name: form.body, nodes: meshes.map((_, i) => i) }],
    nodes: meshes.map((mesh, i) => ({ name: (mesh as { readonly name: string }).name, mesh: i })),
    meshes,
    materials: [
      { name: 'body', ...colour(0.78, 0.69, 0.62) },
      { name: 'tape', ...colour(0.55, 0.11, 0.35) },
    ],
    accessors: stretches.map(({ accessor }, bufferView) => ({ bufferView, ...accessor })),
    bufferViews,
    buffers: [{ byteLength: binary.length }],
  };
  return container(new TextEncoder().encode(JSON.stringify(json)), binary);
}

const padded = (length: number): number => Math.ceil(length / 4) * 4;

function vectors(values: Float32Array, bounds: boolean): Stretch {
  const [min, max] = [
    [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY],
    [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY],
  ];
  for (const [i, value] of values.entries()) {
    min[i % 3] = Math.min(min[i % 3] as number, value);
    max[i % 3] = Math.max(max[i % 3] as number, value);
  }
  return {
    bytes: new Uint8Array(values.buffer),
    target: VERTICES,
    accessor: {
      componentType: FLOAT,
      count: values.length / 3,
      type: 'VEC3',
      ...(bounds ? { min, max } : {}),
    },
  };
}

/** A part's own points, their normals (sums of those of the faces, by area) and its triangles. */
function partNumbers(
  { points, triangles }: Surface,
  { firstPoint, points: count, firstTriangle, triangles: faces }: Part,
) {
  const own = Float32Array.from(
    points.subarray(3 * firstPoint, 3 * (firstPoint + count)),
    (value) => value / METRE,
  );
  const corners = Uint16Array.from(
    triangles.subarray(3 * firstTriangle, 3 * (firstTriangle + faces)),
    (corner) => corner - firstPoint,
  );
  const sums = new Float64Array(3 * count);
  for (let t = 0; t < corners.length; t += 3) {
    const [a, b, c] = [
      3 * (corners[t] as number),
      3 * (corners[t + 1] as number),
      3 * (corners[t + 2] as number),
    ];
    const from = 3 * firstPoint;
    const side = (to: number, k: number): number =>
      (points[from + to + k] as number) - (points[from + a + k] as number);
    const normal = [0, 1, 2].map((k) => {
      const [l, m] = [(k + 1) % 3, (k + 2) % 3];
      return side(b, l) * side(c, m) - side(b, m) * side(c, l);
    });
    for (const corner of [a, b, c])
      for (let k = 0; k < 3; k++) sums[corner + k] = (sums[corner + k] as number) + (normal[k] as number);
  }
  const normals = new Float32Array(3 * count);
  for (let i = 0; i < sums.length; i += 3) {
    const length = Math.hypot(sums[i] as number, sums[i + 1] as number, sums[i + 2] as number) || 1;
    for (let k = 0; k < 3; k++) normals[i + k] = (sums[i + k] as number) / length;
  }
  return { points: own, normals, corners };
}

/** The GLB container: a header and two chunks, each filled up to whole words. */
function container(json: Uint8Array, binary: Uint8Array): Uint8Array {
  const [jsonLength, binaryLength] = [padded(json.length), padded(binary.length)];
  const whole = new Uint8Array(12 + 8 + jsonLength + 8 + binaryLength);
  const view = new DataView(whole.buffer);
  const word = (at: number, value: number): void => view.setUint32(at, value, true);
  word(0, 0x46546c67);
  word(4, 2);
  word(8, whole.length);
  word(12, jsonLength);
  word(16, 0x4e4f534a);
  whole.fill(0x20, 20 + json.length, 20 + jsonLength);
  whole.set(json, 20);
  word(20 + jsonLength, binaryLength);
  word(24 + jsonLength, 0x004e4942);
  whole.set(binary, 28 + jsonLength);
  return whole;
}
