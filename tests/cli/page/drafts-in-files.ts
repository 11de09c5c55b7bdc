import { readdirSync, readFileSync } from 'node:fs';
import { parse } from 'yaml';
import type { DraftFiles } from '../../../cli/own-draft/draft-files.ts';
import { linked } from '../../../cli/page/requests/link.ts';
import { type LinkedDraft, runDraft } from '../../../cli/page/views/code/run-draft.ts';
import type { Sources } from '../../../cli/page/views/code/sources.ts';

/* The source of the drafts as the build leaves it for the page, and how it is run there. */

const root = new URL('../../../', import.meta.url).pathname;
const text = (file: string): string => readFileSync(root + file, 'utf8');

export const ladyBody = parse(text('measurements/leading-lady.yaml'));

const own = ['index.ts', 'garments.ts', 'garments-by-name.ts', 'engine-parts.ts', 'usual.ts'];

export const sources: Sources = {
  files: Object.fromEntries(
    readdirSync(`${root}drafts`, { recursive: true, encoding: 'utf8' })
      .filter((file) => file.endsWith('.ts') && !own.includes(file))
      .map((file) => [file, text(`drafts/${file}`)]),
  ),
  garments: {
    dress: './dress.ts',
    skirt: './skirt/skirt.ts',
    trial: './trial/trial.ts',
    bodice: './whole-bodice.ts',
  },
  belt: '',
};

/** Runs linked files here, as the worker of the frame does there; they answer its questions. */
export function run(files: DraftFiles): ReturnType<typeof runDraft> {
  const { script, problem } = linked({ kind: 'link', key: '1', asks: 'editor', files });
  if (script === undefined) throw new Error(problem?.message);
  const self: LinkedDraft = {};
  new Function('self', script)(self);
  return runDraft(self);
}

/** The belt of the lesson, as a draft of one's own imports what it needs. */
export const belt = text('tests/drafts/belt.ts').replace(/from '\.\.\/\.\.\/[^']+'/g, "from 'bodkin'");
