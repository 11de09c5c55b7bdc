/*
 * What is read from beside the program. It runs from the sources, in `cli`, or built, in `.dist`: both lie in the package, equally
 * deep, so from here, and from no folder below, one way leads there in both.
 */

/** Where a file of the package lies, told from its root. */
export const inPackage = (path: string): URL => new URL(`../${path}`, import.meta.url);

/** Where a part of the program lies that is started or read by itself: among the sources, or as it was built. */
export const besideProgram = (file: string): URL => new URL(`./${file}`, import.meta.url);
