/** The part of Khronos' validator that the tests use; it brings no types. */
declare module 'gltf-validator' {
  interface Verdict {
    readonly issues: { readonly messages: readonly unknown[] };
    readonly info: { readonly version: string; readonly totalTriangleCount: number };
  }
  export function validateBytes(bytes: Uint8Array): Promise<Verdict>;
}
