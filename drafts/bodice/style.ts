import type { Issue } from '../../engine/issue.ts';
import type { DraftingTable } from '../../engine/pattern/drafting-table.ts';
import type { StylingOf } from '../../engine/pattern/styling.ts';
import { figure } from '../../engine/text/figure.ts';
import type { bodiceChoices } from './choices.ts';

export type BodiceTable = DraftingTable<typeof bodiceChoices>;

type BodiceStyling = StylingOf<typeof bodiceChoices>;

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

/** Choices that cannot go together, whatever the body, each with what would do instead. */
export function styleClashes(styling: BodiceStyling): readonly Issue[] {
  const { shoulder, neckline, princess } = styling;
  const gathered = styling.front === 'gathered';
  const elsewhere = princess === 'shoulder' || princess === 'armhole';
  const widest = Math.max(styling.seamAllowance, styling.armholeAllowance, styling.necklineAllowance);
  const clash = (is: boolean, path: string, message: string): readonly Issue[] =>
    is ? [{ code: 'styling-cannot-agree', severity: 'error', path, message }] : [];
  return [
    ...clash(
      gathered && neckline !== 'square',
      'neckline',
      `A gathered front is straight along the fold of its neckline, so it cannot be ${neckline}. Choose neckline square, or front plain.`,
    ),
    ...clash(
      gathered && elsewhere,
      'princess',
      `A gathered front is sewn to the princess line at the corner of its neckline, so that cannot begin at the ${princess}. Choose princess neckline, or front plain.`,
    ),
    ...clash(
      shoulder === 'strap' && elsewhere,
      'princess',
      `With straps the princess line begins where the strap does, not at the ${princess}. Choose princess neckline, or shoulder whole.`,
    ),
    ...clash(
      shoulder === 'strap' && styling.strapWidth < widest,
      'strapWidth',
      `A strap of ${figure(styling.strapWidth)} mm has no room inside for an allowance of ${figure(widest)} mm. Choose a wider strap, or narrower allowances.`,
    ),
  ];
}

/** The style that the choices ask for. Choices that cannot go together are refused. */
export function chosenStyle({ styling, refuse }: BodiceTable): Style {
  for (const clash of styleClashes(styling)) refuse(clash);
  const { shoulder, neckline, backNeckline, princess } = styling;
  const front =
    styling.front === 'gathered' ? 'gathered' : styling.centreFront === 'parted' ? 'parted' : 'plain';
  const begins =
    princess !== 'auto' ? princess : shoulder === 'whole' && front !== 'gathered' ? 'shoulder' : 'neckline';
  const behind = shoulder === 'strap' ? 'neckline' : begins === 'armhole' ? 'armhole' : 'shoulder';
  return { shoulder, front, princess: { front: begins, back: behind }, neckline, backNeckline };
}
