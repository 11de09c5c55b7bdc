import type { Issue } from '../issue.ts';
import type { Body, MeasurementName } from './body.ts';

/** Under this age (years) a wearer is a child: EN 14682 covers children up to 14. */
export const childAge = 14;

/**
 * Where no age is given, someone smaller than all of these is taken for a child, mm: about the largest size for
 * which US rules forbid drawstrings at the neck, girls' 12 (16 CFR 1120, ASTM F1816; its measurements from memory).
 * EN 14682:2007 reaches to 176 cm of stature, which would take in most women.
 */
const childSizes = { stature: 1500, bustGirth: 760, waistGirth: 660, hipGirth: 820 };

/** A back as long as this is no child's; it speaks for a stature that was not measured. Girls' 12, from memory, mm. */
export const childBackLength = 340;

/** Whether someone of this age (years), or of these sizes (mm), counts as a child. */
export function isChild(
  age: number | undefined,
  sizes: Readonly<Partial<Record<MeasurementName, number>>>,
): boolean {
  if (age !== undefined) return age < childAge;
  const small = (name: keyof typeof childSizes): boolean => (sizes[name] ?? Infinity) < childSizes[name];
  const short =
    sizes.stature === undefined
      ? (sizes.backNeckPointToWaist ?? Infinity) < childBackLength
      : small('stature');
  return short && small('bustGirth') && small('waistGirth') && small('hipGirth');
}

/** Says that a wearer was taken for a child, and what follows. */
export function childNote(age: number | undefined): Issue {
  const follows =
    'She gets no drawstring, and what was not measured is estimated from grown women: measure all you can.';
  return age === undefined
    ? {
        code: 'child-wearer',
        severity: 'note',
        path: 'stature',
        message: `These are the stature and girths of a child. ${follows} If she is grown up, give her age.`,
      }
    : {
        code: 'child-wearer',
        severity: 'note',
        path: 'age',
        value: age,
        limits: { min: childAge, unit: 'years' },
        message: `The wearer is under ${childAge}. ${follows}`,
      };
}

/** Why a drawstring at the neckline is refused for this body, and what to do instead; nothing for an adult. */
export function drawstringIssue(body: Pick<Body, 'wearer'>): Issue | undefined {
  if (body.wearer === 'adult') return undefined;
  return {
    code: 'drawstring-refused',
    severity: 'error',
    path: 'necklineGathers',
    value: 'drawstring',
    limits: { min: childAge, unit: 'years' },
    message:
      "A drawstring at a child's neck can catch and strangle. EN 14682 allows none at head or neck under 7 years and none with free ends under 14; 16 CFR 1120 none in sizes 2T to 12. Choose fixed gathers instead: necklineGathers: fixed.",
  };
}
