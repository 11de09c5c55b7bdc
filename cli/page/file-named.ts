/** The file's own name, without the folders that it lies in. */
export const fileNamed = (path: string): string => path.split(/[\\/]/).at(-1) ?? path;
