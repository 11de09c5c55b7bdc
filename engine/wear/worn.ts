import { Bending } from '../cloth/bending.ts';
import type { WovenCloth } from '../cloth/cloth.ts';
import { Contact } from '../cloth/contact.ts';
import { Equilibrium, type Settled } from '../cloth/equilibrium.ts';
import { Membrane } from '../cloth/membrane.ts';
import { pointAreas } from '../cloth/sheet.ts';
import { Strings } from '../cloth/strings.ts';
import { Weight } from '../cloth/weight.ts';
import type { Garment } from '../pattern/garment.ts';
import { carriedOver } from './carried.ts';
import { drawnCord } from './cord.ts';
import { laidRound } from './place.ts';
import { type Sewn, sewn } from './sewn.ts';
import type { Stand } from './stand.ts';

/** A garment at rest on a body. */
export interface Worn {
  readonly sewn: Sewn;
  /** x, y, z of every point of the sheet, mm. */
  readonly x: Float64Array;
  readonly settled: Settled;
  /** Green's strain along weft and warp and the shear angle, of every triangle. */
  readonly strains: Float64Array;
  /** Force of the body on every point, N, and the cloth that each stands for, mm^2. */
  readonly forces: Float64Array;
  readonly areas: Float64Array;
}

/**
 * Rest is when the forces left over are this share of those with which body and weight act on the cloth (roots of sums of
 * squares over all points). Going on until a hundredth of that is left moves no figure by more than a millimetre.
 */
const REST = 0.03;

/** Steps enough for any garment tried, so that the search ends. */
const MOST_STEPS = 300;

/** Damping to begin with, N/mm^3: pieces laid round are some centimetres from where they will hang, those carried over near. */
const FIRST_DAMPING = 1e-4;
const NEAR_DAMPING = 1e-7;

/** A mesh finer than this is begun where one of this spacing has come to rest: it takes a quarter of the time. */
const COARSE = 20;

/**
 * Puts a garment on: sewn up, laid round the body and let go until it hangs still, without friction, as a dress hangs that has
 * been pulled straight. Triangles are about `spacing` mm.
 */
export function worn(garment: Garment, cloth: WovenCloth, stand: Stand, spacing: number): Worn {
  if (spacing > 0.8 * COARSE) {
    const made = sewn(garment, cloth, spacing);
    return hung(garment, made, laidRound(garment, made, stand), stand, FIRST_DAMPING);
  }
  const coarse = worn(garment, cloth, stand, COARSE);
  const made = sewn(garment, cloth, spacing);
  return hung(garment, made, carriedOver(coarse.sewn, coarse.x, made), stand, NEAR_DAMPING);
}

function hung(garment: Garment, made: Sewn, x: Float64Array, stand: Stand, damping: number): Worn {
  const { sheet } = made;
  const { cloth } = sheet;
  const areas = pointAreas(sheet, false);
  const membrane = new Membrane(sheet);
  const weight = new Weight(sheet);
  const contact = new Contact(stand.obstacle, areas, cloth.thickness / 2, cloth.friction);
  const cord = new Strings(drawnCord(garment, made));
  const forces = [membrane, new Bending(sheet), weight, contact, cord];
  const balance = new Equilibrium(forces, areas, x.slice());
  const settled = balance.settle(x, new Uint8Array(x.length), {
    residual: 0,
    share: { of: REST, acting: (at) => norm(contact.forces(at), weight.loads) },
    steps: MOST_STEPS,
    damping,
  });
  return { sewn: made, x, settled, strains: membrane.strains(x), forces: contact.forces(x), areas };
}

/** The root of the sum of squares of both. */
const norm = (one: Float64Array, other: Float64Array): number =>
  Math.sqrt(one.reduce((sum, force, i) => sum + force * force + (other[i] as number) ** 2, 0));
