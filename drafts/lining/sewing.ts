import type { EdgeRef, Seam } from '../../engine/pattern/seam.ts';
import type { SewingStep } from '../../engine/pattern/sewing.ts';
import { cautions } from '../cautions.ts';
import { orderOf } from '../finishing.ts';
import { edgeNamed, pieceNamed } from '../piece-edges.ts';
import { sewingRank } from '../sewing-rank.ts';
import type { StagedSewing } from '../sewing-stages.ts';
import type { InsideWork } from './inside.ts';
import { catchDown, sewArmholes, sewNeckline, tackWaist } from './sewing-in.ts';

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
  const finish = kind === 'facings' ? exposed.open : 'enclosed';
  return kind === 'facings'
    ? step('Sew the facings together', own, [
        `Sew the facings to each other, right sides together, ${orderOf(exposed.open)}, and press the seams open.`,
        ...(setting.opening === 'side' && setting.sleeve === 'none'
          ? ['Leave the left side seam open from where the zip begins.']
          : []),
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
