import { type MeasurementName, measurementNames } from './body.ts';

/** A measurement's name as it is spoken: `underBustGirth` is the under-bust girth. */
export const measurementWords = (name: MeasurementName): string => spoken.get(name) ?? inWords(name);

const inWords = (name: string): string =>
  name
    .replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)
    .replace(/^(under|upper) (bust|arm)/, '$1-$2');

const spoken: ReadonlyMap<string, string> = new Map(measurementNames.map((name) => [name, inWords(name)]));
