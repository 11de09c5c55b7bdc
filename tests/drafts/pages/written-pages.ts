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

const whole = { shoulder: 'whole', front: 'plain', sleeve: 'plain' };

/** Between them they take every step there is, but for those of a fitting that the pages tell in prose. */
const draftings: readonly Drafting[] = [
  { garment: 'dress' },
  { garment: 'skirt' },
  { garment: 'trial' },
  {
    garment: 'dress',
    styling: {
      bustEase: 70,
      underBustDrop: 80,
      inside: 'faced',
      backNeckline: 'pointed',
      sleeve: 'long puff',
      hemElastic: 300,
      opening: 'side',
      hemSweep: 2600,
      skirtLength: 650,
      skirtLining: 'lined',
      insertFullness: 2,
      necklineFullness: 1.6,
    },
  },
  { garment: 'dress', styling: { sleeve: 'none' } },
  { garment: 'dress', styling: { ...whole, sleeve: 'none', inside: 'faced' } },
  { garment: 'dress', styling: { sleeveLength: 120 } },
  ...['round', 'pointed', 'sweetheart'].map((neckline) => ({
    garment: 'dress',
    styling: { ...whole, neckline },
  })),
  { garment: 'dress', styling: { ...whole, sleeveTo: 'wrist' } },
  { garment: 'dress', styling: { ...whole, sleeveTo: 'elbow', princess: 'armhole' } },
  { garment: 'dress', styling: { ...whole, sleeveLength: 160, princess: 'neckline' } },
  ...['calf', 'ankle'].map((skirtTo) => ({ garment: 'skirt', styling: { skirtTo } })),
  {
    garment: 'skirt',
    fitting: [{ 'raise bust point': 1 }, { 'round back': 1 }, { 'broad back': 1 }, { 'more upper arm': 2 }],
  },
  { garment: 'skirt', fitting: [{ 'lower bust point': 1 }, { 'narrow back': 1 }] },
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

/**
 * The headings whose steps a page tells. Behind "=" stand those whose steps go alike, so that one of them is told:
 * `<!-- steps: Skirt, side front = Skirt, side back -->`.
 */
export const headingsOn = (page: string): readonly string[] =>
  [...page.matchAll(block)].flatMap(([, headings = '']) => headings.split(' = '));

/** A page with its steps as the drafts have them now, numbered through. */
export function rewritten(page: string, steps: readonly (readonly Step[])[]): string {
  let next = 1;
  return page.replace(block, (_, headings: string) => {
    const [heading = ''] = headings.split(' = ');
    const told = stepsUnder(heading, steps);
    const text = numbered(told, next);
    next += told.length;
    return `<!-- steps: ${headings} -->\n\n${text}\n\n<!-- end of steps -->`;
  });
}

/** The page of a folder of drafts. */
export const pageUrl = (folder: string): URL =>
  new URL(`../../../drafts/${folder}README.md`, import.meta.url);

export const readPage = (folder: string): string => readFileSync(pageUrl(folder), 'utf8');
