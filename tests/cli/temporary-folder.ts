import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, beforeEach } from 'vitest';
import { stringify } from 'yaml';
import { measurements } from '../engine/bib.ts';

/** A folder for the files of one test file, gone when its tests are done. */
export interface TemporaryFolder {
  /** Where something of this name lies, or would lie. */
  readonly at: (name: string) => string;
  /** Writes a file there, and says where. */
  readonly file: (name: string, text: string | Uint8Array) => Promise<string>;
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

/** What a command that drafts is given: a folder, a body's measurements in it, and where it may write. */
export interface CommandFolder {
  readonly folder: string;
  readonly body: string;
  /** Not there yet. */
  readonly out: string;
}

/** One that is new for every test, and gone after it. */
export function commandFolder(): CommandFolder {
  let folder = '';
  beforeEach(async () => {
    folder = await mkdtemp(join(tmpdir(), 'bodkin-'));
    await writeFile(join(folder, 'body.yaml'), stringify(measurements));
  });
  afterEach(() => rm(folder, { recursive: true }));
  return {
    get folder() {
      return folder;
    },
    get body() {
      return join(folder, 'body.yaml');
    },
    get out() {
      return join(folder, 'out');
    },
  };
}
