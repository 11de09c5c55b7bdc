import { gzipSync } from 'node:zlib';
import { answerLine } from '../../cli/orders/answer.ts';
import { figures, table } from './timing.ts';

/** What is ordered, as the table of `cli/orders.md` has it, and how many orders are answered to measure it. */
const kinds: readonly {
  readonly garment: string;
  readonly write: readonly string[];
  readonly orders: number;
}[] = [
  { garment: 'skirt', write: [], orders: 200 },
  { garment: 'skirt', write: ['report'], orders: 40 },
  { garment: 'skirt', write: ['report', 'svg'], orders: 40 },
  { garment: 'skirt', write: ['report', 'dxf'], orders: 20 },
  { garment: 'skirt', write: ['report', 'dxf-curves'], orders: 20 },
  { garment: 'skirt', write: ['report', 'pdf'], orders: 12 },
  { garment: 'dress', write: [], orders: 30 },
  { garment: 'dress', write: ['report'], orders: 16 },
  { garment: 'dress', write: ['report', 'svg'], orders: 16 },
  { garment: 'dress', write: ['report', 'dxf'], orders: 10 },
  { garment: 'dress', write: ['report', 'dxf-curves'], orders: 10 },
  { garment: 'dress', write: ['report', 'pdf'], orders: 6 },
];

/** Invented bodies, none like another. */
const order = (i: number, garment: string, write: readonly string[]): string =>
  JSON.stringify({
    id: `A-${i}`,
    garment,
    body: {
      units: 'cm',
      bustGirth: 84 + ((i * 7) % 41) / 2,
      waistGirth: 66 + ((i * 5) % 37) / 2,
      hipGirth: 92 + ((i * 11) % 43) / 2,
      backNeckPointToWaist: 39 + (i % 9) / 4,
    },
    write,
  });

/** Answers and packs some orders, and says which processor time and how many bytes that took for each of them. */
async function answered(from: number, { garment, write, orders }: (typeof kinds)[number]) {
  const start = process.cpuUsage();
  let text = '';
  for (let i = from; i < from + orders; i++)
    text += (await answerLine({ number: i, text: order(i, garment, write) })).text;
  const packed = gzipSync(text).length;
  const { user, system } = process.cpuUsage(start);
  return { user: user / orders / 1000, both: (user + system) / orders / 1000, packed: packed / orders };
}

/**
 * What an order takes in processor time, for each kind of order: least and median of some rounds, the kinds in turn, on one thread
 * that has warmed up. Waiting for a processor is not counted; a neighbour on the same core, or in the same cache, still is.
 */
async function benchOrders(rounds: number): Promise<string> {
  const measured = kinds.map((): Awaited<ReturnType<typeof answered>>[] => []);
  for (let round = 0; round <= rounds; round++)
    for (const [k, kind] of kinds.entries()) {
      const took = await answered(round * 1000, kind);
      if (round > 0) measured[k]?.push(took);
    }
  return [
    `orders, processor time each, ${rounds} rounds`,
    table([
      ['order', 'user ms, least', 'median', 'with system, least', 'hours for ten million', 'packed kB'],
      ...kinds.map(({ garment, write }, k) => {
        const rows = measured[k] ?? [];
        const [users, boths] = [rows.map(({ user }) => user), rows.map(({ both }) => both)];
        const least = Math.min(...boths);
        return [
          `${garment}, ${write.length > 0 ? write.join(' and ') : 'nothing written'}`,
          figures(Math.min(...users)),
          figures(users.toSorted((a, b) => a - b)[Math.floor(users.length / 2)] ?? 0),
          figures(least),
          figures((least * 1e7) / 3.6e6),
          figures((rows[0]?.packed ?? 0) / 1000),
        ];
      }),
    ]),
  ].join('\n');
}

console.log(await benchOrders(Number(process.argv[2] ?? 4)));
