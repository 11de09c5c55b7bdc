import { claim } from '../../engine/pattern/band-table.ts';
import type { GirthPart, SeamCorner } from '../../engine/pattern/seam.ts';
import type { CornerFromLevel, LengthPart, ShapeClaim } from '../../engine/pattern/shape.ts';
import { bodiceBands as bands } from './bands.ts';
import type { PanelCut } from './panel-cut.ts';

const edge = (piece: string, name: string, times = 1): GirthPart => ({
  kind: 'edge',
  piece,
  edge: name,
  times,
});
const line = (piece: string, name: string): GirthPart => ({ kind: 'line', piece, line: name, times: 1 });

/** Whether front and back share the waist as the body does. */
export const sideBalance: ShapeClaim = claim(
  bands.balance,
  {
    kind: 'length',
    parts: [
      edge('centre front', 'waist'),
      edge('side front', 'waist'),
      edge('side back', 'waist', -1),
      edge('centre back', 'waist', -1),
    ],
  },
  'worn, the side seam lies too far back at the waist when it is more, too far forward when it is less',
);

/** The waist of the front hangs level; `tapersIn` where the waist is smaller than the under-bust. */
export function waistLevel({ plan }: PanelCut, tapersIn: boolean): readonly ShapeClaim[] {
  const { levels, front } = plan.foundation;
  const level =
    plan.lines.style.front === 'plain'
      ? ({ kind: 'line', name: 'under-bust level' } as const)
      : ({ kind: 'edge', name: 'under-bust' } as const);
  const centre = (seam: string): CornerFromLevel => ({
    corner: { piece: 'centre front', edge: 'waist', seam },
    level,
  });
  const band = tapersIn ? bands.dip : bands.dipWhereNoWaist;
  const outside = 'the waist hangs low at centre front, and the skirt with it';
  const at = centre('centre front');
  const side: CornerFromLevel = {
    corner: { piece: 'side front', edge: 'waist', seam: 'side' },
    level: { kind: 'line', name: 'bust level' },
  };
  // On the side front the under-bust level may slope, so what lies between it and the bust level is added.
  const plus = front.underBust.centre.y - levels.bust.value;
  return [
    claim(band, { kind: 'dip', at, than: centre('princess') }, outside, {
      name: 'waist at centre front below the princess seam',
    }),
    claim(band, { kind: 'dip', at, than: side, plus }, outside, {
      name: 'waist at centre front below the side seam',
    }),
  ];
}

const leaning: readonly SeamCorner[] = [
  { piece: 'centre front', edge: 'princess', seam: 'waist' },
  { piece: 'side front', edge: 'princess lower', seam: 'waist' },
  { piece: 'side back', edge: 'princess', seam: 'waist' },
  { piece: 'centre back', edge: 'princess', seam: 'waist' },
];

/** Whether the panels stand upright on the waist, and their grain on the bust level. */
export const upright: readonly ShapeClaim[] = [
  ...leaning.map((at) =>
    claim(
      bands.lean,
      { kind: 'lean', at },
      'the panel leaves the waist askew, so that the waist must bend to meet it square',
      { name: `${at.piece} princess edge leans at the waist` },
    ),
  ),
  ...['side front', 'centre back', 'side back'].map((piece) =>
    claim(bands.grain, { kind: 'grain', piece, line: 'bust level' }, 'the grain hangs askew over the bust', {
      name: `${piece} grain upright to the bust level`,
    }),
  ),
];

const halfBack = (level: string): readonly LengthPart[] => [
  line('centre back', level),
  line('side back', level),
];

const HOLLOWED = 'the back is hollowed under the bust level as if it had breasts';

/** The back tapers with the ribs; `tapersIn` where the waist is smaller than the under-bust. */
export const backTaper = (tapersIn: boolean): readonly ShapeClaim[] => [
  claim(
    tapersIn ? bands.taper : bands.taperWhereNoWaist,
    {
      kind: 'taper',
      upper: halfBack('bust level'),
      middle: halfBack('under-bust level'),
      lower: [edge('centre back', 'waist'), edge('side back', 'waist')],
      down: { piece: 'side back', edge: 'side' },
      notches: ['bust level', 'under-bust level'],
    },
    HOLLOWED,
    { name: bands.taper.name },
  ),
  claim(
    bands.backHollow,
    { kind: 'tightest bend', of: { edges: [{ piece: 'side back', edge: 'princess' }], to: 'bust level' } },
    HOLLOWED,
  ),
];
