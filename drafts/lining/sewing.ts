import type { EdgeRef, Seam } from '../../engine/pattern/garment.ts';
import type { Piece } from '../../engine/pattern/piece.ts';
import type { SewingStep } from '../../engine/pattern/sewing.ts';
import type { Style } from '../bodice/style.ts';
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
  readonly style: Style;
  readonly setting: BodiceSetting;
  readonly turnOfCloth: number;
  /** What the free edges of facings are turned under by, mm. */
  readonly facingEdge: number;
  /** For edges that stay to be seen inside. */
  readonly exposed: Finishing;
}

/** The steps by stage. Edges say by their rank when they are sewn. */
export function insideSewing(work: InsideWork): StagedSewing {
  const machined = work.seams.filter(({ felled }) => !felled);
  const own = machined.filter((seam) => isOwn(work, seam));
  const toBodice = machined.filter((seam) => !isOwn(work, seam));
  const sewnAt = (rank: number): readonly string[] =>
    toBodice.filter((seam) => rankOf(work, seam) === rank).map(({ name }) => name);
  const armholes = sewnAt(sewingRank.armhole);
  const waist = sewnAt(sewingRank.waist);
  return {
    inside: [...makeUp(work, own), ...neaten(work)],
    neckline: [
      sewNeckline(work, sewnAt(sewingRank.neckline)),
      ...(armholes.length > 0 ? [sewArmholes(work, armholes)] : []),
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

/** The seams of lining or facings with themselves; a shoulder that runs over two panels when these are joined. */
function makeUp({ kind, setting, exposed }: InsideWork, own: readonly Seam[]): readonly SewingStep[] {
  const isLater = ({ a, b }: Seam): boolean => a.length > 1 || b.length > 1;
  const names = (seams: readonly Seam[]): readonly string[] => seams.map(({ name }) => name);
  const [first, later] = [own.filter((seam) => !isLater(seam)), own.filter(isLater)];
  const step = (title: string, seams: readonly Seam[], how: readonly string[]): readonly SewingStep[] =>
    seams.length === 0
      ? []
      : [{ title, sews: names(seams), presses: names(seams), stitch: '301', seamClass: 1, finish, how }];
  const finish = kind === 'facing' ? exposed.open : 'enclosed';
  return kind === 'facing'
    ? step('Sew the facings together', own, [
        `Sew the facings to each other, right sides together, ${orderOf(exposed.open)}, and press the seams open.`,
      ])
    : [
        ...step('Sew the lining together', first, [
          'Sew the seams of the lining in the order of those of the bodice, notch to notch, and press them open.',
          ...(setting.opening === 'side' ? ['Leave the left side seam open as far as the zip reaches.'] : []),
        ]),
        ...step('Sew the shoulders of the lining', later, [
          'Sew the shoulders of the lining, right sides together, princess seams meeting, and press them open.',
        ]),
      ];
}

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

function sewNeckline({ kind, style, turnOfCloth }: InsideWork, seams: readonly string[]): SewingStep {
  const where = style.front === 'gathered' && style.shoulder === 'strap' ? 'back neckline' : 'neckline';
  return {
    title: `Sew the ${kind} to the ${where}`,
    sews: seams,
    presses: seams,
    stitch: '301',
    seamClass: 1,
    finish: 'graded',
    how: [
      `Lay the ${kind} on the ${where}, right sides together, raw edges level, and sew ${wayRoundNeck(style)}.`,
      'Trim the allowances in steps, clip the hollow edge and into every corner, and turn the inside in. Stitch the allowances to it close to the seam, so that it stays inside; the seam rolls in by the turn of the cloth.',
    ],
    amounts: [
      { says: `the ${kind} is cut smaller at finished edges, for the turn of the cloth`, mm: turnOfCloth },
    ],
  };
}

/** From where to where the neckline is sewn: all round, or as far as insert and straps face themselves. */
function wayRoundNeck({ front, shoulder }: Style): string {
  if (shoulder === 'whole')
    return front === 'gathered'
      ? 'from the centre back over each shoulder down to the insert'
      : 'from the centre back over the shoulders all round';
  return front === 'gathered'
    ? 'from the centre back to the strap'
    : 'from the centre back to each strap, and in front from strap to strap';
}

function sewArmholes({ kind, style }: InsideWork, seams: readonly string[]): SewingStep {
  const pin = `Pin the ${kind} round each armhole, right sides together, side seam on side seam, notch to notch`;
  const way =
    style.shoulder === 'strap'
      ? [`${pin}, the strap lying free between; sew from one strap end to the other.`]
      : kind === 'facing'
        ? [`${pin}, shoulder seam on shoulder seam; sew all round.`]
        : [
            `Reach up between bodice and lining, draw the raw edges of one armhole out, and pin them as they meet there: right sides together, side seam on side seam, notch to notch.`,
            'Sew each armhole in two passes, from the side seam up to the shoulder seam, first in front, then behind; draw out for each what it needs.',
          ];
  return {
    title: `Sew the ${kind} to the armholes`,
    sews: seams,
    presses: seams,
    stitch: '301',
    seamClass: 1,
    finish: 'graded',
    how: [
      ...way,
      'Trim the allowances in steps, clip the hollow edge, turn the inside in and press. Stitch the allowances to it close to the seam as far as the machine reaches.',
    ],
    cautions: [cautions.pins],
  };
}

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

function catchDown(work: InsideWork): SewingStep {
  const { kind, pieces, seams } = work;
  const felled = seams.filter((seam) => seam.felled).map(({ name }) => name);
  const atZip = pieces.flatMap((piece) =>
    piece.edges.flatMap(({ name, turn }): EdgeRef[] =>
      turn === 'finished' && name === 'centre back' ? [{ piece: piece.name, edge: name }] : [],
    ),
  );
  return {
    title: `Fell the ${kind} inside`,
    ...(felled.length > 0 ? { sews: felled } : {}),
    ...(atZip.length > 0 ? { turns: atZip } : {}),
    stitch: '200',
    seamClass: 2,
    finish: 'felled',
    how: [
      kind === 'lining'
        ? `Turn the open edges of the lining under along their lines and pin them over the seams of the bodice: ${overWhat(work).join(', ')}. Fell them by hand.`
        : `Turn the ends of the facings under and fell them: ${[...overWhat(work), 'to the seam allowances'].join(', ')}.`,
      'Take up only the allowances, so that no stitch shows outside.',
    ],
  };
}

/** What lining or facings are felled to and over. */
function overWhat({ kind, style, setting }: InsideWork): readonly string[] {
  const { sleeve, skirt, opening } = setting;
  const isLining = kind === 'lining';
  const places: readonly (readonly [there: boolean, where: string])[] = [
    [
      true,
      `along the tape of ${opening === 'back' ? 'the zip' : 'the zip at the left side'}, clear of its teeth`,
    ],
    [style.shoulder === 'strap' && (isLining || sleeve === 'none'), 'over the ends of the straps'],
    [style.front === 'gathered' && isLining, 'over the sides and the foot of the insert'],
    [skirt && isLining, 'at the waist'],
    [sleeve !== 'none' && isLining, 'round the armholes'],
  ];
  return places.flatMap(([there, where]) => (there ? [where] : []));
}
