import type { Body } from '../../engine/body/body.ts';
import type { Corner, Girth, GirthPart, Join, Seam } from '../../engine/pattern/garment.ts';
import type { BodiceStyling } from './choices.ts';

/** How the panels are sewn to each other. */
export const bodiceSeams: readonly Seam[] = [
  {
    name: 'front princess, lower',
    a: [{ piece: 'side front', edge: 'princess lower' }],
    b: [{ piece: 'centre front', edge: 'princess', reversed: true }],
    ease: 0,
    gatherRatio: 1,
  },
  {
    name: 'back princess',
    a: [{ piece: 'side back', edge: 'princess' }],
    b: [{ piece: 'centre back', edge: 'princess', reversed: true }],
    ease: 0,
    gatherRatio: 1,
  },
  {
    name: 'side',
    a: [{ piece: 'side front', edge: 'side' }],
    b: [{ piece: 'side back', edge: 'side' }],
    ease: 0,
    gatherRatio: 1,
  },
];

const corner = (piece: string, edge: string, seam: string): Corner => ({ piece, edge, seam });

/** Where the panels' lines must run on once sewn: all but a back neckline that ends in a point. */
export const bodiceJoins = ({ backNeckline }: BodiceStyling): readonly Join[] =>
  backNeckline === 'round' ? [...joins, roundNeckline] : joins;

const roundNeckline: Join = {
  kind: 'mirror',
  name: 'neckline at centre back',
  a: { piece: 'centre back', edge: 'neckline', seam: 'centre back' },
};

const joins: readonly Join[] = [
  {
    kind: 'across',
    name: 'waist at the front princess seam',
    a: corner('side front', 'waist', 'princess lower'),
    b: corner('centre front', 'waist', 'princess'),
  },
  {
    kind: 'across',
    name: 'waist at the side seam',
    a: corner('side front', 'waist', 'side'),
    b: corner('side back', 'waist', 'side'),
  },
  {
    kind: 'across',
    name: 'waist at the back princess seam',
    a: corner('side back', 'waist', 'princess'),
    b: corner('centre back', 'waist', 'princess'),
  },
  {
    kind: 'across',
    name: 'armhole at the side seam',
    a: corner('side front', 'armhole underarm', 'side'),
    b: corner('side back', 'armhole underarm', 'side'),
  },
  { kind: 'mirror', name: 'waist at centre front', a: corner('centre front', 'waist', 'centre front') },
  {
    kind: 'mirror',
    name: 'under-bust seam at centre front',
    a: corner('centre front', 'under-bust', 'centre front'),
  },
  { kind: 'mirror', name: 'waist at centre back', a: corner('centre back', 'waist', 'centre back') },
  {
    kind: 'along',
    name: 'front armhole at its notch',
    piece: 'side front',
    from: 'armhole upper',
    to: 'armhole underarm',
  },
  {
    kind: 'along',
    name: 'back armhole at its notch',
    piece: 'side back',
    from: 'armhole upper',
    to: 'armhole underarm',
  },
  {
    kind: 'along',
    name: 'side front princess at the under-bust seam',
    piece: 'side front',
    from: 'princess lower',
    to: 'princess upper',
  },
];

const line = (piece: string, name: string): GirthPart => ({ kind: 'line', piece, line: name, times: 2 });
const edge = (piece: string, name: string): GirthPart => ({ kind: 'edge', piece, edge: name, times: 2 });

/**
 * The girths the bodice must have, measured across its panels and the insert, left and right; `styling` with the
 * ease that the fitting left.
 */
export function bodiceGirths(body: Body, styling: BodiceStyling): readonly Girth[] {
  const { bustGirth, underBustGirth, waistGirth } = body.size;
  return [
    {
      level: 'bust',
      body: bustGirth,
      ease: styling.bustEase,
      parts: [
        line('centre back', 'bust level'),
        line('side back', 'bust level'),
        line('side front', 'bust level'),
        { kind: 'line', piece: 'insert', line: 'bust level', times: 1 },
      ],
    },
    {
      level: 'under-bust',
      body: underBustGirth,
      ease: styling.underBustEase,
      parts: [
        line('centre back', 'under-bust level'),
        line('side back', 'under-bust level'),
        line('side front', 'under-bust level'),
        edge('centre front', 'under-bust'),
        edge('centre front', 'under-bust end'),
      ],
    },
    {
      level: 'waist',
      body: waistGirth,
      ease: styling.waistEase,
      parts: [
        edge('centre back', 'waist'),
        edge('side back', 'waist'),
        edge('side front', 'waist'),
        edge('centre front', 'waist'),
      ],
    },
  ];
}
