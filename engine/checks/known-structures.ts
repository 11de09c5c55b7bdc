import { isSameStructure, type Structure } from './structure.ts';

/** So many structures are kept; a garment has some three, by where the notches of its armholes come to lie. */
const MOST = 24;

/** Structures in which nothing was found, the latest first. */
const sound: Structure[] = [];

/*
 * Whether everything is named, sewn, notched and counted hangs on how a garment is put together and not on anybody's measures. The
 * sizes of a garment are nearly all put together alike, so what was once found in order is not looked through again: a
 * fourteenth of a dress. Only that nothing was found is kept, and nothing is told otherwise for it.
 */

/** Whether a garment of this structure was looked through before, and nothing found. */
export function isKnownSound(structure: Structure): boolean {
  const place = sound.findIndex((known) => isSameStructure(known, structure));
  if (place > 0) sound.unshift(...sound.splice(place, 1));
  return place >= 0;
}

/** Notes that nothing was found in a garment of this structure. */
export function noteSound(structure: Structure): void {
  sound.unshift(structure);
  sound.length = Math.min(sound.length, MOST);
}
