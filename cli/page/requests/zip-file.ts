import { zipSync } from 'fflate';
import type { TakenBytes } from '../taken-file.ts';

/** The earliest a ZIP knows, on every clock: the same files give the same bytes. */
const undated = new Date(1980, 0, 1);

/** Files as one ZIP (PKWARE APPNOTE 6.3.3). */
export const zipFile = (name: string, files: readonly TakenBytes[]): TakenBytes => ({
  name,
  bytes: new Uint8Array(
    zipSync(Object.fromEntries(files.map((file) => [file.name, file.bytes])), { mtime: undated }),
  ),
});
