import { filesJoined } from '../../../draft-files.ts';
import type { Coding } from './own.ts';

/** No draft is longer, bytes; of a longer file nothing is read. */
const longest = 4_000_000;

/** What is done with a file in which a draft is said to be: it is shown, and not run before somebody says so. */
export async function openDraft(file: File): Promise<Coding> {
  const of = { kind: 'own', name: file.name } as const;
  const read = file.size > longest ? undefined : await file.text().catch(() => undefined);
  const text =
    read ??
    `// ${file.name} ${read === undefined && file.size > longest ? 'is too large for a draft' : 'cannot be read'}.\n`;
  const original = Object.fromEntries(filesJoined(text, file.name).map((each) => [each.name, each.text]));
  const [first = ''] = Object.keys(original);
  return { does: 'begin', of, original, file: first, strange: true };
}
