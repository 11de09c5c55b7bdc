import type { DraftFiles } from '../../../own-draft/draft-files.ts';

/** Whose code it is: a garment's of the program, or a draft of one's own, by its file. */
export type CodeOf =
  | { readonly kind: 'garment'; readonly name: string }
  | { readonly kind: 'own'; readonly name: string };

/** Code as somebody wrote it. */
export interface WrittenCode {
  readonly of: CodeOf | undefined;
  /** The files as they were, the first exporting the draft. */
  readonly original: DraftFiles;
  /** Those that are otherwise now. */
  readonly changed: DraftFiles;
  /** It came in a file, and nobody has said yet that it may be run. */
  readonly strange: boolean;
}

/** The files as they are now. */
export const filesNow = ({ original, changed }: Pick<WrittenCode, 'original' | 'changed'>): DraftFiles => ({
  ...original,
  ...changed,
});

export const isSameDraft = (a: CodeOf | undefined, b: CodeOf | undefined): boolean =>
  a?.kind === b?.kind && a?.name === b?.name;

/** Whether it is anything else than the program's own. */
export const isOwnCode = ({ of, changed }: Pick<WrittenCode, 'of' | 'changed'>): boolean =>
  of?.kind === 'own' || Object.keys(changed).length > 0;

/** Whether two say the same; the program's own, unchanged, is nothing that was written. */
export function isSameCode(a: WrittenCode, b: WrittenCode): boolean {
  if (!isOwnCode(a) && !isOwnCode(b)) return true;
  if (!isSameDraft(a.of, b.of) || !areSameFiles(a.changed, b.changed)) return false;
  return a.of?.kind !== 'own' || areSameFiles(a.original, b.original);
}

function areSameFiles(a: DraftFiles, b: DraftFiles): boolean {
  if (a === b) return true;
  const names = Object.keys(a);
  return names.length === Object.keys(b).length && names.every((name) => a[name] === b[name]);
}

/** What code is known by: the same files have the same. */
export function codeKey({ of, original, changed }: WrittenCode): string {
  const known = keys.get(changed);
  if (known?.original === original && known.of === of) return known.key;
  const text = JSON.stringify([of, changed, of?.kind === 'own' ? original : 0]);
  const key = `${of?.name ?? ''} ${hashed(text, 0x811c9dc5)}${hashed(text, 0x01000193)}`;
  keys.set(changed, { of, original, key });
  return key;
}

const keys = new WeakMap<
  DraftFiles,
  { readonly of: CodeOf | undefined; readonly original: DraftFiles; readonly key: string }
>();

/** FNV-1a (Fowler, Noll, Vo; IETF draft-eastlake-fnv), 32 bits, of the units of a text. */
function hashed(text: string, begin: number): string {
  let hash = begin;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return (hash >>> 0).toString(36);
}
