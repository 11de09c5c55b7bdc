/* For tests, which are checked; what it declares is run by Node as it stands. */

/** Writes the declarations of the importable package into a folder, which is emptied first. */
export function writeTypes(root: string, outdir: string): Promise<void>;

/** The declarations that the editor checks a draft against, by path. */
export function declarationsForEditor(types: string): Promise<Readonly<Record<string, string>>>;
