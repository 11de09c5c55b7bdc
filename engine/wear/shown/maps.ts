import { lengthCell } from '../../text/length.ts';
import { millimetres, type Unit, unitLabel } from '../../text/units.ts';
import type { Stand } from '../stand.ts';
import type { Worn } from '../worn.ts';

export const mapNames = ['ease', 'strain', 'pressure'] as const;

export type MapName = (typeof mapNames)[number];

/** A worn garment coloured by a figure: a colour for each triangle of its sheet, and what the colours mean. */
export interface WornMap {
  readonly name: MapName;
  readonly title: string;
  /** The figure of every triangle, as it is told. */
  readonly values: Float64Array;
  readonly unit: string;
  /** Digits behind the point that it is told with. */
  readonly digits: number;
  readonly colours: readonly string[];
  readonly steps: readonly MapStep[];
}

export interface MapStep {
  readonly colour: string;
  readonly says: string;
}

/**
 * Dark blue to yellow, ever lighter, so that it is read in grey and by the colour-blind too (Nuñez, Anderton & Renslow,
 * PLoS ONE 13(7), 2018, 10.1371/journal.pone.0199239; places on their scale from memory).
 */
const scale = ['#00224e', '#35456c', '#666970', '#948e77', '#c8b866', '#fee838'] as const;

/** Where one colour ends and the next begins, mm off the body. */
const EASE = [1, 3, 6, 12, 24] as const;

/** The same of threads, % longer than they were woven. */
const STRAIN = [0.2, 0.5, 1, 2, 3] as const;

/** The same of pressure, kPa. */
const PRESSURE = [0.02, 0.05, 0.1, 0.3, 1] as const;

/** How far the cloth stands off the body (its ease), how far its threads are stretched, and how hard it presses, place by place. */
export const wornMaps = (worn: Worn, stand: Stand, unit: Unit): Readonly<Record<MapName, WornMap>> => ({
  ease: easeMap(worn, stand, unit),
  strain: strainMap(worn),
  pressure: pressureMap(worn),
});

function easeMap({ x, sewn }: Worn, stand: Stand, unit: Unit): WornMap {
  const { triangles, cloth } = sewn.sheet;
  const out = new Float64Array(4);
  const off = Float64Array.from(sewn.sheet.layers, (_, t) => {
    const [u, v, w] = [0, 1, 2].map((axis) => mean(triangles, t, (p) => x[3 * p + axis] as number));
    stand.obstacle(u as number, v as number, w as number, out);
    return Math.max(0, (out[0] as number) - cloth.thickness / 2);
  });
  return {
    name: 'ease',
    title: 'Cloth off the body',
    values: off.map((mm) => mm / millimetres[unit]),
    unit: unitLabel[unit],
    digits: { mm: 0, cm: 1, in: 2 }[unit],
    colours: Array.from(off, colourOf(EASE)),
    steps: asRead(EASE, (limit) => lengthCell(limit, unit, 0), unitLabel[unit]),
  };
}

function strainMap({ sewn, strains }: Worn): WornMap {
  const values = Float64Array.from(
    sewn.sheet.layers,
    (_, t) => 100 * Math.max(strains[3 * t] as number, strains[3 * t + 1] as number),
  );
  return {
    name: 'strain',
    title: 'Threads stretched, the more of weft and warp',
    values,
    unit: '%',
    digits: 1,
    colours: Array.from(values, colourOf(STRAIN)),
    steps: asRead(STRAIN, String, '%'),
  };
}

function pressureMap({ sewn, forces, areas }: Worn): WornMap {
  const { triangles, layers } = sewn.sheet;
  // N/mm^2 are a thousand kPa.
  const values = Float64Array.from(layers, (_, t) =>
    mean(triangles, t, (p) => (1000 * (forces[p] as number)) / Math.max(1, areas[p] as number)),
  );
  return {
    name: 'pressure',
    title: 'Pressure of the cloth on the body',
    values,
    unit: 'kPa',
    digits: 2,
    colours: Array.from(values, colourOf(PRESSURE)),
    steps: asRead(PRESSURE, String, 'kPa'),
  };
}

const mean = (triangles: ArrayLike<number>, t: number, of: (p: number) => number): number =>
  [0, 1, 2].reduce((sum, k) => sum + of(triangles[3 * t + k] as number), 0) / 3;

const asRead = (
  limits: readonly number[],
  cell: (limit: number) => string,
  unit: string,
): readonly MapStep[] =>
  scale.map((colour, i) => {
    const [from, to] = [limits[i - 1], limits[i]].map((limit) => limit !== undefined && cell(limit));
    const says = !from ? `under ${to}` : !to ? `over ${from}` : `${from} to ${to}`;
    return { colour, says: `${says} ${unit}` };
  });

const colourOf =
  (limits: readonly number[]) =>
  (value: number): string => {
    const step = limits.findIndex((limit) => value < limit);
    return scale[step < 0 ? scale.length - 1 : step] as string;
  };
