import type { Body } from '../../engine/body/body.ts';
import { angleOverBust } from '../../engine/body/bust.ts';
import type { EdgeRef, GirthPart, SeamCorner } from '../../engine/pattern/seam.ts';
import type { EdgeChain, LengthPart, ShapeClaim } from '../../engine/pattern/shape.ts';
import { armholeToShoulder, halves } from './armhole-chains.ts';
import type { PanelCut } from './panel-cut.ts';
import type { Style } from './style.ts';

const STRAP_NOT_SHOULDER =
  'the armhole runs along a strap, which lies nearer to the neck than the shoulder point of a plain bodice';
const THIS_BODY = 'this body differs from the regular adult that the band is for';

/** The tightest that an armhole may bend, mm. */
const TIGHTEST = 25;

/** What a cutter looks at on the panels of a bodice, measured as they are written; `plain` where a plain sleeve is set in. */
export function bodiceShapes(cut: PanelCut, body: Body, plain: boolean): readonly ShapeClaim[] {
  const { size } = body;
  return [
    ...armholeGirths(cut, body),
    acrossBack(cut, size.acrossBackWidth),
    ...halves.flatMap((half): readonly ShapeClaim[] => [
      {
        kind: 'tightest bend',
        name: `${half} armhole, tightest bend`,
        of: armholeToShoulder(cut, half),
        low: TIGHTEST,
        bound: true,
        outside: 'its allowance cannot be turned without cutting into it, and gathers crowd there',
      },
      {
        kind: 'notch height',
        name: `${half} armhole notch, of the height of the armhole`,
        of: armholeToShoulder(cut, half),
        notch: `${half} armhole notch`,
        ...(plain ? { low: 0.25, high: 0.35 } : { low: 1 / 3, high: 1 / 2 }),
        outside: 'lower, gathers begin under the arm; higher, too few are left for the shoulder',
      },
    ]),
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
    ...overTheBust(cut, size.bustGirth - size.underBustGirth),
    ...waistLevel(cut, size.waistGirth < size.underBustGirth),
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
      high: size.waistGirth < size.underBustGirth ? 10 : 40,
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
}

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

const leans: readonly { readonly name: string; readonly at: SeamCorner }[] = [
  { piece: 'centre front', edge: 'princess', seam: 'waist' },
  { piece: 'side front', edge: 'princess lower', seam: 'waist' },
  { piece: 'side back', edge: 'princess', seam: 'waist' },
  { piece: 'centre back', edge: 'princess', seam: 'waist' },
].map((at) => ({ name: `${at.piece} princess edge leans at the waist`, at }));

/** How wide the half back is between the folds of the arms, its panels laid together as they are sewn. */
function acrossBack(cut: PanelCut, measured: number): ShapeClaim {
  const { foundation, lines } = cut.plan;
  const { underarm, across } = foundation.levels;
  const seam = (piece: string, reversed?: true): EdgeChain => ({
    edges: [{ piece, edge: 'princess', ...(reversed && { reversed }) }],
    from: 'bust level',
  });
  return {
    kind: 'across',
    name: 'half across back on the panels laid together, beyond the body',
    armhole: armholeToShoulder(cut, 'back'),
    share: (underarm.value - across.value) / (underarm.value - lines.back.outer.y),
    side: seam('side back'),
    centre: seam('centre back', true),
    middle: { piece: 'centre back', edge: 'centre back' },
    plus: -measured / 2,
    low: 5,
    high: 12,
    outside: lines.style.shoulder === 'strap' ? STRAP_NOT_SHOULDER : THIS_BODY,
  };
}

/** How long the armholes are, for this bust and this arm. */
function armholeGirths(cut: PanelCut, { size }: Body): readonly ShapeClaim[] {
  const outside = cut.plan.lines.style.shoulder === 'strap' ? STRAP_NOT_SHOULDER : THIS_BODY;
  const chain = (half: (typeof halves)[number], times = 1): LengthPart => ({
    kind: 'chain',
    chain: armholeToShoulder(cut, half),
    times,
  });
  const whole = halves.map((half) => chain(half));
  return [
    {
      kind: 'length',
      name: 'armhole girth',
      parts: whole,
      low: 0.43 * size.bustGirth,
      high: 0.49 * size.bustGirth,
      outside,
    },
    {
      kind: 'length',
      name: 'armhole beyond the armscye girth',
      parts: whole,
      plus: -size.armscyeGirth,
      low: -20,
      high: 60,
      outside,
    },
    {
      kind: 'length',
      name: 'back armhole longer than front',
      parts: [chain('back'), chain('front', -1)],
      low: 0,
      high: 20,
      outside: 'a full bust makes the front armhole longer, since all above it hangs from the shoulder',
    },
  ];
}

/** The princess seam from the waist up: side front, and on its other side centre front and what lies over it. */
const sidePrincess: EdgeChain = {
  edges: ['princess lower', 'princess upper'].map((name) => ({ piece: 'side front', edge: name })),
};

function centrePrincess({ front }: Style): EdgeChain {
  const over: EdgeRef =
    front === 'gathered'
      ? { piece: 'insert', edge: 'left side', reversed: true }
      : {
          piece: front === 'parted' ? 'upper centre front' : 'centre front',
          edge: 'princess upper',
          reversed: true,
        };
  return { edges: [{ piece: 'centre front', edge: 'princess', reversed: true }, over] };
}

/** Sewn and asked may differ by this over the bust, degrees. */
const OVER_BUST = 6;

/** Where the princess line is fullest, how full, and what it takes up over the bust. */
function overTheBust({ plan }: PanelCut, cupDifference: number): readonly ShapeClaim[] {
  const { levels, front } = plan.foundation;
  const { turned, turnedIn } = plan.lines.front;
  const depth = front.underBust.side.y - levels.bust.value;
  const asked = (angleOverBust(turned + turnedIn, cupDifference, depth) * 180) / Math.PI;
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
      b: centrePrincess(plan.lines.style),
      low: asked - OVER_BUST,
      high: asked + OVER_BUST,
      outside:
        plan.lines.style.front === 'plain'
          ? 'both edges run smoothly from bust to ribs, and so are steeper halfway than the straight cones that this is reckoned from: more where the cup is full. Try the trial bodice on, and let the seam out under the bust where it stands off'
          : 'the cloth has more or less room for the bust than cup and front length ask for',
    },
  ];
}

/** The waist of the front hangs level: on paper it may dip by this where the waist is smaller than the under-bust, mm. */
function waistLevel({ plan }: PanelCut, tapersIn: boolean): readonly ShapeClaim[] {
  const { levels, front } = plan.foundation;
  const level =
    plan.lines.style.front === 'plain'
      ? ({ kind: 'line', name: 'under-bust level' } as const)
      : ({ kind: 'edge', name: 'under-bust' } as const);
  const centre = (seam: string) => ({ corner: { piece: 'centre front', edge: 'waist', seam }, level });
  const most = tapersIn ? 6 : 15;
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
        level: { kind: 'line', name: 'bust level' },
      },
      // The under-bust level slopes on the side front, so it is measured there from the bust level.
      plus: front.underBust.centre.y - levels.bust.value,
      low: -most,
      high: most,
      outside,
    },
  ];
}
