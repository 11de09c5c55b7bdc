/** The files of a linked script, each with the line of the script on which it begins, from 1. */
export type FileStarts = readonly (readonly [file: string, line: number])[];

/** The place in a draft's own files of a line of its script. */
export function placeOfLine(
  line: number,
  starts: FileStarts,
): { readonly file: string; readonly line: number } | undefined {
  const found = starts.findLast(([, start]) => start <= line);
  return found && { file: found[0], line: line - found[1] + 1 };
}
