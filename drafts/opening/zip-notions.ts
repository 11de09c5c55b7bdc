import type { Notion } from '../../engine/pattern/garment.ts';
import type { OpeningStyling } from './choices.ts';
import { openingRules as rules } from './rules.ts';

/** What the allowances are stiffened with that a zip is set into. */
export const zipInterfacing = 'interfacing for the zip';

/** What an opening is closed by: a zip of this length (mm), what it is set into, and a hook and eye. */
export const zipNotions = ({ opening, zipKind }: OpeningStyling, length: number): readonly Notion[] => [
  {
    name: 'zip',
    count: 1,
    length,
    note: `${zipKind}, set into the ${opening === 'back' ? 'centre back' : 'left side'} seam`,
    got: 'singly',
  },
  {
    name: zipInterfacing,
    count: 2,
    length,
    note: `strips ${rules.zipStrip.value} mm wide, to be ironed on`,
    got: 'off interfacing',
  },
  { name: 'hook and eye', count: 1, length: 0, note: opening === 'back' ? 'above the zip' : 'at the waist' },
];
