import type { Choice } from '../../engine/pattern/styling.ts';
import { armholeAllowance, necklineAllowance } from '../allowances.ts';
import { foundationChoices } from '../foundation/choices.ts';
import { makingChoices } from '../making-choices.ts';

/** What the bodice leaves to taste. */
export const bodiceChoices = [
  ...foundationChoices,
  {
    kind: 'word',
    name: 'shoulder',
    default: 'strap',
    words: ['strap', 'whole'],
    help: 'shoulder straps, or panels that go up to the whole shoulder',
  },
  {
    kind: 'word',
    name: 'front',
    default: 'gathered',
    words: ['gathered', 'plain'],
    help: 'a gathered insert over the bust, or a plain centre front up to the neckline',
  },
  {
    kind: 'word',
    name: 'centreFront',
    default: 'whole',
    words: ['whole', 'parted'],
    help: 'a plain centre front cut in one, or parted by the under-bust seam',
  },
  {
    kind: 'word',
    name: 'princess',
    default: 'auto',
    words: ['auto', 'neckline', 'shoulder', 'armhole'],
    help: 'where the princess line begins: at the corner of the neckline, the shoulder or the armhole',
  },
  {
    kind: 'word',
    name: 'neckline',
    default: 'square',
    words: ['square', 'round', 'pointed', 'sweetheart'],
    help: 'shape of the front neckline; a gathered front is straight along its fold',
  },
  {
    kind: 'number or auto',
    name: 'necklineDepth',
    unit: 'share',
    default: 'auto',
    min: 0.45,
    max: 0.75,
    help: 'how far down from side neck to bust point the front neckline lies; by itself 0.64, and on straps without sleeves as far as the underarm lets it',
  },
  {
    kind: 'number',
    name: 'necklineWidth',
    unit: 'share',
    default: 1.12,
    min: 0.9,
    max: 1.35,
    help: 'half width of the front neckline, as a share of half the bust point width',
  },
  {
    kind: 'word',
    name: 'backNeckline',
    default: 'round',
    words: ['round', 'pointed'],
    help: 'shape of the back neckline: round, or straight lines to a point at the centre back',
  },
  {
    kind: 'number',
    name: 'backNecklineDepth',
    unit: 'mm',
    default: 55,
    min: 25,
    max: 140,
    help: 'how far the back neckline lies below the back neck point',
  },
  {
    kind: 'number',
    name: 'strapPosition',
    unit: 'mm',
    default: 40,
    min: 10,
    max: 60,
    help: 'distance along the shoulder from the side neck to the neckline: the inner edge of a strap',
  },
  {
    kind: 'number',
    name: 'strapWidth',
    unit: 'mm',
    default: 45,
    min: 20,
    max: 60,
    help: 'finished width of a shoulder strap at the shoulder',
  },
  armholeAllowance,
  necklineAllowance,
  ...makingChoices,
] as const satisfies readonly Choice[];
