import type { Body } from '../../engine/body/body.ts';
import { lengthOf, type SketchBuilder, scalarOf, xOf, yOf } from '../../engine/constraints/sketch-builder.ts';
import { point } from '../../engine/geometry/point.ts';
import { type ConstructionLog, figure } from '../../engine/pattern/construction-log.ts';
import { fairLine, fairLines } from '../fair-lines.ts';
import { keepNear } from '../keep-near.ts';
import type { SleeveStyling } from './choices.ts';
import { sleeveRules as rules } from './rules.ts';

/** The armhole a sleeve is set into: its two halves in the sketch, the strap between, and its notches. */
export interface Armhole {
  readonly front: string;
  readonly back: string;
  /** Length of the strap's outer edge, mm. */
  readonly strap: number;
  /** Share of each half, from the underarm, that is sewn flat. */
  readonly frontFlat: number;
  readonly backFlat: number;
  /** No part of it bends tighter than this, mm. */
  readonly leastRadius: number;
  /** About how long the whole armhole is, mm: a first guess only. */
  readonly guess: number;
}

/** The sleeve's lines in the sketch. */
export interface SleeveLines {
  /** The fitted cap below the notches: sewn flat, edge for edge, to the armhole. */
  readonly backFlat: string;
  readonly frontFlat: string;
  /** The crown spread for gathers, from back notch to top to front notch. */
  readonly crown: readonly [string, string];
  /** What the sleeve is spread by, mm. */
  readonly spread: string;
  /** Width of the fitted sleeve at the underarm line, mm. */
  readonly fitted: number;
  /** From the underarm line to the hem, mm. */
  readonly length: number;
}

/**
 * Asks for the sleeve: first a plain cap that fits the armhole edge for edge, then the same cap slashed from
 * notch to notch, spread, and raised for the puff. x = 0 is the middle, front to the right; y = 0 the underarm.
 */
export function planSleeve(
  sketch: SketchBuilder,
  body: Body,
  styling: SleeveStyling,
  armhole: Armhole,
  log: ConstructionLog,
): SleeveLines {
  const { upperArmGirth } = body.size;
  const fitted = log.mm(
    'Sleeve width, fitted',
    `upper arm girth ${figure(upperArmGirth)} + ease ${styling.upperArmEase}`,
    upperArmGirth + styling.upperArmEase,
    'measurement and styling',
  );
  const usual = styling.sleeve === 'long puff' ? rules.longPuffLength : rules.puffLength;
  const length =
    styling.sleeveLength === 'auto'
      ? log.mm('Sleeve seam', `a ${styling.sleeve} sleeve`, usual.value, usual)
      : log.mm('Sleeve seam', 'as chosen', styling.sleeveLength, 'styling');
  const half = fitted / 2;
  const height = rules.capShare.value * armhole.guess;
  const notchX = rules.notchWidth.value * half;
  const notchY = -rules.notchHeight.value * height;

  const level = sketch.fixedAngle('cap square to the sleeve seam', 0);
  const backFoot = sketch.fixed('sleeve back underarm', point(-half, 0));
  const frontFoot = sketch.fixed('sleeve front underarm', point(half, 0));
  const backNotch = sketch.point('sleeve back notch', point(-notchX, notchY));
  const frontNotch = sketch.point('sleeve front notch', point(notchX, notchY));
  const top = sketch.point('plain cap top', point(0, -height), 'y');
  const atBackNotch = sketch.angle('cap at the back notch', -Math.PI / 4);
  const atFrontNotch = sketch.angle('cap at the front notch', Math.PI / 4);

  const backFlat = sketch.curve('cap, back underarm', backFoot, backNotch, {
    start: { angle: level },
    end: { angle: atBackNotch },
  });
  const frontFlat = sketch.curve('cap, front underarm', frontNotch, frontFoot, {
    start: { angle: atFrontNotch },
    end: { angle: level },
  });
  const plainBack = sketch.curve('plain crown, back', backNotch, top, {
    start: { angle: atBackNotch },
    end: { angle: level },
  });
  const plainFront = sketch.curve('plain crown, front', top, frontNotch, {
    start: { angle: level },
    end: { angle: atFrontNotch },
  });

  const spread = sketch.length('sleeve spread', (styling.sleeveFullness - 1) * 2 * notchX, { min: 0 });
  const puffedBack = sketch.point('puffed back notch', point(-notchX, notchY));
  const puffedFront = sketch.point('puffed front notch', point(notchX, notchY));
  const puffedTop = sketch.point('puffed cap top', point(0, -height - styling.puffHeight), 'y');
  const crown = [
    sketch.curve('crown, back', puffedBack, puffedTop, {
      start: { angle: atBackNotch },
      end: { angle: level },
    }),
    sketch.curve('crown, front', puffedTop, puffedFront, {
      start: { angle: level },
      end: { angle: atFrontNotch },
    }),
  ] as const;
  fairLines(sketch, [backFlat, frontFlat, plainBack, plainFront]);
  for (const curve of crown) fairLine(sketch, curve);

  const gathered = [
    lengthOf([armhole.front], armhole.frontFlat - 1),
    lengthOf([armhole.back], armhole.backFlat - 1),
  ];
  const ratio = styling.sleeveFullness;
  sketch.relation(
    {
      kind: 'length',
      name: 'cap equals the armhole below the back notch',
      terms: [lengthOf([backFlat]), lengthOf([armhole.back], -armhole.backFlat)],
      mm: 0,
    },
    {
      kind: 'length',
      name: 'cap equals the armhole below the front notch',
      terms: [lengthOf([frontFlat]), lengthOf([armhole.front], -armhole.frontFlat)],
      mm: 0,
    },
    {
      kind: 'length',
      name: 'plain crown equals the armhole above the notches',
      terms: [lengthOf([plainBack, plainFront]), ...gathered],
      mm: armhole.strap,
    },
    {
      kind: 'length',
      name: 'crown gathers into the armhole above the notches',
      terms: [lengthOf(crown), ...gathered.map(({ curves, times }) => lengthOf(curves, times * ratio))],
      mm: armhole.strap * ratio,
    },
    {
      kind: 'sum',
      name: 'back notch moves out with the spread',
      terms: [xOf(puffedBack), xOf(backNotch, -1), scalarOf(spread, 0.5)],
      value: 0,
    },
    {
      kind: 'sum',
      name: 'front notch moves out with the spread',
      terms: [xOf(puffedFront), xOf(frontNotch, -1), scalarOf(spread, -0.5)],
      value: 0,
    },
    {
      kind: 'sum',
      name: 'back notch keeps its height',
      terms: [yOf(puffedBack), yOf(backNotch, -1)],
      value: 0,
    },
    {
      kind: 'sum',
      name: 'front notch keeps its height',
      terms: [yOf(puffedFront), yOf(frontNotch, -1)],
      value: 0,
    },
    {
      kind: 'sum',
      name: 'the top is raised for the puff',
      terms: [yOf(puffedTop), yOf(top, -1)],
      value: -styling.puffHeight,
    },
  );
  for (const [part, curve] of [
    ['back', backFlat],
    ['front', frontFlat],
  ] as const)
    sketch.relation({
      kind: 'least radius',
      name: `cap below the ${part} notch can be turned`,
      curve,
      mm: armhole.leastRadius,
    });
  keepNear(sketch, 'notches level with each other', [yOf(backNotch), yOf(frontNotch, -1)], 0, 'faint');
  keepNear(sketch, 'back notch across', [xOf(backNotch)], -notchX, 'loose');
  keepNear(sketch, 'front notch across', [xOf(frontNotch)], notchX, 'loose');
  log.say(
    'Plain cap',
    'solved so that it equals the armhole below the notches, edge for edge, and above them altogether',
    'construction',
  );
  log.say(
    'Puff',
    `slash between the notches, spread in parallel until ${ratio} mm of crown meet each mm of armhole, raise the top ${styling.puffHeight} mm, blend`,
    'slash and spread in parallel, common practice, no source',
  );
  return { backFlat, frontFlat, crown, spread, fitted, length };
}
