import type { Body } from '../../engine/body/body.ts';
import { angleOverBust } from '../../engine/body/bust.ts';
import type { Corner, GirthPart } from '../../engine/pattern/garment.ts';
import type { Chain, LengthPart, ShapeClaim } from '../../engine/pattern/shape.ts';
import { armholeToShoulder, halves, panelArmhole } from './armhole-chains.ts';
import type { BodicePlan } from './bodice.ts';

const STRAP_NOT_SHOULDER =
  'the armhole runs along a strap, which lies nearer to the neck than the shoulder point of a plain bodice';
const THIS_BODY = 'this body differs from the regular adult that the band is for';

/** The princess seam from the waist up: side front, and on its other side centre front and insert. */
const sidePrincess: Chain = {
  edges: ['princess lower', 'princess upper'].map((edge) => ({ piece: 'side front', edge })),
};
const centrePrincess: Chain = {
  edges: [
    { piece: 'centre front', edge: 'princess', reversed: true },
    { piece: 'insert', edge: 'left side', reversed: true },
  ],
};

const leans: readonly { readonly name: string; readonly at: Corner }[] = [
  { piece: 'centre front', edge: 'princess', seam: 'waist' },
  { piece: 'side front', edge: 'princess lower', seam: 'waist' },
  { piece: 'side back', edge: 'princess', seam: 'waist' },
  { piece: 'centre back', edge: 'princess', seam: 'waist' },
].map((at) => ({ name: `${at.piece} princess edge leans at the waist`, at }));

const edge = (piece: string, name: string, times = 1): GirthPart => ({
  kind: 'edge',
  piece,
  edge: name,
  times,
});
const line = (piece: string, name: string): GirthPart => ({ kind: 'line', piece, line: name, times: 1 });
const halfBack = (level: string): readonly LengthPart[] => [
  line('centre back', level),
  line('side back', level),
];

/** What a cutter looks at on the panels of a bodice, measured as they are written. */
export const bodiceShapes = (plan: BodicePlan, { size }: Body): readonly ShapeClaim[] => [
  ...armholes(size.bustGirth, size.armscyeGirth),
  {
    kind: 'across',
    name: 'half across back on the panels laid together, beyond the body',
    armhole: panelArmhole('back'),
    share: 0.5,
    side: { edges: [{ piece: 'side back', edge: 'princess' }], from: 'bust level' },
    centre: { edges: [{ piece: 'centre back', edge: 'princess', reversed: true }], from: 'bust level' },
    middle: { piece: 'centre back', edge: 'centre back' },
    plus: -size.acrossBackWidth / 2,
    low: 5,
    high: 12,
    outside: STRAP_NOT_SHOULDER,
  },
  {
    kind: 'length',
    name: 'side seam',
    parts: [edge('side front', 'side')],
    low: 170,
    high: 210,
    outside: THIS_BODY,
  },
  {
    kind: 'length',
    name: 'half front more than half back at the waist',
    parts: [
      edge('centre front', 'waist'),
      edge('side front', 'waist'),
      edge('side back', 'waist', -1),
      edge('centre back', 'waist', -1),
    ],
    low: 0,
    high: 20,
    outside:
      'worn, the side seam lies too far back at the waist when it is more, too far forward when it is less',
  },
  ...overTheBust(plan, size.bustGirth - size.underBustGirth),
  ...waistLevel(size.waistGirth < size.underBustGirth),
  ...leans.map(
    ({ name, at }): ShapeClaim => ({
      kind: 'lean',
      name,
      at,
      high: 8,
      outside: 'the panel leaves the waist askew, so that the waist must bend to meet it square',
    }),
  ),
  ...['side front', 'centre back', 'side back'].map(
    (piece): ShapeClaim => ({
      kind: 'grain',
      name: `${piece} grain upright to the bust level`,
      piece,
      line: 'bust level',
      low: -2,
      high: 2,
      outside: 'the grain hangs askew over the bust',
    }),
  ),
  {
    kind: 'taper',
    name: 'half back narrower at the under-bust than a straight taper',
    upper: halfBack('bust level'),
    middle: halfBack('under-bust level'),
    lower: [edge('centre back', 'waist'), edge('side back', 'waist')],
    down: { piece: 'side back', edge: 'side' },
    notches: ['bust level', 'under-bust level'],
    high: 10,
    outside: 'the back is hollowed under the bust level as if it had breasts',
  },
  {
    kind: 'tightest bend',
    name: 'back princess, tightest bend below the bust level',
    of: { edges: [{ piece: 'side back', edge: 'princess' }], to: 'bust level' },
    low: 150,
    outside: 'the back is hollowed under the bust level as if it had breasts',
  },
];

/** How long the armholes are, for this bust and this arm. */
const armholes = (bustGirth: number, armscyeGirth: number): readonly ShapeClaim[] => {
  const whole = halves.map(
    (half): LengthPart => ({ kind: 'chain', chain: armholeToShoulder(half), times: 1 }),
  );
  return [
    {
      kind: 'length',
      name: 'armhole girth',
      parts: whole,
      low: 0.43 * bustGirth,
      high: 0.49 * bustGirth,
      outside: STRAP_NOT_SHOULDER,
    },
    {
      kind: 'length',
      name: 'armhole beyond the armscye girth',
      parts: whole,
      plus: -armscyeGirth,
      low: 20,
      high: 60,
      outside: STRAP_NOT_SHOULDER,
    },
    {
      kind: 'length',
      name: 'back armhole longer than front',
      parts: [
        { kind: 'chain', chain: armholeToShoulder('back'), times: 1 },
        { kind: 'chain', chain: armholeToShoulder('front'), times: -1 },
      ],
      low: 0,
      high: 20,
      outside: STRAP_NOT_SHOULDER,
    },
  ];
};

/** Sewn and asked may differ by this over the bust, degrees. */
const OVER_BUST = 6;

/** Where the princess line is fullest, how full, and what it takes up over the bust. */
function overTheBust({ front, levels }: BodicePlan, cupDifference: number): readonly ShapeClaim[] {
  const depth = levels.underBust - levels.bust;
  const asked = (angleOverBust(front.dart, cupDifference, depth) * 180) / Math.PI;
  return [
    {
      kind: 'fullest',
      name: 'side front princess fullest above the bust point',
      of: sidePrincess,
      line: 'bust level',
      say: 'past level',
      low: -10,
      high: 10,
      outside: 'the cloth is fullest above the breast, where it stands off, and too tight below',
    },
    {
      kind: 'fullest',
      name: 'side front princess edge beyond its chord',
      of: sidePrincess,
      line: 'bust level',
      say: 'beyond chord',
      low: 10,
      high: 35,
      outside: THIS_BODY,
    },
    {
      kind: 'sewn-in angle',
      name: 'angle sewn in over the bust',
      a: sidePrincess,
      b: centrePrincess,
      low: asked - OVER_BUST,
      high: asked + OVER_BUST,
      outside: 'the cloth has more or less room for the bust than cup and front length ask for',
    },
  ];
}

/** The waist of the front hangs level: on paper it may dip by this where the waist is smaller than the under-bust, mm. */
function waistLevel(taperedIn: boolean): readonly ShapeClaim[] {
  const centre = (seam: string) =>
    ({
      corner: { piece: 'centre front', edge: 'waist', seam },
      level: { kind: 'edge', name: 'under-bust' },
    }) as const;
  const most = taperedIn ? 6 : 15;
  const outside = 'the waist hangs low at centre front, and the skirt with it';
  return [
    {
      kind: 'dip',
      name: 'waist at centre front below the princess seam',
      at: centre('centre front'),
      than: centre('princess'),
      low: -most,
      high: most,
      outside,
    },
    {
      kind: 'dip',
      name: 'waist at centre front below the side seam',
      at: centre('centre front'),
      than: {
        corner: { piece: 'side front', edge: 'waist', seam: 'side' },
        level: { kind: 'line', name: 'under-bust level' },
      },
      low: -most,
      high: most,
      outside,
    },
  ];
}
