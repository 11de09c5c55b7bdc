import type { Body } from '../../engine/body/body.ts';
import type { Girth, Join, Seam } from '../../engine/pattern/garment.ts';
import type { SleeveStyling } from './choices.ts';

/** How the sleeve is sewn: its own seam, flat below the notches, gathered between them. */
export const sleeveSeams = (fullness: number): readonly Seam[] => [
  {
    name: 'sleeve seam',
    a: [{ piece: 'sleeve', edge: 'front seam' }],
    b: [{ piece: 'sleeve', edge: 'back seam', reversed: true }],
    ease: 0,
    gatherRatio: 1,
  },
  {
    name: 'armhole, front underarm',
    a: [{ piece: 'sleeve', edge: 'cap front underarm' }],
    b: [{ piece: 'side front', edge: 'armhole underarm' }],
    ease: 0,
    gatherRatio: 1,
  },
  {
    name: 'armhole, back underarm',
    a: [{ piece: 'sleeve', edge: 'cap back underarm' }],
    b: [{ piece: 'side back', edge: 'armhole underarm', reversed: true }],
    ease: 0,
    gatherRatio: 1,
  },
  {
    name: 'armhole, crown',
    a: [{ piece: 'sleeve', edge: 'crown' }],
    b: [
      { piece: 'side back', edge: 'armhole upper', reversed: true },
      { piece: 'strap', edge: 'outer' },
      { piece: 'side front', edge: 'armhole upper' },
    ],
    ease: 0,
    gatherRatio: fullness,
  },
];

/** Where the sleeve's lines must run on once sewn. */
export const sleeveJoins: readonly Join[] = [
  {
    kind: 'across',
    name: 'sleeve cap at the sleeve seam',
    a: { piece: 'sleeve', edge: 'cap front underarm', seam: 'front seam' },
    b: { piece: 'sleeve', edge: 'cap back underarm', seam: 'back seam' },
  },
  {
    kind: 'across',
    name: 'sleeve hem at the sleeve seam',
    a: { piece: 'sleeve', edge: 'hem', seam: 'front seam' },
    b: { piece: 'sleeve', edge: 'hem', seam: 'back seam' },
  },
  {
    kind: 'along',
    name: 'sleeve cap at the back notches',
    piece: 'sleeve',
    from: 'cap back underarm',
    to: 'crown',
  },
  {
    kind: 'along',
    name: 'sleeve cap at the front notch',
    piece: 'sleeve',
    from: 'crown',
    to: 'cap front underarm',
  },
];

/** The sleeve fits the arm once its fullness is gathered away. */
export const sleeveGirths = (body: Body, styling: SleeveStyling): readonly Girth[] => [
  {
    level: 'upper arm',
    body: body.size.upperArmGirth,
    ease: styling.upperArmEase,
    parts: [{ kind: 'line', piece: 'sleeve', line: 'upper arm level', times: 1 }],
  },
];
