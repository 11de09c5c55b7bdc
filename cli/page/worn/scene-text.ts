import type { WornScene } from './scene.ts';

/*
 * A scene as text: JSON in which rows of numbers are the bytes they have in memory, lowest first, in base64 (RFC 4648).
 */

const rows = { f32: Float32Array, u32: Uint32Array } as const;

type RowKind = keyof typeof rows;

/** Bytes that are turned into letters at once. */
const AT_ONCE = 0x8000;

export const sceneText = (scene: WornScene): string =>
  JSON.stringify(scene, (_, value: unknown) =>
    value instanceof Float32Array
      ? { f32: lettersOf(value) }
      : value instanceof Uint32Array
        ? { u32: lettersOf(value) }
        : value,
  );

/** The scene that `sceneText` wrote. */
export const sceneOf = (text: string): WornScene =>
  JSON.parse(text, (_, value: unknown) => rowOf(value) ?? value);

function rowOf(value: unknown): Float32Array | Uint32Array | undefined {
  if (typeof value !== 'object' || value === null) return undefined;
  const [[kind, letters] = [], ...rest] = Object.entries(value);
  if (rest.length > 0 || typeof letters !== 'string' || !(kind === 'f32' || kind === 'u32')) return undefined;
  const bytes = Uint8Array.from(atob(letters), (letter) => letter.charCodeAt(0));
  return new rows[kind satisfies RowKind](bytes.buffer);
}

function lettersOf({ buffer, byteOffset, byteLength }: Float32Array | Uint32Array): string {
  const bytes = new Uint8Array(buffer, byteOffset, byteLength);
  let letters = '';
  for (let at = 0; at < bytes.length; at += AT_ONCE)
    letters += String.fromCharCode(...bytes.subarray(at, at + AT_ONCE));
  return btoa(letters);
}
