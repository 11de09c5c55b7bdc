import type { Mm } from '../../engine/pattern/quantity.ts';
import type { Levels } from './levels.ts';
import { foundationRules as rules } from './rules.ts';
import type { FoundationTable } from './table.ts';

/** Where the girths go: half a body, from centre back to centre front. */
export interface SharedWidths {
  /** Width of the back and of the front at bust level, side seam to centre. */
  readonly back: Mm;
  readonly front: Mm;
  /** What each edge of the side seam gives from bust level to the waist: straight from underarm to waist. */
  readonly sideAtWaist: Mm;
  /** How far each edge of the side seam lies inside that straight line at the under-bust level. */
  readonly sideUnderBust: Mm;
  /** What the centre back seam gives at the waist; nothing at the neck, in proportion between. */
  readonly centreBackAtWaist: Mm;
  /** What the princess seams take out below the bust, both edges together. */
  readonly frontPrincess: { readonly underBust: Mm; readonly waist: Mm };
  readonly backPrincess: { readonly bust: Mm; readonly underBust: Mm; readonly waist: Mm };
  /** The half girth with its ease at the waist. */
  readonly halfWaist: Mm;
  /** How the half girths were shared between back and front. */
  readonly shares: WidthShares;
  /** From bust level on: what each edge of the side seam gives, and the centre back; how far a princess edge may open to the waist. */
  readonly below: { readonly sideUnderBust: Mm; readonly centreBackAtWaist: Mm; readonly princessOpens: Mm };
}

/** Half a girth with its ease, the back's width of it and the front's, at each level. */
export type WidthShares = Readonly<
  Record<'bust' | 'underBust' | 'waist', { readonly half: Mm; readonly back: Mm; readonly front: Mm }>
>;

/**
 * Shares the girths among the panels. The back is a rib cage that tapers evenly from the underarm to the waist; the
 * breast is the front's, at bust level only, and its princess seam takes it back out below.
 */
export function shareWidths(table: FoundationTable, levels: Levels, bustEase: Mm): SharedWidths {
  const { size, choice } = table;
  const { underarm, bust, underBust, waist, sideWaist } = levels;
  const halfChest = table.mm`Half chest at the underarm: (upper chest girth ${size.upperChestGirth} + ease ${bustEase}) / 2`;
  const halfBust = table.mm`Half bust: (bust girth ${size.bustGirth} + ease ${bustEase}) / 2`;
  const halfUnderBust = table.mm`Half under-bust: (under-bust girth ${size.underBustGirth} + ease ${choice.underBustEase}) / 2`;
  const halfWaist = table.mm`Half waist: (waist girth ${size.waistGirth} + ease ${choice.waistEase}) / 2`;

  const backChest = table.mm`Back width at the underarm: half chest ${halfChest} / 2 - ${rules.frontLarger}`;
  const backWaist = table.mm`Back width at the waist: half waist ${halfWaist} / 2 - ${rules.frontLarger}`;
  const perMm = table.ratio`Taper of the back, for each mm down: (width at the underarm ${backChest} - width at the waist ${backWaist}) / (waist level ${waist} - underarm level ${underarm})`;
  const back = table.mm`Back width at bust level: back width at the underarm ${backChest} - taper ${perMm} x (bust level ${bust} - underarm level ${underarm})`;
  const front = table.mm`Front width at bust level: half bust ${halfBust} - back width ${back}; the breast is all in front`;
  const frontWaist = table.mm`Front width at the waist: half waist ${halfWaist} - back width there ${backWaist}`;

  const suppression = table.mm`Taken in from underarm to waist: half chest ${halfChest} - half waist ${halfWaist}`;
  const sideAtWaist = table.mm`Side seam takes in, each edge: ${rules.sideShare} of what is taken in ${suppression} / 2`;
  const centreBackAtWaist = table.mm`Centre back takes in at the waist: ${rules.centreBackShare} of what is taken in ${suppression}, at least 0, at most ${rules.centreBackLimit}`;

  const mostLean = table.mm`Opening of one princess edge below the under-bust level: (waist level ${waist} - under-bust level ${underBust}) x tangent of ${rules.princessLean}`;
  const evenBack = table.mm`Back width under the bust by an even taper: back width at bust level ${back} - taper ${perMm} x (under-bust level ${underBust} - bust level ${bust})`;
  const opens = table.mm`Opening of the front below the under-bust level: front width at the waist ${frontWaist} - (half under-bust ${halfUnderBust} - back width there ${evenBack})`;
  const beyond = table.mm`Opening that two princess edges cannot take: front opens by ${opens} - 2 x one edge ${mostLean}, at least 0`;
  const backGives = table.mm`Back gives in under the bust: what they cannot take ${beyond}, at most ${rules.backGives}`;
  const sideUnderBust = table.mm`Side seam gives in under the bust, each edge: (what they cannot take ${beyond} - what the back gives ${backGives}) / 2, at most ${rules.sideGives}`;
  const backUnderBust = table.mm`Back width under the bust: by an even taper ${evenBack} - what the back gives ${backGives} - what the side gives ${sideUnderBust}`;
  const frontUnderBust = table.mm`Front width under the bust: half under-bust ${halfUnderBust} - back width there ${backUnderBust}`;

  const depth = table.ratio`Share of the way from bust level to waist at the under-bust level: (under-bust level ${underBust} - bust level ${bust}) / (waist level ${waist} - bust level ${bust})`;
  const sideDepth = table.ratio`The same share along the side seam, whose waist lies lower: (under-bust level ${underBust} - bust level ${bust}) / (waist level at the side seam ${sideWaist} - bust level ${bust})`;
  const sideThere = table.mm`Side seam has taken in under the bust, each edge: so far down ${sideDepth} x what it takes in ${sideAtWaist} + what it gives in ${sideUnderBust}`;
  const frontPrincess = {
    underBust: table.mm`Front princess takes in under the bust: front width at bust level ${front} - under the bust ${frontUnderBust} - side seam ${sideThere}`,
    waist: table.mm`Front princess takes in at the waist: front width at bust level ${front} - at the waist ${frontWaist} - side seam ${sideAtWaist}`,
  };
  const centreBackFromBust = table.mm`Centre back takes in from bust level to waist: what it takes in at the waist ${centreBackAtWaist} x (waist level ${waist} - bust level ${bust}) / waist level ${waist}`;
  const fromBust = table.mm`Back princess takes in from bust level to waist: back width at bust level ${back} - at the waist ${backWaist} - side seam ${sideAtWaist} - centre back ${centreBackFromBust}`;
  const blade = table.mm`Back princess takes in at bust level: ${rules.bladeShare} of what it takes in below ${fromBust}, at least 0; the panels are that much wider at the shoulder blade`;
  const backPrincess = {
    bust: blade,
    underBust: table.mm`Back princess takes in under the bust: for the blade ${blade} + back width at bust level ${back} - under the bust ${backUnderBust} - side seam ${sideThere} - so far down ${depth} x centre back ${centreBackFromBust}`,
    waist: table.mm`Back princess takes in at the waist: for the blade ${blade} + from bust level to waist ${fromBust}`,
  };
  return {
    back,
    front,
    sideAtWaist,
    sideUnderBust,
    centreBackAtWaist,
    frontPrincess,
    backPrincess,
    halfWaist,
    shares: {
      bust: { half: halfBust, back, front },
      underBust: { half: halfUnderBust, back: backUnderBust, front: frontUnderBust },
      waist: { half: halfWaist, back: backWaist, front: frontWaist },
    },
    below: { sideUnderBust: sideThere, centreBackAtWaist: centreBackFromBust, princessOpens: mostLean },
  };
}
