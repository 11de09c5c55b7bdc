/** A file that can be taken away. */
export interface TakenFile {
  readonly name: string;
  readonly text: string;
}

/** The same where it is no text. */
export interface TakenBytes {
  readonly name: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

/** Files by name as files to be taken. */
export const takenBytes = (
  files: Iterable<readonly [string, string | Uint8Array]>,
): readonly TakenBytes[] => {
  const encoder = new TextEncoder();
  return Array.from(files, ([name, content]) => ({
    name,
    bytes: typeof content === 'string' ? encoder.encode(content) : new Uint8Array(content),
  }));
};
