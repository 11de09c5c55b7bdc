import { flatMapped } from '../flat-mapped.ts';
import type { Issue } from '../issue.ts';
import type { Garment } from '../pattern/garment.ts';
import type { EdgeRef, Seam } from '../pattern/seam.ts';
import { inMm, rounded } from '../text/figure.ts';
import { listed } from '../text/listed.ts';
import type { SeamReport } from './report.ts';
import type { Tape } from './tape.ts';

/** A seam walked: the whole of it, and each stretch between one pair of partner notches and the next. */
export interface Walk {
  readonly seam: SeamReport;
  readonly stretches: readonly WalkedStretch[];
}

export interface WalkedStretch {
  /** Where the stretch begins and ends: a notch's name, `start` or `end`. */
  readonly from: string;
  readonly to: string;
  readonly lengthA: number;
  readonly lengthB: number;
  /** How much longer side a is than side b asks for, mm; negative when shorter. */
  readonly excess: number;
}

/** A place on both sides of a seam, mm from its start. */
interface Stop {
  readonly name: string;
  readonly a: number;
  readonly b: number;
}

const start: Stop = { name: 'start', a: 0, b: 0 };

/** One side of a seam laid out straight: its length, and each notch at its distance from the seam's start. */
interface LaidOutSide {
  readonly length: number;
  readonly notches: ReadonlyMap<string, number>;
}

/**
 * Walks every seam of a garment. Two notches of one name, one on either side, are partners. Each stretch
 * between partners must agree as the whole seam does: a = gatherRatio * b + its share of the ease, where ease
 * is shared in proportion to length. Lengths are good to 1e-6 mm an edge. Seams that name an edge which does
 * not exist are left out; `misnamed` reports those.
 */
export function walk(
  garment: Garment,
  tape: Tape,
  bound: number,
): { readonly walks: readonly Walk[]; readonly issues: readonly Issue[] } {
  const walks = flatMapped(garment.seams, (seam) => walkSeam(seam, tape) ?? []);
  return { walks, issues: flatMapped(walks, (walked) => complaints(walked, bound)) };
}

/** Walks one seam; undefined when one of its edges does not exist. */
export function walkSeam(seam: Seam, tape: Tape): Walk | undefined {
  const a = laidOut(seam.a, tape);
  const b = laidOut(seam.b, tape);
  if (!a || !b) return undefined;

  const partners: Stop[] = [];
  for (const [name, at] of a.notches) {
    const partner = b.notches.get(name);
    if (partner !== undefined) partners.push({ name, a: at, b: partner });
  }
  partners.sort((p, q) => p.a - q.a).push({ name: 'end', a: a.length, b: b.length });
  const stretches = partners.map((to, i): WalkedStretch => {
    const from = partners[i - 1] ?? start;
    const lengthA = to.a - from.a;
    const lengthB = to.b - from.b;
    const ease = b.length > 0 ? (seam.ease * lengthB) / b.length : seam.ease;
    const excess = lengthA - (seam.gatherRatio * lengthB + ease);
    return { from: from.name, to: to.name, lengthA, lengthB, excess };
  });

  const whole = Math.abs(a.length - (seam.gatherRatio * b.length + seam.ease));
  let mismatch = whole;
  for (const { excess } of stretches) mismatch = Math.max(mismatch, Math.abs(excess));
  return { seam: asWalked(seam, a.length, b.length, mismatch), stretches };
}

/** A seam with what was found. Copied by spreading, every one would be an object of its own kind to V8. */
function asWalked(seam: Seam, lengthA: number, lengthB: number, mismatch: number): SeamReport {
  const { name, a, b, ease, gatherRatio, felled, side } = seam;
  if (side) return { ...seam, lengthA, lengthB, mismatch };
  const walked = { name, a, b, ease, gatherRatio, lengthA, lengthB, mismatch, felled };
  if (felled) return walked;
  return { name, a, b, ease, gatherRatio, lengthA, lengthB, mismatch };
}

function laidOut(refs: readonly EdgeRef[], tape: Tape): LaidOutSide | undefined {
  const notches = new Map<string, number>();
  let length = 0;
  for (const ref of refs) {
    const edge = tape.edge(ref.piece, ref.edge);
    if (!edge) return undefined;
    const edgeLength = tape.length(edge);
    for (const notch of tape.notches(ref.piece, ref.edge)) {
      if (notches.has(notch.name)) continue;
      notches.set(notch.name, length + (ref.reversed ? edgeLength - notch.at : notch.at));
    }
    length += edgeLength;
  }
  return { length, notches };
}

function complaints({ seam, stretches }: Walk, bound: number): Issue[] {
  if (seam.mismatch <= bound) return [];
  const a = listed(seam.a.map((ref) => ref.piece));
  const b = listed(seam.b.map((ref) => ref.piece));
  const asked = seam.gatherRatio * seam.lengthB + seam.ease;
  const worst = stretches.reduce((x, y) => (Math.abs(y.excess) > Math.abs(x.excess) ? y : x));
  const place =
    stretches.length === 1
      ? 'over the whole seam'
      : `between ${stopNamed(worst.from)} and ${stopNamed(worst.to)}`;
  return [
    {
      code: 'seam-does-not-walk',
      severity: 'error',
      path: seam.name,
      message:
        `The two sides of the seam "${seam.name}" do not agree: ${a} measures ${inMm(seam.lengthA)}, and to ` +
        `fit ${b} (${inMm(seam.lengthB)}${allowedFor(seam)}) it should measure ${inMm(asked)}. Worst ` +
        `${place}, where it is ${inMm(Math.abs(worst.excess))} too ${worst.excess > 0 ? 'long' : 'short'}.`,
      value: seam.mismatch,
      limits: { max: bound, unit: 'mm' },
    },
  ];
}

const stopNamed = (name: string): string =>
  name === 'start' || name === 'end' ? `the ${name}` : `the notch "${name}"`;

function allowedFor(seam: SeamReport): string {
  const gathers = seam.gatherRatio === 1 ? [] : [`gathered ${rounded(seam.gatherRatio, 3)} to 1`];
  const ease = seam.ease === 0 ? [] : [`with ${inMm(seam.ease)} ease`];
  return [...gathers, ...ease].map((words) => `, ${words}`).join('');
}
