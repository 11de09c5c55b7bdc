import { readdir } from 'node:fs/promises';

/** Pieces and cutting files of an earlier draft that still lie in a folder beside those just written: they are not of this garment. */
export async function earlierPieces(folder: string, written: Iterable<string>): Promise<readonly string[]> {
  const ours = new Set(written);
  const names = await readdir(folder);
  return names
    .filter((name) => /^(\d+-.+\.svg|cutting(-curves)?\.dxf)$/.test(name) && !ours.has(name))
    .sort();
}
