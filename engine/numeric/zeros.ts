/** How many numbers are asked of the system at once. */
const BLOCK = 8192;

let places = new Int32Array(0);
let placesUsed = 0;

let block = new Float64Array(0);
let used = 0;

/**
 * An array of zeros. Small ones are cut from blocks that many share: with memory of its own each would take ten times as
 * long to come by, and a sketch of some ten parts needs hundreds. A block goes when the last of its arrays does.
 */
export function zeros(count: number): Float64Array<ArrayBuffer> {
  if (count > BLOCK / 4) return new Float64Array(count);
  if (used + count > block.length) {
    block = new Float64Array(BLOCK);
    used = 0;
  }
  used += count;
  return block.subarray(used - count, used);
}

/** The same for places: whole numbers. */
export function zeroPlaces(count: number): Int32Array<ArrayBuffer> {
  if (count > BLOCK / 4) return new Int32Array(count);
  if (placesUsed + count > places.length) {
    places = new Int32Array(BLOCK);
    placesUsed = 0;
  }
  placesUsed += count;
  return places.subarray(placesUsed - count, placesUsed);
}
