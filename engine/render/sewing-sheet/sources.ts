import type { SewingStep } from '../../pattern/sewing.ts';
import { type Html, html } from './html.ts';

/** Where the numbers of a sewing order come from: each source once, in the order in which they are first named. */
export const sourcesOf = (steps: readonly SewingStep[]): readonly string[] => [
  ...new Set(steps.flatMap(({ amounts = [] }) => amounts.flatMap(({ source }) => source ?? []))),
];

/** The sign that stands behind a number, and before its source at the end of the page. */
export const sourceSign = (sources: readonly string[], source: string): string =>
  `[${sources.indexOf(source) + 1}]`;

/** The list of sources at the end of the page. */
export const sourceList = (sources: readonly string[]): Html =>
  html(
    'p',
    { class: 'source' },
    sources.map((source) => `${sourceSign(sources, source)} ${source}. `),
  );
