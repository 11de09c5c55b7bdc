import { transform } from 'sucrase';
import { messageOf } from '../../../drafts/index.ts';
import { type DraftFiles, importedBy } from '../../own-draft/draft-files.ts';
import type { FileStarts } from '../views/code/script-lines.ts';

export interface LinkRequest {
  readonly kind: 'link';
  /** What the answer is known by. */
  readonly key: string;
  /** Who asks: the editor for what is written, or the views that are drawn by it. */
  readonly asks: 'editor' | 'views';
  readonly files: DraftFiles;
}

export interface LinkAnswer {
  readonly kind: 'linked';
  readonly key: string;
  readonly asks: LinkRequest['asks'];
  /** The files as one script, and where each begins: none where one of them cannot be read. */
  readonly script?: string;
  readonly starts?: FileStarts;
  readonly problem?: CodeProblem;
}

/** Something that is wrong with a draft's code, and where, as far as it is known. */
export interface CodeProblem {
  readonly message: string;
  readonly file?: string;
  /** From 1. */
  readonly line?: number;
}

/** What was made of a file that has not changed since. */
const made = new Map<string, { readonly text: string; readonly code: string }>();

/**
 * Makes one script of the files of a draft: types are left out, line for line, and each file becomes a function that is
 * handed what it imports (`views/code/run-draft.ts`). Nothing of it is run here.
 */
export function linked({ key, asks, files }: LinkRequest): LinkAnswer {
  const answer = { kind: 'linked', key, asks } as const;
  const names = new Set(Object.keys(files));
  const functions: string[] = [];
  for (const [file, text] of Object.entries(files)) {
    try {
      const code = stripped(file, text);
      const stray = strayImport(file, text, names);
      if (stray) return { ...answer, problem: stray };
      functions.push(`${JSON.stringify(file)}:function(exports,require){${code}\n}`);
    } catch (error) {
      return { ...answer, problem: syntaxProblem(file, error) };
    }
  }
  let line = 1;
  const starts = functions.map((text, i): FileStarts[number] => {
    const start = line;
    line += text.split('\n').length;
    return [Object.keys(files)[i] ?? '', start];
  });
  const script = `self.draftFiles={${functions.join(',\n')}};\nself.draftStarts=${JSON.stringify(starts)};\n`;
  return { ...answer, script, starts };
}

function stripped(file: string, text: string): string {
  const known = made.get(file);
  if (known?.text === text) return known.code;
  const { code } = transform(text, {
    transforms: ['typescript', 'imports'],
    disableESTransforms: true,
    production: true,
    // Nothing can be imported while code is run: it is to be told so, not answered by what is linked.
    preserveDynamicImport: true,
    filePath: file,
  });
  made.set(file, { text, code });
  return code;
}

/** An import that leads neither to another file of the draft nor to the program. */
function strayImport(file: string, text: string, names: ReadonlySet<string>): CodeProblem | undefined {
  for (const { 1: specifier = '', index } of text.matchAll(
    /^[ \t]*(?:import|export|\})[^'"\n]*from[ \t]+['"]([^'"\n]+)['"]/gm,
  ))
    if (importedBy(file, specifier, names) === undefined) {
      const line = text.slice(0, index).split('\n').length;
      const message = `A draft on the page imports from “bodkin” and its own files; there is no “${specifier}”.`;
      return { message, file, line };
    }
  return undefined;
}

/** Sucrase says where in its message, behind the file: “Error transforming skirt.ts: Unexpected token (3:7)”. */
function syntaxProblem(file: string, error: unknown): CodeProblem {
  const said = messageOf(error);
  const [, what = said, line] = /^(?:Error transforming [^:]*: )?(.*?)(?: \((\d+):\d+\))?$/s.exec(said) ?? [];
  return { message: `${what.replace(/\.?$/, '.')}`, file, ...(line ? { line: Number(line) } : {}) };
}
