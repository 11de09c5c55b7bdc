import { Membrane } from '../cloth/membrane.ts';
import { element, type Node, words } from '../render/markup.ts';
import { lengthCell } from '../text/length.ts';
import { type Unit, unitLabel } from '../text/units.ts';
import type { Stand } from './stand.ts';
import type { Worn } from './worn.ts';

/** A worn garment coloured by a figure: a colour for each triangle of its sheet, and what the colours mean. */
export interface WornMap {
  readonly colours: readonly string[];
  readonly title: string;
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

const colourOf = (value: number, limits: readonly number[]): string => {
  const step = limits.findIndex((limit) => value < limit);
  return scale[step < 0 ? scale.length - 1 : step] as string;
};

/** Where one colour ends and the next begins, mm off the body. */
const EASE = [1, 3, 6, 12, 24] as const;

/** The same of threads, % longer than they were woven. */
const STRAIN = [0.2, 0.5, 1, 2, 3] as const;

/** How far the cloth stands off the body: its ease, place by place. */
export function easeMap({ x, sewn }: Worn, stand: Stand, unit: Unit): WornMap {
  const { triangles, cloth } = sewn.sheet;
  const out = new Float64Array(4);
  const colours: string[] = [];
  for (let t = 0; t < triangles.length; t += 3) {
    const [u, v, w] = [0, 1, 2].map(
      (axis) =>
        [0, 1, 2].reduce((sum, k) => sum + (x[3 * (triangles[t + k] as number) + axis] as number), 0) / 3,
    ) as [number, number, number];
    stand.obstacle(u, v, w, out);
    colours.push(colourOf((out[0] as number) - cloth.thickness / 2, EASE));
  }
  const steps = asRead(EASE, (limit) => lengthCell(limit, unit, 0), unitLabel[unit]);
  return { colours, title: 'Cloth off the body', steps };
}

/** How far the cloth is stretched along whichever of its threads is stretched more. */
export function strainMap({ x, sewn }: Worn): WornMap {
  const strains = new Membrane(sewn.sheet).strains(x);
  const colours = Array.from(sewn.sheet.layers, (_, t) =>
    colourOf(100 * Math.max(strains[3 * t] as number, strains[3 * t + 1] as number), STRAIN),
  );
  return {
    colours,
    title: 'Threads stretched, the more of weft and warp',
    steps: asRead(STRAIN, String, '%'),
  };
}

/** Wider than any picture, mm. */
const SHEET = 2000;

/** Room for a legend under a picture, and its parts, mm. */
export const LEGEND = 74;
const [LINE, BOX, LETTER, CLEAR] = [20, 13, 12, 8];

/** What the colours of a map mean, in two rows from the left end of what it is drawn under; what hangs over there is covered. */
export function legendOf({ title, steps }: WornMap, left: number, under: number, width: number): Node {
  const top = under + CLEAR;
  const text = (x: number, y: number, said: string): Node =>
    element('text', { x: String(x), y: String(y) }, words(said));
  const columns = Math.ceil(steps.length / 2);
  return element('g', { 'font-family': 'sans-serif', 'font-size': String(LETTER), fill: '#111' }, [
    element('path', { d: `M${-SHEET} ${under}H${SHEET}v${LEGEND}H${-SHEET}Z`, fill: '#fff' }),
    text(left, top + LETTER, title),
    ...steps.flatMap(({ colour, says }, i) => {
      const x = left + Math.round(((i % columns) * width) / columns);
      const y = top + LINE * (1 + Math.floor(i / columns));
      const box = {
        x: String(x),
        y: String(y),
        width: String(BOX),
        height: String(BOX),
        fill: colour,
        stroke: '#111',
      };
      return [element('rect', { ...box, 'stroke-width': '0.5' }), text(x + BOX + 5, y + LETTER - 1, says)];
    }),
  ]);
}
