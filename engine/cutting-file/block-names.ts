import type { Piece } from '../pattern/piece.ts';

/** R12 takes names of no more letters. */
const MOST = 31;

/** Capital letters, figures and hyphens: all that R12 allows and nobody misreads. */
const plain = (name: string): string =>
  name
    .toUpperCase()
    .replace(/[^A-Z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '');

/**
 * Names of blocks, each once: the number and name of the piece, after the size where there is one, such as
 * `38-C_2-SIDE-FRONT`. What has no plain letters in it is left out; a number at the end tells apart what would be alike.
 */
export function blockNames(
  pieces: readonly { readonly piece: Pick<Piece, 'name' | 'number'>; readonly size: string | undefined }[],
): readonly string[] {
  const taken = new Set<string>();
  return pieces.map(({ piece: { name, number }, size }) => {
    const own = [String(number), plain(name)].filter(Boolean).join('-');
    const whole = size === undefined ? own : `${plain(size) || 'SIZE'}_${own}`;
    for (let i = 1; ; i++) {
      const end = i === 1 ? '' : `_${i}`;
      const found = `${whole.slice(0, MOST - end.length).replace(/-+$/, '')}${end}`;
      if (taken.has(found)) continue;
      taken.add(found);
      return found;
    }
  });
}
