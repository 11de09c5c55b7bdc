/** A name as part of a file's name: letters, figures and hyphens. */
export const fileWord = (name: string): string =>
  name
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '');
