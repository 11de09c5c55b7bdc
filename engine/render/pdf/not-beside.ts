/**
 * Says what to install where a library that PDFs alone need is not beside the package. That a failed import is caught lets
 * bundlers build without these libraries whoever writes no PDF.
 */
export function notBeside(cause: unknown): never {
  throw new Error('A PDF needs pdfkit, fontkit and any-ascii beside bodkin: install them.', { cause });
}
