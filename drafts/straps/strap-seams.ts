import type { EdgeRef, Join, Seam } from '../../engine/pattern/seam.ts';
import { edgesOn } from '../bodice/armhole-parts.ts';
import { strapOuter } from '../bodice/bodice-seams.ts';
import type { PanelCut } from '../bodice/panel-cut.ts';
import { backwards, edge, plainSeam } from '../seams.ts';

/** A seam between the outer layer of the straps and the layer that faces it. */
const layers = (name: string, edges: readonly EdgeRef[]): Seam => plainSeam(name, edges, edges);

/** How the straps are sewn: their parts at the shoulder, their layers to each other, and their ends to the side panels. */
export function strapSeams(cut: PanelCut): readonly Seam[] {
  const overShoulder = (edgesOf: (part: 'front' | 'back') => readonly EdgeRef[]): readonly EdgeRef[] => [
    ...edgesOf('front'),
    ...edgesOf('back')
      .toReversed()
      .map(
        ({ piece, edge: name, reversed }): EdgeRef => (reversed ? edge(piece, name) : backwards(piece, name)),
      ),
  ];
  const end = (part: 'front' | 'back'): Seam =>
    plainSeam(`${part} strap`, [edge(`side ${part}`, 'strap')], [backwards(`${part} strap`, `${part} end`)]);
  const inner = overShoulder((part) => [{ piece: `${part} strap`, edge: 'inner' }]);
  return [
    plainSeam('strap, shoulder', [edge('front strap', 'shoulder')], [edge('back strap', 'shoulder')]),
    layers('strap, inner edge', inner),
    layers(
      'strap, outer edge',
      overShoulder((part) => strapOuter(cut, part)),
    ),
    end('front'),
    end('back'),
  ];
}

/** Neckline and armhole run on over the shoulder; at its ends a strap, turned right side out, lies on itself. */
export function strapJoins(cut: PanelCut): readonly Join[] {
  const outer = (part: 'front' | 'back'): string => cut.armholes[part].edges[0]?.edge ?? 'outer';
  const over = (name: string, front: string, behind: string): Join => ({
    kind: 'across',
    name,
    a: { piece: 'front strap', edge: front, seam: 'shoulder' },
    b: { piece: 'back strap', edge: behind, seam: 'shoulder' },
  });
  return [
    over('strap neckline at the shoulder', 'inner', 'inner'),
    over('armhole at the shoulder', outer('front'), outer('back')),
    ...(['front', 'back'] as const).flatMap((part) =>
      ['inner', edgesOn(cut.armholes[part], `${part} strap`).at(-1)?.edge ?? 'outer'].map(
        (edgeName): Join => ({
          kind: 'mirror',
          name: `${part} strap's end at its ${edgeName} edge`,
          turns: true,
          a: { piece: `${part} strap`, edge: `${part} end`, seam: edgeName },
        }),
      ),
    ),
  ];
}
