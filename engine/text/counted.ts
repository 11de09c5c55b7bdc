/** So many of something, in words: `1 seam`, `3 seams`. */
export const counted = (count: number, one: string, many = `${one}s`): string =>
  `${count} ${count === 1 ? one : many}`;
