import { DraftMistake } from '../../draft-mistake.ts';
import { bulge } from '../compile/bulge.ts';
import type { Equations } from '../compile/equations.ts';
import { type CubicSlots, curveSlots, type Slots } from '../compile/slots.ts';
import type { RelationOf } from './relation-of.ts';

/**
 * The curvature of a cubic keeps its sign. The cross product of its first two derivatives is a quadratic with the
 * Bernstein coefficients
 *
 *     18 cross(d0, d1),   9 cross(d0, d2),   18 cross(d1, d2)
 *
 * where d0, d1, d2 are the legs of the control polygon. It is not negative on [0, 1] just when the outer two are
 * not and cross(d0, d2) >= -2 sqrt(cross(d0, d1) cross(d1, d2)). For handles longer than nothing the outer two say
 * that the bulge at each end is not negative (mm). The last can only fail where the cubic turns by more than half
 * a circle, and is then written without its root, over the chord of the first guess (mm).
 */
export function noInflection(relation: RelationOf<'no inflection'>, slots: Slots): Equations {
  const { name, turns } = relation;
  const curve = cubicNamed(slots, relation.curve, name);
  const [fx, fy, tx, ty, startAngle, startLength, endAngle, endLength] = curve.slots;
  const { guess } = slots;
  const chord = Math.hypot((guess[tx] ?? 0) - (guess[fx] ?? 0), (guess[ty] ?? 0) - (guess[fy] ?? 0)) || 1;
  return {
    name,
    goal: 'not negative',
    unit: 'mm',
    scale: 1,
    rows: 3,
    elements: [
      {
        slots: curve.slots,
        linear: false,
        evaluate: (x, values, jacobian) => {
          const atStart = turns * bulge(x, curve, 'start', jacobian, 0);
          const atEnd = turns * bulge(x, curve, 'end', jacobian, 8);
          for (let k = 0; k < 16; k++) jacobian[k] = turns * (jacobian[k] as number);
          values[0] = atStart;
          values[1] = atEnd;
          const turned = (x[endAngle] as number) - (x[startAngle] as number);
          const s = turns * Math.sin(turned);
          if (s >= 0) {
            values[2] = chord;
            jacobian.fill(0, 16);
            return;
          }
          const start = x[startLength] as number;
          const end = x[endLength] as number;
          values[2] = (4 * atStart * atEnd - start * end * s * s) / chord;
          for (let k = 0; k < 8; k++)
            jacobian[16 + k] =
              (4 * (atStart * (jacobian[8 + k] as number) + atEnd * (jacobian[k] as number))) / chord;
          const byAngle = (2 * start * end * s * turns * Math.cos(turned)) / chord;
          jacobian[20] = (jacobian[20] as number) + byAngle;
          jacobian[21] = (jacobian[21] as number) - (end * s * s) / chord;
          jacobian[22] = (jacobian[22] as number) - byAngle;
          jacobian[23] = (jacobian[23] as number) - (start * s * s) / chord;
        },
      },
    ],
  };
}

/** A curve that must be a cubic: a line has no curvature to speak of. */
export function cubicNamed(slots: Slots, curve: string, user: string): CubicSlots {
  const found = curveSlots(slots, curve, user);
  if (found.kind === 'line')
    throw new DraftMistake(`“${user}” needs a cubic, and “${curve}” is a line.`, [user, curve]);
  return found;
}
