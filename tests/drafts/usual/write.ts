import { writeFileSync } from 'node:fs';
import { usualOver } from './usual-over.ts';

/** Writes where the unknowns of the drafts' sketches usually come to lie: `npm run usual`. */
for (const front of ['gathered', 'plain', 'armhole', 'trial'] as const)
  writeFileSync(
    new URL(`../../../drafts/usual-${front}.json`, import.meta.url),
    `${JSON.stringify(usualOver(front), undefined, 2)}\n`,
  );
