import { type ConstructionLog, figure } from '../../engine/pattern/construction-log.ts';
import type { Parts } from '../draw-garment.ts';
import { exposed } from '../finishing.ts';
import type { MakingStyling } from '../making-choices.ts';
import { stagesTogether } from '../sewing-stages.ts';
import type { LiningStyling } from './choices.ts';
import { facingPieces } from './facing-pieces.ts';
import { facingJoins, facingSeams } from './facing-seams.ts';
import type { BodiceInside } from './inside.ts';
import { liningPieces } from './lining-pieces.ts';
import { liningGirths, liningJoins, liningSeams } from './lining-seams.ts';
import { liningRules as rules } from './rules.ts';
import { insideSewing } from './sewing.ts';

/** A bodice, its panels' own seams and joins, and what lining or facings are drawn from. */
export interface Unlined {
  readonly bodice: Parts;
  readonly panelSeams: Parts['seams'];
  readonly panelJoins: Parts['joins'];
  readonly inside: Omit<BodiceInside, 'turnOfCloth' | 'facingEdge'>;
}

/** Adds what finishes a bodice inside: a lining of its panels, or facings. The insert faces itself. */
export function finishInside(
  unlined: Unlined,
  styling: LiningStyling & MakingStyling,
  log: ConstructionLog,
): Parts {
  const { bodice } = unlined;
  const made = styling.inside === 'lined' ? lining(unlined, styling, log) : facings(unlined, styling, log);
  return {
    ...bodice,
    pieces: [...bodice.pieces, ...made.pieces],
    seams: [...bodice.seams, ...made.seams],
    joins: [...bodice.joins, ...made.joins],
    girths: [...bodice.girths, ...made.girths],
    sewing: stagesTogether([
      bodice.sewing ?? {},
      insideSewing({
        kind: styling.inside === 'lined' ? 'lining' : 'facing',
        pieces: made.pieces,
        seams: made.seams,
        setting: unlined.inside.setting,
        turnOfCloth: styling.turnOfCloth,
        facingEdge: styling.facingAllowance,
        exposed: exposed(styling),
      }),
    ]),
  };
}

const finished = (
  inside: Unlined['inside'],
  { turnOfCloth, facingAllowance }: LiningStyling,
): BodiceInside => ({ ...inside, turnOfCloth, facingEdge: facingAllowance });

type Made = Pick<Parts, 'pieces' | 'seams' | 'joins' | 'girths'>;

function lining(
  { bodice, panelSeams, panelJoins, inside }: Unlined,
  styling: LiningStyling,
  log: ConstructionLog,
): Made {
  log.say(
    'Lining',
    `the panels once more, set back by ${figure(styling.turnOfCloth)} mm at neckline, armholes, straps and centre back, so that the seams roll inside; the insert is its own lining`,
    'turn of cloth, common practice, no source',
  );
  const pieces = liningPieces(finished(inside, styling));
  return {
    pieces,
    seams: liningSeams([...bodice.pieces, ...pieces], panelSeams, inside.setting),
    joins: liningJoins(panelJoins),
    girths: liningGirths(bodice.girths),
  };
}

function facings({ bodice, inside }: Unlined, styling: LiningStyling, log: ConstructionLog): Made {
  log.say(
    'Facings',
    `the top of the centre back, ${rules.neckFacing.value} mm deep${inside.setting.sleeves ? '' : `, and bands along the armholes, ${rules.armholeFacing.value} mm deep at the side`}; all set back by ${figure(styling.turnOfCloth)} mm`,
    rules.neckFacing,
  );
  const pieces = facingPieces(finished(inside, styling));
  return {
    pieces,
    seams: facingSeams([...bodice.pieces, ...pieces], inside.setting),
    joins: facingJoins(inside.setting),
    girths: [],
  };
}
