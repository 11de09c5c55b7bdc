import { readFileSync } from 'node:fs';
import type { Step } from '../../../engine/pattern/garment.ts';
import { drafted, shippedBody } from '../drafted.ts';
import { numbered, stepsUnder } from './steps-of.ts';

/** A drafting whose steps stand on the pages: a garment, how it is styled, and what was pinned. */
interface Drafting {
  readonly garment: string;
  readonly styling?: object;
  readonly fitting?: readonly object[];
}

/** Between them they take every step there is. */
const draftings: readonly Drafting[] = [
  { garment: 'dress' },
  { garment: 'skirt' },
  {
    garment: 'dress',
    styling: {
      inside: 'faced',
      sleeve: 'none',
      opening: 'side',
      hemSweep: 2600,
      skirtLength: 650,
      skirtLining: 'lined',
      insertFullness: 2,
      necklineFullness: 1.6,
    },
  },
  {
    garment: 'dress',
    styling: { shoulder: 'whole', front: 'plain', inside: 'faced', sleeve: 'none' },
  },
  ...['calf', 'ankle'].map((skirtTo) => ({ garment: 'skirt', styling: { skirtTo } })),
];

/** The steps of all draftings, for the leading lady. */
export function allSteps(): readonly (readonly Step[])[] {
  const lady = shippedBody('leading-lady');
  return draftings.map(({ garment, styling, fitting }) => {
    const body = fitting ? { ...lady, fitting } : lady;
    return drafted(garment, body, styling).garment.steps;
  });
}

const block = /^<!-- steps: (.+?) -->\n[\s\S]*?^<!-- end of steps -->$/gm;

/** The headings whose steps a page tells. */
export const headingsOn = (page: string): readonly string[] =>
  [...page.matchAll(block)].map(([, heading = '']) => heading);

/** A page with its steps as the drafts have them now, numbered through. */
export function rewritten(page: string, steps: readonly (readonly Step[])[]): string {
  let next = 1;
  return page.replace(block, (_, heading: string) => {
    const told = stepsUnder(heading, steps);
    const text = numbered(told, next);
    next += told.length;
    return `<!-- steps: ${heading} -->\n\n${text}\n\n<!-- end of steps -->`;
  });
}

/** The page of a folder of drafts. */
export const pageUrl = (folder: string): URL => new URL(`../../../drafts/${folder}README.md`, import.meta.url);

export const readPage = (folder: string): string => readFileSync(pageUrl(folder), 'utf8');
