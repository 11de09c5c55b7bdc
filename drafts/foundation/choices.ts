import type { Choice } from '../../engine/pattern/styling.ts';
import { waistEase } from '../making-choices.ts';

/** What the foundation leaves to taste: how much room there is, and where the lines under and over the bust run. */
export const foundationChoices = [
  {
    kind: 'number or auto',
    name: 'bustEase',
    unit: 'mm',
    default: 'auto',
    min: 0,
    max: 160,
    help: 'room around the bust beyond the body; by itself 60 mm, and 50 mm without sleeves',
  },
  {
    kind: 'number',
    name: 'underBustEase',
    unit: 'mm',
    default: 40,
    min: 0,
    max: 120,
    help: 'room around the ribs under the bust',
  },
  waistEase,
  {
    kind: 'number or auto',
    name: 'underBustDrop',
    unit: 'mm',
    default: 'auto',
    min: 40,
    max: 120,
    help: 'how far the under-bust seam lies below the bust point',
  },
  {
    kind: 'number',
    name: 'princessOffset',
    unit: 'mm',
    default: 5,
    min: -20,
    max: 20,
    help: 'how far the front princess line passes to the side of the bust point',
  },
] as const satisfies readonly Choice[];
