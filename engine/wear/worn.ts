import { Bending } from '../cloth/bending.ts';
import type { WovenCloth } from '../cloth/cloth.ts';
import { Contact } from '../cloth/contact.ts';
import { type Enough, Equilibrium, type Settled, toTheEnd } from '../cloth/equilibrium.ts';
import { Membrane } from '../cloth/membrane.ts';
import type { Obstacle } from '../cloth/obstacle.ts';
import { pointAreas } from '../cloth/sheet.ts';
import { Strings } from '../cloth/strings.ts';
import { Weight } from '../cloth/weight.ts';
import type { Garment } from '../pattern/garment.ts';
import { carriedOver } from './carried.ts';
import { drawnCord } from './cord.ts';
import { forcesOnAll, partToHang, placesOf, placesOfAll, strandsOf } from './hung-part.ts';
import { laidRound } from './place.ts';
import { pushOut } from './push-out.ts';
import { type Sewn, sewn } from './sewn.ts';
import type { Stand } from './stand.ts';
import { metBy } from './what-meets.ts';

/** A garment at rest on a body. */
export interface Worn {
  readonly sewn: Sewn;
  /** x, y, z of every point of the sheet, mm. */
  readonly x: Float64Array;
  readonly settled: Settled;
  /** Whoever looked on had seen enough before it was at rest. */
  readonly stopped: boolean;
  /** Size of its triangles, mm. */
  readonly spacing: number;
  /** Green's strain along weft and warp and the shear angle, of every triangle. */
  readonly strains: Float64Array;
  /** Force of the body on every point, N, and the cloth that each stands for, mm^2. */
  readonly forces: Float64Array;
  readonly areas: Float64Array;
}

/** Rest is when the forces left over are this share of the cloth's weight (roots of sums of squares over all points). */
const REST = 0.3;

/** Steps enough for any garment tried, so that the search ends. */
const MOST_STEPS = 300;

/** Damping to begin with, N/mm^3: pieces laid round are some centimetres from where they will hang, those pulled straight or carried over near. */
const FIRST_DAMPING = 1e-4;
const LET_GO_DAMPING = 1e-6;
const NEAR_DAMPING = 1e-7;

/** A mesh finer than this is begun where a coarser one has come to rest, and that likewise, ... */
const COARSE = 20;

/** A dresser pulls what she has put on straight: at first it hangs with so many times its weight, and no friction, ... */
const TUG = 3;

/** ... until no more than so many times the forces of rest are left over. Else some would hang on in a fold above the bust. */
const STRAIGHT = 5;

/**
 * ... each so much coarser than the next: folds then fall on all alike, and a finer one only draws them more closely. Begun at
 * once from 20 mm, meshes of 7 and 10 mm fold otherwise, and an ease differs by 5 mm.
 */
const COARSER = 1.45;

/** As coarse as that, or nearly: begun by itself. */
const NEARLY = 0.8;

/**
 * Let go, it is held by friction as soon as no more than so many times the forces of rest are left over: before, it lies where a
 * coarser mesh or a hand has put it, in the body here and off it there. Then once more, nearly at rest; and then until it is.
 */
const CAUGHT = [300, 10];

/**
 * Puts a garment on: sewn up, laid round the body, pulled straight and let go until it hangs still, held by friction with the body
 * (the cloth's coefficient). Triangles are about `spacing` mm.
 */
export function worn(garment: Garment, cloth: WovenCloth, stand: Stand, spacing: number): Worn {
  return toTheEnd(wearing(garment, cloth, stand, spacing));
}

/** A step of putting on: which mesh hangs, by the size of its triangles (mm), and how many steps it has hung. */
export interface WearingStep {
  readonly spacing: number;
  readonly step: number;
  /** Degrees to which its arms are being raised, once it has hung. */
  readonly raised?: number;
}

/** The same step by step. Told that it is enough, it keeps the best so far: of a mesh that is finer, where it has got to it. */
export function* wearing(
  garment: Garment,
  cloth: WovenCloth,
  stand: Stand,
  spacing: number,
): Generator<WearingStep, Worn, Enough> {
  if (spacing > NEARLY * COARSE) {
    const made = sewn(garment, cloth, spacing);
    const x = laidRound(garment, made, stand);
    const pulled = yield* hanging(garment, made, x, stand, { damping: FIRST_DAMPING, spacing, tugged: true });
    if (pulled.stopped) return pulled;
    return yield* hanging(garment, made, pulled.x, stand, { damping: LET_GO_DAMPING, spacing });
  }
  const coarser = COARSER * spacing;
  const coarse = yield* wearing(garment, cloth, stand, coarser > NEARLY * COARSE ? COARSE : coarser);
  if (coarse.stopped) return coarse;
  const made = sewn(garment, cloth, spacing);
  const x = carriedOver(coarse.sewn, coarse.x, made);
  // Between the points of the coarser mesh its triangles cut into the roundings of the body.
  pushOut(x, metBy(garment, made, stand), cloth.thickness / 2);
  return yield* hanging(garment, made, x, stand, { damping: NEAR_DAMPING, spacing });
}

/** How something is hung. */
interface Hung {
  /** To begin with, N/mm^3. */
  readonly damping: number;
  readonly spacing: number;
  /** With more than its weight, and without friction. */
  readonly tugged?: true;
  /** Degrees to which its arms are raised. */
  readonly raised?: number;
}

/** Hangs what is sewn from where it is, `start`, until it is still. */
export function* hanging(
  garment: Garment,
  made: Sewn,
  start: Float64Array,
  stand: Stand,
  { damping, spacing, tugged, raised }: Hung,
): Generator<WearingStep, Worn, Enough> {
  const part = partToHang(made);
  const { sheet, points } = part;
  const { cloth } = sheet;
  const areas = pointAreas(sheet, false);
  const weight = new Weight(sheet, tugged ? TUG : 1);
  const all = metBy(garment, made, stand);
  const met = Array.from(points, (p) => all[p] as Obstacle);
  const contact = new Contact(met, areas, cloth.thickness / 2, cloth.friction);
  const cord = new Strings(strandsOf(part, drawnCord(garment, made)));
  const forces = [new Membrane(sheet), new Bending(sheet), weight, contact, cord];
  const { own, held } = placesOf(part, start);
  const balance = new Equilibrium(forces, areas, own.slice());
  const rest = REST * norm(weight.loads);
  const rounds = tugged ? [STRAIGHT] : CAUGHT;
  let stopped = false;
  let taken = 0;
  let settled: Settled;
  // Friction goes with what presses, and that with where the cloth lies: until there is rest under the friction there is.
  for (let round = 0; ; round++) {
    const steps = balance.settling(own, held, {
      residual: 0,
      net: (rounds[round] ?? 1) * rest,
      steps: MOST_STEPS - taken,
      damping: round === 0 ? damping : NEAR_DAMPING,
    });
    let next = steps.next();
    while (!next.done) {
      const step = { spacing, step: taken + next.value };
      if (yield raised === undefined ? step : { ...step, raised }) stopped = true;
      next = steps.next(stopped);
    }
    const still = next.value.steps === 0 && round >= rounds.length;
    taken += next.value.steps;
    settled = { ...next.value, steps: taken };
    if (tugged || stopped || still || !settled.atRest) break;
    if (round === 0) contact.hold(own);
    else contact.press(own);
  }
  const x = placesOfAll(made, part, own);
  return {
    sewn: made,
    x,
    settled,
    stopped,
    spacing,
    strains: new Membrane(made.sheet).strains(x),
    forces: forcesOnAll(made, part, contact.forces(own)),
    areas: pointAreas(made.sheet, false),
  };
}

/** The root of the sum of squares. */
const norm = (forces: Float64Array): number =>
  Math.sqrt(forces.reduce((sum, force) => sum + force * force, 0));
