import { edgeLength } from '../../engine/geometry/edge.ts';
import type { Piece } from '../../engine/pattern/piece.ts';
import type { EdgeRef, Girth, Join, Seam, SeamCorner } from '../../engine/pattern/seam.ts';
import { armholeLower, armholeUpper } from '../bodice/bodice-seams.ts';
import type { PanelCut } from '../bodice/panel-cut.ts';
import { edgeNamed } from '../piece-edges.ts';
import { backwards, easedSeam, edge, gatheredSeam, plainSeam } from '../seams.ts';
import type { SleeveTable } from './choices.ts';
import type { FittedCap } from './fitted-cap.ts';

/** The armhole's edges that a sleeve is sewn to: above its notches from back to front, and below each to the underarm. */
export interface ArmholeRefs {
  readonly upper: readonly EdgeRef[];
  readonly front: readonly EdgeRef[];
  readonly back: readonly EdgeRef[];
}

/** The same from the armholes a bodice came out with. */
export const armholeRefs = (cut: PanelCut): ArmholeRefs => ({
  upper: armholeUpper(cut),
  front: armholeLower(cut, 'front'),
  back: armholeLower(cut, 'back'),
});

/** How the sleeve is sewn: its own seam, flat below the notches, and eased or gathered between them. */
export function sleeveSeams(
  armhole: ArmholeRefs,
  crown: { readonly ease: number; readonly ratio: number },
  piece: Piece,
): readonly Seam[] {
  const own = (name: string, part: string, ease = 0): Seam =>
    easedSeam(name, [backwards('sleeve', `back seam${part}`)], [edge('sleeve', `front seam${part}`)], ease);
  const flat = (part: 'front' | 'back'): Seam => {
    const capEdge = (part === 'front' ? edge : backwards)('sleeve', `cap ${part} underarm`);
    return plainSeam(`armhole, ${part} underarm`, [capEdge], armhole[part]);
  };
  return [
    own('sleeve seam', ''),
    ...(piece.edges.some(({ name }) => name === 'front seam elbow')
      ? [
          own('sleeve seam at the elbow', ' elbow', heldIn(piece)),
          own('sleeve seam below the elbow', ' lower'),
        ]
      : []),
    flat('front'),
    flat('back'),
    {
      ...gatheredSeam('armhole, crown', [edge('sleeve', 'crown')], armhole.upper, crown.ratio),
      ease: crown.ease,
    },
  ];
}

/** What the back of a long sleeve is longer by over the elbow, mm. */
const heldIn = (piece: Piece): number =>
  edgeLength(edgeNamed(piece, 'back seam elbow')) - edgeLength(edgeNamed(piece, 'front seam elbow'));

/** Where the sleeve's lines must run on once sewn: the cap, and its parted seam and its hem, or the fold in place of one. */
export const sleeveJoins = (piece: Piece): readonly Join[] => [
  ...capJoins,
  ...seamJoins(piece),
  ...hemJoins(piece),
];

/** Along a seam that has several edges. */
const seamJoins = ({ edges }: Piece): readonly Join[] =>
  edges.flatMap((from, i): Join[] => {
    const to = edges[i + 1];
    const side = /^(front|back) seam/.exec(from.name)?.[0];
    return side !== undefined && to?.name.startsWith(side)
      ? [
          {
            kind: 'along',
            name: `sleeve, ${from.name} to ${to.name}`,
            piece: 'sleeve',
            from: from.name,
            to: to.name,
          },
        ]
      : [];
  });

function hemJoins({ edges }: Piece): readonly Join[] {
  const at = edges.findIndex(({ name }) => name === 'hem');
  const [before, hem, after] = [edges[at - 1], edges[at], edges[at + 1]];
  if (!before || !hem || !after) return [];
  const corner = (edgeName: string, seam: string): SeamCorner => ({ piece: 'sleeve', edge: edgeName, seam });
  return hem.turn === 'fold'
    ? [before, after].map(({ name }) => ({
        kind: 'mirror',
        name: `sleeve ${name} at the fold of its hem`,
        a: corner(name, 'hem'),
      }))
    : [
        {
          kind: 'across',
          name: 'sleeve hem at the sleeve seam',
          a: corner('hem', before.name),
          b: corner('hem', after.name),
        },
      ];
}

const capJoins: readonly Join[] = [
  {
    kind: 'across',
    name: 'sleeve cap at the sleeve seam',
    a: { piece: 'sleeve', edge: 'cap front underarm', seam: 'front seam' },
    b: { piece: 'sleeve', edge: 'cap back underarm', seam: 'back seam' },
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
export const sleeveGirths = ({ body }: SleeveTable, { ease }: FittedCap): readonly Girth[] => [
  {
    level: 'upper arm',
    body: body.size.upperArmGirth,
    ease: ease.value,
    limb: true,
    parts: [{ kind: 'line', piece: 'sleeve', line: 'upper arm level', times: 1 }],
  },
];
