import type { Garment } from '../../pattern/garment.ts';
import { capital } from '../../text/capital.ts';
import type { Unit } from '../../text/units.ts';
import { withLengthsIn } from '../../text/with-lengths-in.ts';
import { cutWords } from '../label-words.ts';
import { quantity } from './quantity.ts';
import type { ToBuy } from './to-buy.ts';

/** A row of a list: what, how much of it, and what to know about it. */
export type ListRow = readonly [what: string, quantity: string, note: string];

/** The pieces to cut, of each cloth. */
export const cutList = ({ pieces }: Garment): readonly ListRow[] =>
  pieces.map(({ number, name, cut }) => [String(number), capital(name), cut.map(cutWords).join('; ')]);

/** What is needed beside the cloth: the garment's notions with their lengths, and what every garment takes. */
export const notionList = (garment: Garment, units: Unit, toBuy?: ToBuy): readonly ListRow[] => [
  ...garment.notions.map((notion): ListRow => {
    const note = withLengthsIn(notion.note, units);
    const bought = notion.length > 0 ? toBuy?.notions.get(notion.name) : undefined;
    const buy = bought ? `; buy ${bought}` : '';
    return [capital(notion.name), quantity(notion, units), `${note}${buy}`];
  }),
  ...(toBuy?.thread ?? []).map(([what, length, note]): ListRow => [capital(what), length, note]),
  [
    toBuy ? 'Other thread' : 'Thread',
    '',
    `${toBuy ? '' : 'matching, and '}a bright one for tacking and gathering rows`,
  ],
  ['Tools', '', 'pins, chalk, tape, shears or rotary cutter, bodkin, iron and a cloth to press through'],
];

/** Edges with a seam allowance that no seam of this garment sews: they wait for what is made apart. */
export function openEdges({ pieces, seams, sewing = [] }: Garment): readonly string[] {
  const stitched = [
    ...seams.flatMap(({ a, b }) => [...a, ...b]),
    ...sewing.flatMap(({ turns = [], catches = [] }) => [...turns, ...catches]),
  ];
  const sewn = new Set(stitched.map(({ piece, edge }) => `${piece}\n${edge}`));
  return pieces.flatMap(({ name, edges }) => {
    const open = edges.filter((edge) => edge.open && !sewn.has(`${name}\n${edge.name}`));
    return open.length > 0 ? [`${capital(name)}: ${open.map((edge) => edge.name).join(', ')}`] : [];
  });
}
