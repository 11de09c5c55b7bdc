import type { Choice } from '../../engine/pattern/styling.ts';
import { foundationChoices } from '../foundation/choices.ts';
import { plainSleeveChoices } from '../sleeve/choices.ts';

/** What a trial bodice leaves open: the room it has, and whether its plain sleeve is tried with it. */
export const trialChoices = [
  ...foundationChoices,
  {
    kind: 'word',
    name: 'sleeve',
    default: 'none',
    words: ['none', 'plain'],
    help: 'whether a plain sleeve is tried on with it',
  },
  ...plainSleeveChoices,
  {
    kind: 'word',
    name: 'notchType',
    default: 'slit',
    words: ['slit', 'wedge'],
    help: 'how notches are marked on the cutting line',
  },
] as const satisfies readonly Choice[];
