import type { SewingStep } from '../../pattern/sewing.ts';

/** Where the numbers of a sewing order come from: each source once, in the order in which they are first named. */
export const sourcesOf = (steps: readonly SewingStep[]): readonly string[] => [
  ...new Set(steps.flatMap(({ amounts = [] }) => amounts.flatMap(({ source }) => source ?? []))),
];

/** The sign that stands behind a number, and before its source at the end of the sheet. */
export const sourceSign = (sources: readonly string[], source: string): string =>
  `[${sources.indexOf(source) + 1}]`;

/** The sources in one paragraph, each behind its sign. */
export const sourceWords = (sources: readonly string[]): string =>
  sources.map((source) => `${sourceSign(sources, source)} ${source}.`).join(' ');
