import type { Body } from '../../engine/body/body.ts';
import { type ConstructionLog, figure } from '../../engine/pattern/construction-log.ts';
import { sayPinned, sayTaken } from '../fitting/say-taken.ts';
import type { SkirtStyling } from './choices.ts';
import { goreHips } from './gore-hips.ts';
import { skirtRules as rules } from './rules.ts';
import { droppedBehind } from './sway-back.ts';
import { takenFromGirth, takenFromGores } from './taken-in.ts';

/** The gores of half a skirt, from centre front to centre back. */
export const goreNames = ['centre front', 'side front', 'side back', 'centre back'] as const;

export type GoreName = (typeof goreNames)[number];

/** One number for each gore. */
export type ByGore = Readonly<Record<GoreName, number>>;

/** The seams of half a skirt, from centre front to centre back. */
export type GoreSeam = 'centre front' | 'front princess' | 'side' | 'back princess' | 'centre back';

/** What the gores are drawn from, mm. */
export interface GoreSizes {
  /** Waist, hip and hem of each gore; the centre gores' are halves. */
  readonly waist: ByGore;
  readonly hip: ByGore;
  readonly hem: ByGore;
  /** Along each seam from the waist to the hip level. */
  readonly toHip: Readonly<Record<GoreSeam, number>>;
  /** From the hip level to the hem, the same along every seam: the hem hangs level. */
  readonly belowHip: number;
  /** The angle by which every gore seam leans out below the hip, radians. */
  readonly lean: number;
  /** The whole hem. */
  readonly sweep: number;
  /** The ease that the fitting left at the hip. */
  readonly hipEase: number;
}

/** Edges of a gore that are sewn to another gore and so can be shaped: the centres run straight. */
const shapedEdges: ByGore = { 'centre front': 1, 'side front': 2, 'side back': 2, 'centre back': 1 };
const allEdges = 6;

/**
 * Shares hip and hem among the gores of a skirt whose waists are given. What a fitting took in at one level comes to
 * nothing at the next: at the hip what it took at the waist, at the hem, which is chosen, what it took at the hip.
 */
export function goreSizes(body: Body, styling: SkirtStyling, waist: ByGore, log: ConstructionLog): GoreSizes {
  const { waistGirth, hipGirth, waistToHip, waistHeight, stature } = body.size;
  const atWaist = takenFromGores(body.fitting, 'waist');
  const drafted = mapGores((name) => waist[name] + atWaist[name]);
  const halfHip = log.mm(
    'Half hip',
    `(hip girth ${figure(hipGirth)} + ease ${styling.hipEase}) / 2`,
    (hipGirth + styling.hipEase) / 2,
    'measurement and styling',
  );
  const hip = goreHips(halfHip, drafted, log);
  const sweep =
    styling.hemSweep === 'auto'
      ? log.mm(
          'Hem sweep',
          `${styling.skirtFullness} x finished hip ${figure(2 * halfHip)}`,
          styling.skirtFullness * 2 * halfHip,
          'styling',
        )
      : log.mm('Hem sweep', 'as chosen', styling.hemSweep, 'styling');
  const flare = log.mm(
    'Each gore edge flares from hip to hem',
    `(half sweep ${figure(sweep / 2)} - half hip ${figure(halfHip)}) / ${allEdges} edges`,
    (sweep / 2 - halfHip) / allEdges,
    'a flare of e on each of 2n edges adds 2ne to the hem',
  );
  const atHip = takenFromGores(body.fitting, 'hip');
  const less = takenFromGirth(atHip);
  sayPinned(body.fitting, ['hip'], log);
  sayTaken('hip', 2 * halfHip, hipGirth, less, log);

  const rise = log.mm(
    'Waist rises to the side',
    `${rules.sideRise.value} x (hip ${figure(hipGirth)} - waist ${figure(waistGirth)}), from ${rules.leastRise.value} to ${rules.mostRise.value}`,
    Math.min(
      Math.max(rules.sideRise.value * (hipGirth - waistGirth), rules.leastRise.value),
      rules.mostRise.value,
    ),
    rules.sideRise,
  );
  const atCentre = log.mm(
    'Waist to hip at the centres',
    `waist to hip ${figure(waistToHip)} along the side - rise ${figure(rise)}`,
    waistToHip - rise,
    'measurement',
  );
  const atPrincess = atCentre + rules.princessRise.value * rise;
  const dropped = droppedBehind(body.fitting, waist, log);
  const length = skirtLength(styling, waistHeight, stature, log);
  const belowHip = log.mm(
    'Hip to hem along every seam',
    `length ${figure(length)} - ${figure(atCentre)}, at least ${rules.leastBelowHip.value}`,
    Math.max(length - atCentre, rules.leastBelowHip.value),
    rules.leastBelowHip,
  );
  const lean = log.angle(
    'Gore seams lean out below the hip',
    `flare ${figure(flare)} / ${figure(belowHip)}`,
    flare / belowHip,
    'sector of a cone',
  );
  refuseLean(lean, belowHip, 2 * halfHip, log);
  return {
    waist,
    hip: mapGores((name) => hip[name] - atHip[name]),
    hem: mapGores((name) => hip[name] + flare * shapedEdges[name]),
    toHip: {
      'centre front': atCentre,
      'front princess': atPrincess,
      side: waistToHip,
      'back princess': atPrincess - dropped['back princess'],
      'centre back': atCentre - dropped['centre back'],
    },
    belowHip,
    lean,
    sweep,
    hipEase: styling.hipEase - less,
  };
}

/** How wide a skirt is `up` mm above its hem, mm: each edge of a gore has come in by its lean. */
export const sweepAbove = ({ sweep, lean }: GoreSizes, up: number): number =>
  sweep - 2 * allEdges * lean * up;

/** Refuses a hem that the gores cannot flare to, or come in to, in their length; radians and mm. */
function refuseLean(lean: number, belowHip: number, hip: number, log: ConstructionLog): void {
  const [least, most] = [rules.leastLean, rules.mostLean].map(({ value }) => (value * Math.PI) / 180);
  if (least === undefined || most === undefined || (lean >= least && lean <= most)) return;
  const sweepAt = (angle: number): number => hip + 2 * allEdges * angle * belowHip;
  const [min, max] = [sweepAt(least), sweepAt(most)];
  log.refuse({
    code: 'hem-out-of-reach',
    severity: 'error',
    path: 'hemSweep',
    value: sweepAt(lean),
    limits: { min, max, unit: 'mm' },
    message: `A hem of ${figure(sweepAt(lean))} mm is too ${lean > 0 ? 'wide' : 'narrow'} for a skirt that is ${figure(belowHip)} mm long below the hip: its gores could not be cut. Choose a hem between ${Math.ceil(min)} and ${Math.floor(max)} mm (hemSweep, or skirtFullness times the finished hip), or another length.`,
  });
}

/** A number for each gore. */
export const mapGores = (of: (name: GoreName) => number): ByGore => ({
  'centre front': of('centre front'),
  'side front': of('side front'),
  'side back': of('side back'),
  'centre back': of('centre back'),
});

function skirtLength(
  styling: SkirtStyling,
  waistHeight: number,
  stature: number,
  log: ConstructionLog,
): number {
  if (styling.skirtLength !== 'auto')
    return log.mm('Skirt length', 'as chosen', styling.skirtLength, 'styling');
  const height = { knee: rules.kneeHeight, calf: rules.calfHeight, ankle: rules.ankleHeight }[
    styling.skirtTo
  ];
  return log.mm(
    'Skirt length',
    `waist height ${figure(waistHeight)} - ${height.value} x stature ${figure(stature)}`,
    waistHeight - height.value * stature,
    height,
  );
}
