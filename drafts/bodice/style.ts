import type { Issue } from '../../engine/issue.ts';
import type { DraftingTable } from '../../engine/pattern/drafting-table.ts';
import { figure } from '../../engine/text/figure.ts';
import type { bodiceChoices } from './choices.ts';

export type BodiceTable = DraftingTable<typeof bodiceChoices>;

/** The lines a bodice is made of, as they were chosen. */
export interface Style {
  readonly shoulder: 'strap' | 'whole';
  readonly front: 'gathered' | 'plain' | 'parted';
  /** Where the front princess line begins, and the back one. */
  readonly princess: { readonly front: PrincessFrom; readonly back: PrincessFrom };
  /** `natural`: at the neck base, for a bodice that is only tried on. */
  readonly neckline: 'natural' | 'square' | 'round' | 'pointed' | 'sweetheart';
  readonly backNeckline: 'natural' | 'round' | 'pointed';
}

/** From the side neck along the shoulder to the neckline, to the princess line, and to the armhole, mm. */
export interface PlacesOnShoulder {
  readonly inner: number;
  readonly princess: number;
  readonly outer: number;
}

export type PrincessFrom = 'neckline' | 'shoulder' | 'armhole';

/** The style that the choices ask for. Choices that cannot go together are refused, naming what would do. */
export function chosenStyle({ styling, refuse }: BodiceTable): Style {
  const { shoulder, neckline, backNeckline, princess } = styling;
  const front =
    styling.front === 'gathered' ? 'gathered' : styling.centreFront === 'parted' ? 'parted' : 'plain';
  const together = (path: string, message: string): Issue => ({
    code: 'styling-cannot-agree',
    severity: 'error',
    path,
    message,
  });
  if (front === 'gathered' && neckline !== 'square')
    refuse(
      together(
        'neckline',
        `A gathered front is straight along the fold of its neckline, so it cannot be ${neckline}. Choose neckline square, or front plain.`,
      ),
    );
  if (front === 'gathered' && (princess === 'shoulder' || princess === 'armhole'))
    refuse(
      together(
        'princess',
        `A gathered front is sewn to the princess line at the corner of its neckline, so that cannot begin at the ${princess}. Choose princess neckline, or front plain.`,
      ),
    );
  if (shoulder === 'strap' && (princess === 'shoulder' || princess === 'armhole'))
    refuse(
      together(
        'princess',
        `With straps the princess line begins where the strap does, not at the ${princess}. Choose princess neckline, or shoulder whole.`,
      ),
    );
  const widest = Math.max(styling.seamAllowance, styling.armholeAllowance, styling.necklineAllowance);
  if (shoulder === 'strap' && styling.strapWidth < widest)
    refuse(
      together(
        'strapWidth',
        `A strap of ${figure(styling.strapWidth)} mm has no room inside for an allowance of ${figure(widest)} mm. Choose a wider strap, or narrower allowances.`,
      ),
    );
  const begins =
    princess !== 'auto' ? princess : shoulder === 'whole' && front !== 'gathered' ? 'shoulder' : 'neckline';
  const behind = shoulder === 'strap' ? 'neckline' : begins === 'armhole' ? 'armhole' : 'shoulder';
  return { shoulder, front, princess: { front: begins, back: behind }, neckline, backNeckline };
}

/** The block itself in princess panels, to be tried on. */
export const trialStyle: Style = {
  shoulder: 'whole',
  front: 'plain',
  princess: { front: 'shoulder', back: 'shoulder' },
  neckline: 'natural',
  backNeckline: 'natural',
};
