import { type ChildProcess, fork } from 'node:child_process';
import { once } from 'node:events';
import { existsSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'esbuild';

/** Where this checkout lies. */
export const here = new URL('../../', import.meta.url).pathname;

/** What drafting a garment for a body and checking it takes, milliseconds of a processor. */
export interface Spent {
  /** Of the thread that drafts. */
  readonly own: number;
  /** With all that V8 does on threads beside it. */
  readonly all: number;
}

/** A checkout that drafts in a process of its own, which V8 runs as the program of that checkout asks it to for many bodies. */
export interface DraftsApart {
  readonly garments: readonly string[];
  readonly time: (garment: string, body: unknown) => Promise<Spent>;
  readonly end: () => Promise<void>;
}

/** Starts drafting by the checkout in a folder, as it is installed, in one file: tsx gives every function its name as the program runs, which costs. */
export async function draftsApart(folder: string): Promise<DraftsApart> {
  const out = await mkdtemp(join(tmpdir(), 'bodkin-bench-'));
  const outfile = join(out, 'drafts.mjs');
  await build({
    stdin: { contents: drafting(folder), resolveDir: folder },
    bundle: true,
    platform: 'node',
    format: 'esm',
    outfile,
    banner: {
      js: `import { createRequire as requirer } from 'node:module'; const require = requirer(import.meta.url);`,
    },
  });
  const child = fork(outfile, { execArgv: [] });
  const garments: readonly string[] = await said(child);
  return {
    garments,
    time: (garment, body) => {
      child.send({ garment, body });
      return said(child);
    },
    end: async () => {
      child.disconnect();
      await rm(out, { recursive: true });
    },
  };
}

/** A program that says its garments, and then drafts the one it is asked for. */
function drafting(folder: string): string {
  const settings = join(folder, 'cli/v8-settings.js');
  const sooner = join(folder, 'cli/many-bodies/compile-sooner.ts');
  const from = (path: string): string => JSON.stringify(path);
  return [
    existsSync(settings) ? `import ${from(settings)};` : '',
    existsSync(sooner) ? `import { compileSooner } from ${from(sooner)}; compileSooner();` : '',
    `import { garments } from ${from(join(folder, 'drafts/garments.ts'))};`,
    `import { evaluate } from ${from(join(folder, 'engine/evaluate.ts'))};`,
    `import { ownTime } from ${from(join(here, 'tests/bench/own-time.ts'))};`,
    `const named = new Map(garments.map((draft) => [draft.name, draft]));`,
    `process.on('message', ({ garment, body }) => {`,
    `  const start = process.cpuUsage();`,
    `  const startOwn = ownTime();`,
    `  evaluate(named.get(garment), body);`,
    `  const own = ownTime() - startOwn;`,
    `  const { user, system } = process.cpuUsage(start);`,
    `  process.send({ own, all: (user + system) / 1000 });`,
    `});`,
    `process.send([...named.keys()]);`,
  ].join('\n');
}

async function said<Words>(child: ChildProcess): Promise<Words> {
  const [words] = await once(child, 'message');
  return words;
}
