import type { Body } from '../../engine/body/body.ts';
import { claim } from '../../engine/pattern/band-table.ts';
import type { EdgeChain, LengthPart, ShapeClaim } from '../../engine/pattern/shape.ts';
import { armholeToShoulder, type Half, halves } from './armhole-chains.ts';
import { bodiceBands as bands } from './bands.ts';
import { armholeOutside } from './outside-bands.ts';
import type { PanelCut } from './panel-cut.ts';

/** How long and how round the armholes are, and where their notches stand; `plain` where a plain sleeve is set in. */
export const armholeShapes = (cut: PanelCut, body: Body, plain: boolean): readonly ShapeClaim[] => [
  ...girths(cut, body),
  acrossBack(cut, body.size.acrossBackWidth),
  ...halves.flatMap((half): readonly ShapeClaim[] => [
    claim(
      bands.armholeBend,
      { kind: 'tightest bend', of: armholeToShoulder(cut, half) },
      'its allowance cannot be turned without cutting into it, and gathers crowd there',
      { name: `${half} armhole, tightest bend` },
    ),
    claim(
      plain ? bands.plainNotch : bands.puffNotch,
      { kind: 'notch height', of: armholeToShoulder(cut, half), notch: `${half} armhole notch` },
      'lower, gathers begin under the arm; higher, too few are left for the shoulder',
      { name: `${half} armhole notch, of the height of the armhole` },
    ),
  ]),
];

/** How long the armholes are, for this bust and this arm. */
function girths(cut: PanelCut, { size }: Body): readonly ShapeClaim[] {
  const outside = armholeOutside(cut.plan);
  const chain = (half: Half, times = 1): LengthPart => ({
    kind: 'chain',
    chain: armholeToShoulder(cut, half),
    times,
  });
  const whole = halves.map((half) => chain(half));
  return [
    claim(bands.armholeGirth, { kind: 'length', parts: whole }, outside, { per: size.bustGirth }),
    claim(bands.armholeBeyondArmscye, { kind: 'length', parts: whole, plus: -size.armscyeGirth }, outside),
    claim(
      bands.backArmholeLonger,
      { kind: 'length', parts: [chain('back'), chain('front', -1)] },
      'a full bust makes the front armhole longer, since all above it hangs from the shoulder',
    ),
  ];
}

/** How wide the half back is between the folds of the arms, its panels laid together as they are sewn. */
function acrossBack(cut: PanelCut, measured: number): ShapeClaim {
  const { foundation, lines } = cut.plan;
  const { underarm, across } = foundation.levels;
  const seam = (piece: string, reversed?: true): EdgeChain => ({
    edges: [{ piece, edge: 'princess', ...(reversed && { reversed }) }],
    from: 'bust level',
  });
  return claim(
    bands.acrossBack,
    {
      kind: 'across',
      armhole: armholeToShoulder(cut, 'back'),
      share: (underarm.value - across.value) / (underarm.value - lines.back.outer.y),
      side: seam('side back'),
      centre: seam('centre back', true),
      middle: { piece: 'centre back', edge: 'centre back' },
      plus: -measured / 2,
    },
    armholeOutside(cut.plan),
  );
}
