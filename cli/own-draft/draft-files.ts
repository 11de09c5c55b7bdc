/*
 * A draft of several files kept in one, so that it can be handed on, drafted from with `--draft`, and opened in the page again.
 * Each file begins with a line that names it; the first exports the draft. What a file imports that is not among them is the
 * program's own: a draft's neighbours that were left as they were are simply not there, nor is the engine.
 */

/** The files of a draft by their names, relative to where the first lies; the first exports the draft. */
export type DraftFiles = Readonly<Record<string, string>>;

const heading = '// A Bodkin draft in several files; the first exports it.\n';
const naming = /^\/\/ ---- (\S+) ----$/gm;

/** Whether a text holds a draft of several files. */
export const isJoined = (text: string): boolean => text.startsWith(heading);

/** The files of a draft as one text; a draft of one file is that file. */
export function joinedFiles(files: DraftFiles): string {
  const all = Object.entries(files);
  const [only] = all;
  if (only && all.length === 1) return only[1];
  return heading + all.map(([name, text]) => `// ---- ${name} ----\n${text.replace(/\n?$/, '\n')}`).join('');
}

/** A file of such a text, and the line of the whole on which it begins, from 1. */
export interface JoinedFile {
  readonly name: string;
  readonly text: string;
  readonly line: number;
}

/** The files of a text that holds several; of any other text the one that it is, under `name`. */
export function filesJoined(text: string, name: string): readonly JoinedFile[] {
  if (!isJoined(text)) return [{ name, text, line: 1 }];
  const marks = [...text.matchAll(naming)];
  let [line, at] = [1, 0];
  return marks.map((mark, i): JoinedFile => {
    const begins = mark.index + mark[0].length + 1;
    line += text.slice(at, begins).split('\n').length - 1;
    at = begins;
    return { name: mark[1] ?? '', text: text.slice(begins, marks[i + 1]?.index ?? text.length), line };
  });
}

/** What an import means to a file of a draft: another of its files, or the program; nothing where it means neither. */
export function importedBy(
  file: string,
  specifier: string,
  names: ReadonlySet<string>,
): { readonly file: string } | 'program' | undefined {
  if (specifier === 'bodkin') return 'program';
  if (!/^\.\.?\//.test(specifier)) return undefined;
  const path = pathFrom(file, specifier);
  const found = [path, `${path}.ts`, `${path}.js`].find((each) => names.has(each));
  return found === undefined ? 'program' : { file: found };
}

/** A path from the place of a file, with a `..` for each step out of the folder that it lies in. */
function pathFrom(file: string, specifier: string): string {
  const parts = file.split('/').slice(0, -1);
  for (const part of specifier.split('/')) {
    if (part === '..' && parts.length > 0 && parts.at(-1) !== '..') parts.pop();
    else if (part !== '.') parts.push(part);
  }
  return parts.join('/');
}
