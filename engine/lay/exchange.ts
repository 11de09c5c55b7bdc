import type { Random } from '../numeric/random.ts';
import type { Layout } from './layout.ts';

/** The largest shapes that together have this share of the area count as large. */
const large = 0.75;

/** Exchanges two large copies of different shapes, by chance, so that a search that is stuck goes on elsewhere. */
export function exchangeTwo(layout: Layout, random: Random): void {
  const { area, shapeOf } = layout.copies;
  const bySize = Array.from({ length: layout.count }, (_, i) => i).sort(
    (a, b) => (area[b] as number) - (area[a] as number),
  );
  let total = 0;
  for (const i of bySize) total += area[i] as number;
  let sum = 0;
  const largest = bySize.filter((i) => {
    sum += area[i] as number;
    return sum <= large * total;
  });
  const a = largest[Math.floor(random() * largest.length)] ?? 0;
  const others = largest.filter((i) => shapeOf[i] !== shapeOf[a]);
  const b = others[Math.floor(random() * others.length)] ?? 0;
  const { x, y } = layout;
  [x[a], x[b]] = [x[b] as number, x[a] as number];
  [y[a], y[b]] = [y[b] as number, y[a] as number];
  layout.keepInside(a);
  layout.keepInside(b);
}
