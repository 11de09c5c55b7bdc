import type { Spatial } from '../geometry/space.ts';
import { smoothNormals } from './smooth-normals.ts';

/** glTF counts in metres. */
const METRE = 1000;

const [FLOAT, UNSIGNED_SHORT, UNSIGNED_INT] = [5126, 5123, 5125];
const [VERTICES, INDICES] = [34962, 34963];
const [LINE_LOOP, LINE_STRIP, TRIANGLES] = [2, 3, 4];

/** Points that a corner of a triangle can be told from in two bytes; the last number has a meaning of its own. */
const MOST_IN_SHORT = 65535;

/** Triangles or a line in space, under the name of what they are; x to the wearer's left, y up, z forward, mm. */
export type Solid =
  | {
      readonly kind: 'surface';
      readonly name: string;
      readonly material: string;
      readonly points: Float64Array;
      readonly triangles: ArrayLike<number>;
    }
  | {
      readonly kind: 'line';
      readonly name: string;
      readonly material: string;
      readonly points: readonly Spatial[];
      readonly closed: boolean;
    };

/** What a solid looks to be made of: red, green and blue from 0 to 1, and whether it is seen from behind too, as cloth is. */
export interface Material {
  readonly name: string;
  readonly colour: readonly [number, number, number];
  readonly bothSides?: true;
}

/** A piece of the binary part: what its numbers are, and the bytes. */
interface BufferStretch {
  readonly bytes: Uint8Array;
  readonly target: number;
  readonly accessor: Readonly<Record<string, unknown>>;
}

/**
 * Solids as binary glTF 2.0 (Khronos Group, 2021): a mesh for each under its name, surfaces with smooth normals. y up and z
 * forward, as there; metres.
 */
export function gltf(scene: string, solids: readonly Solid[], materials: readonly Material[]): Uint8Array {
  const stretches: BufferStretch[] = [];
  const put = (stretch: BufferStretch): number => stretches.push(stretch) - 1;
  const meshes = solids.map((solid) => {
    const material = materials.findIndex(({ name }) => name === solid.material);
    const points = solid.kind === 'line' ? solid.points.flat() : solid.points;
    const position = put(
      vectors(
        Float32Array.from(points, (value) => value / METRE),
        true,
      ),
    );
    if (solid.kind === 'line') {
      const mode = solid.closed ? LINE_LOOP : LINE_STRIP;
      return { name: solid.name, primitives: [{ attributes: { POSITION: position }, material, mode }] };
    }
    const attributes = { POSITION: position, NORMAL: put(vectors(smoothNormals(solid), false)) };
    const indices = put(corners(solid.triangles, solid.points.length / 3));
    return { name: solid.name, primitives: [{ attributes, indices, material, mode: TRIANGLES }] };
  });
  let offset = 0;
  const bufferViews = stretches.map(({ bytes, target }) => {
    const view = { buffer: 0, byteOffset: offset, byteLength: bytes.length, target };
    offset += padded(bytes.length);
    return view;
  });
  const binary = new Uint8Array(offset);
  for (const [i, { bytes }] of stretches.entries()) binary.set(bytes, bufferViews[i]?.byteOffset ?? 0);
  const json = {
    asset: { version: '2.0', generator: 'bodkin' },
    scene: 0,
    scenes: [{ name: scene, nodes: meshes.map((_, i) => i) }],
    nodes: meshes.map(({ name }, i) => ({ name, mesh: i })),
    meshes,
    materials: materials.map(({ name, colour, bothSides }) => ({
      name,
      pbrMetallicRoughness: { baseColorFactor: [...colour, 1], metallicFactor: 0, roughnessFactor: 0.9 },
      ...(bothSides && { doubleSided: true }),
    })),
    accessors: stretches.map(({ accessor }, bufferView) => ({ bufferView, ...accessor })),
    bufferViews,
    buffers: [{ byteLength: binary.length }],
  };
  return container(new TextEncoder().encode(JSON.stringify(json)), binary);
}

const padded = (length: number): number => Math.ceil(length / 4) * 4;

function vectors(values: Float32Array, bounds: boolean): BufferStretch {
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

function corners(triangles: ArrayLike<number>, points: number): BufferStretch {
  const short = points < MOST_IN_SHORT;
  const numbers = short ? Uint16Array.from(triangles) : Uint32Array.from(triangles);
  return {
    bytes: new Uint8Array(numbers.buffer),
    target: INDICES,
    accessor: {
      componentType: short ? UNSIGNED_SHORT : UNSIGNED_INT,
      count: numbers.length,
      type: 'SCALAR',
    },
  };
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
