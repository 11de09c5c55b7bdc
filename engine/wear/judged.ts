import type { Body, MeasurementName } from '../body/body.ts';
import { type FittingChange, mostOf } from '../body/fitting.ts';
import type { Garment } from '../pattern/garment.ts';
import { figures, type RestsOn } from './figures.ts';
import type { Findings } from './findings.ts';

/** One figure of a worn garment beside what it should be, and what a fitter would do about it. */
export interface Judged {
  readonly finding: string;
  readonly unit: 'mm' | '%';
  readonly worn: number;
  /** As it is where the garment is worn by whom it was drafted for; where that is not known, as it should be on anybody. */
  readonly should: number;
  /** Nobody minds so much on either side of that: practice, and the spread between garments worn by their owners. */
  readonly band: number;
  /** How far off the figure itself may be: mesh, folds that fall otherwise, the form's likely range, estimated measurements. */
  readonly within: number;
  readonly restsOn: RestsOn;
  /**
   * `off`: outside the band whatever the figure's own error; `perhaps`: outside, and might not be, as is all that rests on an
   * assumed posture where there is no owner to compare with.
   */
  readonly verdict: 'well' | 'perhaps' | 'off';
  /** What to alter, in a fitting's words, mm. None where it is well, or where a fitting has no word for it. */
  readonly change: FittingChange | undefined;
}

/**
 * The findings on a worn garment, each with its band, how sure it is and what a fitter would alter. `own` is what is found of
 * the same garment on whom it was drafted for: differences between two bodies are surer than either figure.
 *
 * Bands are common practice, no source. How far figures are off was measured: half the spread of those of the leading lady's
 * bodice, on a mesh of 20 mm, with the form's posture moved through its likely range one choice at a time. Alone they are as
 * far off as figures of the eight invented bodies differ in bodices of their own, where that is more: bust points lie from
 * 9 mm below to 9 mm above theirs.
 */
export function judged(
  garment: Garment,
  found: Findings,
  wearer: Body,
  own: Findings | undefined,
): readonly Judged[] {
  const alone = figures(garment, found, own).flatMap((figure): readonly Judged[] => {
    const worn = figure.of(found);
    if (worn === undefined) return [];
    const should = (own && figure.of(own)) ?? figure.should;
    const within = Math.hypot(own ? figure.within.beside : figure.within.alone, spread(wearer, figure.by));
    const off = worn - should;
    const over = (figure.onlyMore ? off : Math.abs(off)) - figure.band;
    const { finding, unit = 'mm', band, restsOn } = figure;
    // What a posture does to one body alone cannot be told from what the garment does.
    const doubtful = over <= within || (!own && restsOn === 'assumed posture');
    const verdict = over <= 0 ? 'well' : doubtful ? 'perhaps' : 'off';
    const change = verdict === 'well' ? undefined : possible(figure.change?.(off));
    return [{ finding, unit, worn, should, band, within, restsOn, verdict, change }];
  });
  return alone.map((each) =>
    each.change?.kind === 'let out' && isStretched(alone) ? { ...each, verdict: 'off' } : each,
  );
}

/** What ease cannot give the cloth is stretched by: then it is sure that ease is wanting, though no more than perhaps how much. */
const isStretched = (all: readonly Judged[]): boolean =>
  all.some(({ unit, verdict }) => unit === '%' && verdict === 'off');

/** How far an estimated measurement may be off, mm; nothing of one that was taken. */
function spread({ known }: Body, name: MeasurementName | undefined): number {
  const from = name && known[name];
  return from?.from === 'estimated' ? from.spread : 0;
}

/** In whole mm, and no more than a fitting takes; nothing where that leaves nothing. */
function possible(change: FittingChange | undefined): FittingChange | undefined {
  if (!change) return undefined;
  const mm = Math.min(mostOf(change), Math.round(change.mm));
  return mm > 0 ? { ...change, mm } : undefined;
}
