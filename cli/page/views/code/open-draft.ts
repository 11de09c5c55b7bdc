import { filesJoined, type JoinedFile } from '../../../own-draft/draft-files.ts';
import type { Coding } from './coding.ts';

/** No draft is longer (bytes) or of more files: the dress is 0.6 MB in 177. Of what is more nothing is read. */
const longest = 1_500_000;
const mostFiles = 1000;

/** What is done with a file in which a draft is said to be: it is shown, and not run before somebody says so. */
export async function openDraft(file: File): Promise<Coding> {
  const of = { kind: 'own', name: file.name } as const;
  const begin = (files: readonly JoinedFile[]): Coding => {
    const original = Object.fromEntries(files.map(({ name, text }) => [name, text]));
    const [first = ''] = Object.keys(original);
    return { does: 'begin', of, original, file: first, strange: true };
  };
  const refused = (why: string): Coding => begin(filesJoined(`// ${file.name} ${why}.\n`, file.name));
  if (file.size > longest) return refused('is too large for a draft');
  const text = await file.text().catch(() => undefined);
  if (text === undefined) return refused('cannot be read');
  const files = filesJoined(text, file.name);
  return files.length > mostFiles ? refused('has too many files for a draft') : begin(files);
}
