import type { MeasurementName } from './body.ts';

/** A measurement's name as it is spoken: `underBustGirth` is the under-bust girth. */
export const measurementWords = (name: MeasurementName): string =>
  name
    .replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)
    .replace(/^(under|upper) (bust|arm)/, '$1-$2');
