import type { Angle, Mm } from '../../engine/pattern/quantity.ts';
import { figure } from '../../engine/text/figure.ts';
import { acrossGores, halves } from './across-gores.ts';
import { type ByGore, byGore, type GoreSeam, isHalf } from './by-gore.ts';
import type { SkirtTable } from './choices.ts';
import { goreHips } from './gore-hips.ts';
import { type HipAndHem, hipAndHem } from './hip-and-hem.ts';
import { skirtRules as rules } from './rules.ts';
import { skirtLength } from './skirt-length.ts';
import { droppedBehind } from './sway-back.ts';
import { sayTakenIn, takenFromGores, takenIn } from './taken-in.ts';

/** What the gores are drawn from. */
export interface GoreSizes {
  /** Waist, hip and hem of each gore; the centre gores' are halves. */
  readonly waist: ByGore<Mm>;
  readonly hip: ByGore<Mm>;
  readonly hem: ByGore<Mm>;
  /** Along each seam from the waist to the hip level. */
  readonly toHip: Readonly<Record<GoreSeam, Mm>>;
  /** From the hip level to the hem, the same along every seam: the hem hangs level. */
  readonly belowHip: Mm;
  /** The angle by which every gore seam leans out below the hip. */
  readonly lean: Angle;
  /** The whole hem. */
  readonly sweep: Mm;
  /** The ease that the fitting left at the hip, mm. */
  readonly hipEase: number;
}

/** The edges of half a skirt's gores that are sewn to another gore, and so can be shaped: the centres run straight. */
const SHAPED_EDGES = 6;

/**
 * Shares hip and hem among the gores of a skirt whose waists are given. What a fitting took in at one level comes to
 * nothing at the next: at the hip what it took at the waist, at the hem, which is chosen, what it took at the hip.
 */
export function goreSizes(table: SkirtTable, waist: ByGore<Mm>): GoreSizes {
  const { size, mm, angle } = table;
  table.heading('Hip and hem of the skirt');
  const atWaist = takenFromGores(table, 'waist');
  const drafted = atWaist
    ? byGore(
        (name) => mm`Waist of the ${name} gore before the fitting: ${waist[name]} + ${atWaist.gores[name]}`,
      )
    : waist;
  const girths = hipAndHem(table);
  const { sweep } = girths;
  const halfHip = mm`Half hip: finished hip ${girths.hip} / 2`;
  const { gores: hip, ...hips } = goreHips(table, halfHip, drafted);
  const flare = mm`Each gore edge flares from hip to hem: (sweep ${sweep} / 2 - half hip ${halfHip}) / 6; the edges of a half that are sewn to another gore [a flare of e on each of 2n edges adds 2ne to the hem]`;
  const hem = byGore((name) =>
    isHalf(name)
      ? mm`Hem of the ${name} gore: hip ${hip[name]} + flare ${flare}; half of the gore`
      : mm`Hem of the ${name} gore: hip ${hip[name]} + 2 x flare ${flare}`,
  );
  const atHip = takenFromGores(table, 'hip');
  const leftHip = sayTakenIn(table, 'hip', girths.hip, size.hipGirth, atHip);

  table.laidOut(sweep, 2, () => acrossGores('hem'));
  table.laidOut(leftHip, 2, () => acrossGores('hip level'));
  if (!atHip) {
    table.laidOut(halfHip, 1, () => acrossGores('hip level'));
    table.laidOut(hips.front, 1, () => acrossGores('hip level', halves.front));
    table.laidOut(hips.back, 1, () => acrossGores('hip level', halves.back));
  }

  table.heading('Lengths of the skirt');
  const rise = mm`Waist rises to the side: ${rules.sideRise} of (hip girth ${size.hipGirth} - waist girth ${size.waistGirth}), at least ${rules.leastRise}, at most ${rules.mostRise}`;
  const atCentre = mm`Waist to hip at the centres: waist to hip along the side ${size.waistToHip} - rise ${rise}`;
  const atPrincess = mm`Waist to hip at the princess seams: waist to hip at the centres ${atCentre} + ${rules.princessRise} of the rise ${rise}`;
  const behind = droppedBehind(table, { 'back princess': atPrincess, 'centre back': atCentre }, waist);
  const length = skirtLength(table);
  const belowHip = mm`Hip to hem along every seam: skirt length ${length} - waist to hip at the centres ${atCentre}, at least ${rules.leastBelowHip}`;
  const lean = angle`Gore seams lean out below the hip: angle of arc (flare ${flare} / hip to hem ${belowHip}) [sector of a cone]`;
  refuseLean(table, lean.value, belowHip.value, girths);
  return {
    waist,
    hip: takenIn(table, 'hip', hip, atHip),
    hem,
    toHip: { 'centre front': atCentre, 'front princess': atPrincess, side: size.waistToHip, ...behind },
    belowHip,
    lean,
    sweep,
    hipEase: girths.ease.value - (atHip?.girth.value ?? 0),
  };
}

/** How wide a skirt is `up` mm above its hem, mm: each edge of a gore has come in by its lean. */
export const sweepAbove = ({ sweep, lean }: GoreSizes, up: number): number =>
  sweep.value - 2 * SHAPED_EDGES * lean.value * up;

/** Refuses a hem that the gores cannot flare to, or come in to, in their length; radians and mm. */
function refuseLean({ refuse }: SkirtTable, lean: number, belowHip: number, girths: HipAndHem): void {
  const [least, most] = [rules.leastLean.quantity.value, rules.mostLean.quantity.value];
  if (lean >= least && lean <= most) return;
  const sweepAt = (angle: number): number => girths.sweepGrowing(2 * SHAPED_EDGES * angle * belowHip);
  const [min, max] = [sweepAt(least), sweepAt(most)];
  refuse({
    code: 'hem-out-of-reach',
    severity: 'error',
    path: 'hemSweep',
    value: sweepAt(lean),
    limits: { min, max, unit: 'mm' },
    message: `A hem of ${figure(sweepAt(lean))} mm is too ${lean > 0 ? 'wide' : 'narrow'} for a skirt that is ${figure(belowHip)} mm long below the hip: its gores could not be cut. Choose a hem between ${Math.ceil(min)} and ${Math.floor(max)} mm (hemSweep, or skirtFullness times the finished hip), or another length.`,
  });
}
