import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll } from 'vitest';

/** A folder for the files of one test file, gone when its tests are done. */
export interface TemporaryFolder {
  /** Where something of this name lies, or would lie. */
  readonly at: (name: string) => string;
  /** Writes a file there, and says where. */
  readonly file: (name: string, text: string) => Promise<string>;
}

export function temporaryFolder(): TemporaryFolder {
  let folder = '';
  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'bodkin-'));
  });
  afterAll(() => rm(folder, { recursive: true }));
  const at = (name: string): string => join(folder, name);
  return {
    at,
    file: async (name, text) => {
      await writeFile(at(name), text);
      return at(name);
    },
  };
}
