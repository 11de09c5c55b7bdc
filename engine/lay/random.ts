/** Even numbers from 0 up to 1, the same for the same seed. */
export type Random = () => number;

/**
 * A small generator of 32 bits of state: a Weyl sequence, its bits mixed by the finaliser of MurmurHash3 (A. Appleby,
 * public domain, from memory). Plenty for choosing places; not for secrets.
 */
export function randomFrom(seed: number): Random {
  let state = seed | 0;
  return () => {
    state = (state + 0x9e3779b9) | 0;
    let h = state;
    h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
    h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
    return ((h ^ (h >>> 16)) >>> 0) / 4294967296;
  };
}
