import type { Body } from '../../engine/body/body.ts';
import { type ConstructionLog, figure } from '../../engine/pattern/construction-log.ts';
import type { BodiceStyling } from './choices.ts';
import type { Levels } from './levels.ts';
import { bodiceRules as rules } from './rules.ts';

/** Where the girths go: half a body, from centre back to centre front, mm. */
export interface SharedWidths {
  /** Width of the back and of the front at bust level, side seam to centre. */
  readonly back: number;
  readonly front: number;
  /** What each edge of the side seam gives at the waist; in between in proportion, for it is straight. */
  readonly sideAtWaist: number;
  /** What the centre back seam gives at the waist; nothing at the neck, in proportion between. */
  readonly centreBackAtWaist: number;
  /** What the princess seams take out below the bust, both edges together. Negative where they add. */
  readonly frontPrincess: { readonly underBust: number; readonly waist: number };
  readonly backPrincess: { readonly bust: number; readonly underBust: number; readonly waist: number };
  /** The half girth with its ease at the waist. */
  readonly halfWaist: number;
}

/** The same once seams were taken in or let out at a fitting. */
export interface Widths extends SharedWidths {
  /** As shared out before the fitting: the princess lines stay where that puts them. */
  readonly drafted: SharedWidths;
  /** What the fitting took from half the girth at each level, mm; less than nothing where it let out. */
  readonly taken: { readonly bust: number; readonly underBust: number; readonly waist: number };
}

/** Shares the girths among the panels. */
export function shareWidths(
  body: Body,
  styling: BodiceStyling,
  levels: Levels,
  log: ConstructionLog,
): SharedWidths {
  const { bustGirth, underBustGirth, waistGirth } = body.size;

  const halfBust = log.mm(
    'Half bust',
    `(bust girth ${figure(bustGirth)} + ease ${styling.bustEase}) / 2`,
    (bustGirth + styling.bustEase) / 2,
    'measurement and styling',
  );
  const halfUnderBust = log.mm(
    'Half under-bust',
    `(under-bust girth ${figure(underBustGirth)} + ease ${styling.underBustEase}) / 2`,
    (underBustGirth + styling.underBustEase) / 2,
    'measurement and styling',
  );
  const halfWaist = log.mm(
    'Half waist',
    `(waist girth ${figure(waistGirth)} + ease ${styling.waistEase}) / 2`,
    (waistGirth + styling.waistEase) / 2,
    'measurement and styling',
  );

  const cup = bustGirth - underBustGirth;
  const frontMore = log.mm(
    'Front larger than back, each side of the half',
    `(cup difference ${figure(cup)} - ${rules.cupInBoth.value}) / 4, never less than nothing`,
    Math.max(0, cup - rules.cupInBoth.value) / 4,
    rules.cupInBoth,
  );
  const front = log.mm(
    'Front width at bust',
    `half bust ${figure(halfBust)} / 2 + ${figure(frontMore)}`,
    halfBust / 2 + frontMore,
    'construction',
  );
  const back = log.mm(
    'Back width at bust',
    `half bust ${figure(halfBust)} / 2 - ${figure(frontMore)}`,
    halfBust / 2 - frontMore,
    'construction',
  );

  const suppression = log.mm(
    'Waist suppression of the half',
    `half bust ${figure(halfBust)} - half waist ${figure(halfWaist)}`,
    halfBust - halfWaist,
    'construction',
  );
  const sideAtWaist = log.mm(
    'Side seam takes in, each edge',
    `${rules.sideShare.value} / 2 x ${figure(suppression)}`,
    (rules.sideShare.value / 2) * suppression,
    rules.sideShare,
  );
  const centreBackAtWaist = log.mm(
    'Centre back takes in at the waist',
    `${rules.centreBackShare.value} x ${figure(suppression)}, from nothing to ${rules.centreBackLimit.value}`,
    Math.min(Math.max(0, rules.centreBackShare.value * suppression), rules.centreBackLimit.value),
    rules.centreBackShare,
  );

  const centreBackBelowBust = (level: number): number =>
    (centreBackAtWaist * (level - levels.bust)) / levels.waist;
  const sideBelowBust = (sideAtWaist * (levels.underBust - levels.bust)) / (levels.waist - levels.bust);
  const princessAtUnderBust = log.mm(
    'Left for the princess seams under the bust',
    `half bust - half under-bust - side seam 2 x ${figure(sideBelowBust)} - centre back ${figure(centreBackBelowBust(levels.underBust))}`,
    halfBust - halfUnderBust - 2 * sideBelowBust - centreBackBelowBust(levels.underBust),
    'construction',
  );
  const princessAtWaist = log.mm(
    'Left for the princess seams at the waist',
    `half bust - half waist - side seam 2 x ${figure(sideAtWaist)} - centre back ${figure(centreBackBelowBust(levels.waist))}`,
    halfBust - halfWaist - 2 * sideAtWaist - centreBackBelowBust(levels.waist),
    'construction',
  );
  const frontUnder = rules.frontShareAtUnderBust.value;
  const frontWaist = rules.frontShareAtWaist.value;
  const frontPrincess = {
    underBust: log.mm(
      'Front princess takes in under the bust',
      `${frontUnder} x ${figure(princessAtUnderBust)}`,
      frontUnder * princessAtUnderBust,
      rules.frontShareAtUnderBust,
    ),
    waist: log.mm(
      'Front princess takes in at the waist',
      `${frontWaist} x ${figure(princessAtWaist)}`,
      frontWaist * princessAtWaist,
      rules.frontShareAtWaist,
    ),
  };
  const backAlone = princessAtUnderBust - frontPrincess.underBust;
  const blade = log.mm(
    'Back princess takes in at bust level',
    `${rules.bladeShare.value} x what it takes under the bust beyond this, ${figure(backAlone)}; the panels are that much wider at the shoulder blade`,
    Math.max(0, rules.bladeShare.value * backAlone),
    rules.bladeShare,
  );
  const backPrincess = {
    bust: blade,
    underBust: blade + backAlone,
    waist: blade + princessAtWaist - frontPrincess.waist,
  };
  log.say(
    'Back princess takes in the rest',
    `${figure(backPrincess.underBust)} mm under the bust, ${figure(backPrincess.waist)} mm at the waist`,
    'construction',
  );
  return { back, front, sideAtWaist, centreBackAtWaist, frontPrincess, backPrincess, halfWaist };
}
