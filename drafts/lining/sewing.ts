import type { EdgeRef, Seam } from '../../engine/pattern/garment.ts';
import type { Piece } from '../../engine/pattern/piece.ts';
import type { SewingStep } from '../../engine/pattern/sewing.ts';
import { type Finishing, orderOf } from '../finishing.ts';
import { edgeNamed, pieceNamed } from '../piece-edges.ts';
import { sewingRank } from '../sewing-rank.ts';
import type { StagedSewing } from '../sewing-stages.ts';
import { cautions } from '../sewing-words.ts';
import type { BodiceSetting } from './inside.ts';

/** How lining or facings are made up, sewn to the finished edges, and caught down inside. */
export interface InsideWork {
  readonly kind: 'lining' | 'facing';
  readonly pieces: readonly Piece[];
  readonly seams: readonly Seam[];
  readonly setting: BodiceSetting;
  readonly turnOfCloth: number;
  /** What the free edges of facings are turned under by, mm. */
  readonly facingEdge: number;
  /** For edges that stay to be seen inside. */
  readonly exposed: Finishing;
}

/** The steps by stage. Edges say by their rank when they are sewn. */
export function insideSewing(work: InsideWork): StagedSewing {
  const { kind, seams } = work;
  const machined = seams.filter(({ felled }) => !felled);
  const own = machined.filter((seam) => isOwn(work, seam)).map(({ name }) => name);
  const toBodice = machined.filter((seam) => !isOwn(work, seam));
  const sewnAt = (rank: number): readonly string[] =>
    toBodice.filter((seam) => rankOf(work, seam) === rank).map(({ name }) => name);
  const armholes = sewnAt(sewingRank.armhole);
  const waist = sewnAt(sewingRank.waist);
  return {
    inside: [...(own.length > 0 ? [makeUp(work, own)] : []), ...neaten(work)],
    neckline: [
      sewNeckline(work, sewnAt(sewingRank.neckline)),
      ...(armholes.length > 0 ? [sewArmholes(kind, armholes)] : []),
      ...(waist.length > 0 ? [tackWaist(work, waist)] : []),
    ],
    finish: [catchDown(work)],
  };
}

const isOwn = ({ pieces }: InsideWork, { a, b }: Seam): boolean =>
  [...a, ...b].every((ref) => pieces.some(({ name }) => name === ref.piece));

/** When the edge of an inside piece is sewn. */
const rankOf = ({ pieces }: InsideWork, { a: [ref] }: Seam): number | undefined =>
  ref && edgeNamed(pieceNamed(pieces, ref.piece), ref.edge).rank;

const makeUp = ({ kind, setting, exposed }: InsideWork, seams: readonly string[]): SewingStep => ({
  title: kind === 'lining' ? 'Sew the lining together' : 'Sew the facings together',
  sews: seams,
  presses: seams,
  stitch: '301',
  seamClass: 1,
  finish: kind === 'lining' ? 'enclosed' : exposed.open,
  how:
    kind === 'lining'
      ? [
          'Sew the seams of the lining as those of the bodice, notch to notch, and press them open.',
          ...(setting.opening === 'side' ? ['Leave the left side seam open as far as the zip reaches.'] : []),
        ]
      : [
          `Sew the facings to each other, right sides together, ${orderOf(exposed.open)}, and press the seams open.`,
        ],
});

/** The free edges of facings are neatened before they are sewn in. */
function neaten({ pieces, facingEdge }: InsideWork): readonly SewingStep[] {
  const free = pieces.flatMap((piece) =>
    piece.edges.flatMap(({ name, turn }): EdgeRef[] =>
      turn === 'finished' && name !== 'centre back' ? [{ piece: piece.name, edge: name }] : [],
    ),
  );
  if (free.length === 0) return [];
  return [
    {
      title: 'Neaten the free edges of the facings',
      turns: free,
      stitch: '301',
      seamClass: 6,
      finish: 'turned',
      how: [
        'Iron the interfacing onto the wrong sides of the facings. Turn the free edges under, press, and stitch close to the fold.',
      ],
      amounts: [{ says: 'free edges of facings are turned under by', mm: facingEdge }],
      cautions: [cautions.hotEdge],
    },
  ];
}

const sewNeckline = ({ kind, turnOfCloth }: InsideWork, seams: readonly string[]): SewingStep => ({
  title: `Sew the ${kind} to the back neckline`,
  sews: seams,
  presses: seams,
  stitch: '301',
  seamClass: 1,
  finish: 'graded',
  how: [
    `Lay the ${kind} on the back neckline, right sides together, raw edges level, and sew from the centre back to the strap.`,
    'Trim the allowances in steps, clip the hollow edge, and turn the inside in. Stitch the allowances to it close to the seam, so that it stays inside; the seam rolls in by the turn of the cloth.',
  ],
  amounts: [
    { says: `the ${kind} is cut smaller at finished edges, for the turn of the cloth`, mm: turnOfCloth },
  ],
});

const sewArmholes = (kind: InsideWork['kind'], seams: readonly string[]): SewingStep => ({
  title: `Sew the ${kind} to the armholes`,
  sews: seams,
  presses: seams,
  stitch: '301',
  seamClass: 1,
  finish: 'graded',
  how: [
    `Pin the ${kind} round each armhole, right sides together, side seam on side seam, notch to notch, the strap lying free between; sew from one strap end to the other.`,
    'Trim the allowances in steps, clip the hollow edge, turn the inside in and press. Stitch the allowances to it close to the seam as far as the machine reaches.',
  ],
  cautions: [cautions.pins],
});

const tackWaist = ({ exposed }: InsideWork, seams: readonly string[]): SewingStep => ({
  title: 'Stitch the lining to the bodice at the waist',
  sews: seams,
  presses: seams,
  stitch: '301',
  seamClass: 1,
  finish: exposed.together,
  how: [
    `Lay lining and bodice together, wrong sides together, seam on seam, and stitch along the waist as one; ${orderOf(exposed.together)}.`,
  ],
});

function catchDown({ kind, pieces, seams, setting }: InsideWork): SewingStep {
  const felled = seams.filter((seam) => seam.felled).map(({ name }) => name);
  const atZip = pieces.flatMap((piece) =>
    piece.edges.flatMap(({ name, turn }): EdgeRef[] =>
      turn === 'finished' && name === 'centre back' ? [{ piece: piece.name, edge: name }] : [],
    ),
  );
  const zip = setting.opening === 'back' ? 'the zip' : 'the zip at the left side';
  return {
    title: `Fell the ${kind} inside`,
    ...(felled.length > 0 ? { sews: felled } : {}),
    ...(atZip.length > 0 ? { turns: atZip } : {}),
    stitch: '200',
    seamClass: 2,
    finish: 'felled',
    how:
      kind === 'lining'
        ? [
            `Turn the open edges of the lining under along their lines and pin them over the seams of the bodice: along the tape of ${zip}, clear of its teeth, over the ends of the straps, the sides and the foot of the insert${setting.skirt ? ', at the waist' : ''}${setting.sleeves ? ', and round the armholes' : ''}. Fell them by hand.`,
            'Take up only the allowances, so that no stitch shows outside.',
          ]
        : [
            `Turn the ends of the facings under and fell them: to the tape of ${zip}, to the seam allowances, over the ends of the straps. Take up only the allowances, so that no stitch shows outside.`,
          ],
  };
}
