import { readFileSync } from 'node:fs';
import { bodiceBands } from '../../../drafts/bodice/bands.ts';
import { insertBands } from '../../../drafts/insert/bands.ts';
import { notchBands } from '../../../drafts/notch-shapes.ts';
import { skirtBands } from '../../../drafts/skirt/bands.ts';
import { sleeveBands } from '../../../drafts/sleeve/bands.ts';
import { strapBands } from '../../../drafts/straps/bands.ts';
import type { SourcedBand } from '../../../engine/pattern/band-table.ts';

/** The bands of every draft, by what they are looked at on. */
export const bandTables: readonly (readonly [on: string, bands: Readonly<Record<string, SourcedBand>>])[] = [
  ['Bodice', bodiceBands],
  ['Insert', insertBands],
  ['Straps', strapBands],
  ['Sleeve', sleeveBands],
  ['Skirt', skirtBands],
  ['Notches', notchBands],
];

/** Digits are chosen as a cutter says them: a third is 0.33. */
const said = (value: number): string => String(Math.round(value * 100) / 100);

function limits({ low, high, unit }: SourcedBand): string {
  const as = unit === 'degrees' ? '°' : unit === 'mm' ? ' mm' : '';
  if (low === undefined) return `at most ${said(high ?? Number.NaN)}${as}`;
  if (high === undefined) return `at least ${said(low)}${as}`;
  return `${said(low)} to ${said(high)}${as}`;
}

/** The page of all bands: `npm run pages` writes it, and a test says when it is out of date. */
export function bandsPage(): string {
  const parts = bandTables.map(([on, bands]) => {
    const rows = Object.values(bands).map(
      (band) => `| ${band.name}${band.bound ? ' (bound)' : ''} | ${limits(band)} | ${band.source} |`,
    );
    return `## ${on}\n\n| figure | usual | source |\n|---|---|---|\n${rows.join('\n')}\n`;
  });
  return `# What a cutter looks at

Every figure that \`bodkin walk <garment> --body FILE --bands\` prints, with the limits between which it usually lies and on
whose word. Outside a bound the draft fails; outside any other band it is said, with what is usually the reason, and never
refused: two wishes may pull against each other on one body. This page is written by \`npm run pages\`.

${parts.join('\n')}`;
}

export const bandsUrl = new URL('../../../drafts/bands.md', import.meta.url);

export const readBandsPage = (): string => readFileSync(bandsUrl, 'utf8');
