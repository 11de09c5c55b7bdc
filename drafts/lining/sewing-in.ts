import type { EdgeRef } from '../../engine/pattern/seam.ts';
import type { SewingStep } from '../../engine/pattern/sewing.ts';
import type { Style } from '../bodice/style.ts';
import { cautions } from '../cautions.ts';
import { orderOf } from '../finishing.ts';
import type { InsideWork } from './inside.ts';

/** Lining or facings are sewn to the necklines. */
export function sewNeckline({ kind, style, turnOfCloth }: InsideWork, seams: readonly string[]): SewingStep {
  const where = style.front === 'gathered' && style.shoulder === 'strap' ? 'back neckline' : 'neckline';
  const hasCorner = style.front !== 'gathered' && style.neckline !== 'round';
  return {
    title: `Sew the ${kind} to the ${where}`,
    sews: seams,
    presses: seams,
    stitch: '301',
    seamClass: 1,
    finish: 'graded',
    how: [
      `Lay the ${kind} on the ${where}, right sides together, raw edges level, and sew ${wayRoundNeck(style)}.`,
      `Trim the allowances in steps, clip the hollow edge${hasCorner ? ' and into every corner' : ''}, and turn the inside in. Stitch the allowances to it close to the seam, so that it stays inside; the seam rolls in by the turn of the cloth.`,
    ],
    amounts: [
      {
        says: `the ${kind} ${kind === 'lining' ? 'is' : 'are'} cut smaller at finished edges, for the turn of the cloth`,
        mm: turnOfCloth,
      },
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

/** And to armholes that have no sleeves. */
export function sewArmholes({ kind, style }: InsideWork, seams: readonly string[]): SewingStep {
  const pin = `Pin the ${kind} round each armhole, right sides together, side seam on side seam, notch to notch`;
  const way =
    style.shoulder === 'strap'
      ? [`${pin}, the strap lying free between; sew from one strap end to the other.`]
      : kind === 'facings'
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

/** A lining without a skirt below it is held at the waist. */
export const tackWaist = ({ exposed }: InsideWork, seams: readonly string[]): SewingStep => ({
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

/** At the very end open edges and ends are felled by hand. */
export function catchDown(work: InsideWork): SewingStep {
  const { kind, pieces, seams } = work;
  const felled = seams.filter((seam) => seam.felled).map(({ name }) => name);
  const atZip = pieces.flatMap((piece) =>
    piece.edges.flatMap(({ name, turn }): EdgeRef[] =>
      turn === 'finished' && name === 'centre back' ? [{ piece: piece.name, edge: name }] : [],
    ),
  );
  const places = overWhat(work);
  const where = places.join(', ');
  return {
    title: `Fell the ${kind} inside`,
    ...(felled.length > 0 ? { sews: felled } : {}),
    ...(atZip.length > 0 ? { turns: atZip } : {}),
    stitch: '200',
    seamClass: 2,
    finish: 'felled',
    how: [
      ...(kind === 'lining'
        ? [
            `Turn the open edges of the lining under along their lines and pin them over the seams of the bodice: ${where}. Fell them by hand.`,
          ]
        : [
            ...(places.length > 0 ? [`Turn the ends of the facings under and fell them ${where}.`] : []),
            'Catch the inner edges of the facings to the seams that they cross.',
          ]),
      'Take up only the allowances, so that no stitch shows outside.',
    ],
  };
}

/** What lining or facings are felled to and over. */
function overWhat({ kind, style, setting }: InsideWork): readonly string[] {
  const { sleeve, skirt, opening } = setting;
  const isLining = kind === 'lining';
  const reachesZip = isLining || opening === 'back' || sleeve === 'none';
  const places: readonly (readonly [there: boolean, where: string])[] = [
    [
      reachesZip,
      `along the tape of ${opening === 'back' ? 'the zip' : 'the zip at the left side'}, clear of its teeth`,
    ],
    [style.shoulder === 'strap' && (isLining || sleeve === 'none'), 'over the ends of the straps'],
    [style.front === 'gathered' && isLining, 'over the sides and the foot of the insert'],
    [skirt && isLining, 'at the waist'],
    [sleeve !== 'none' && isLining, 'round the armholes'],
  ];
  return places.flatMap(([there, where]) => (there ? [where] : []));
}
