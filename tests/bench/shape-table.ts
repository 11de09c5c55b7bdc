import { drafted, shippedBodies, shippedBody } from '../drafts/drafted.ts';
import { table } from './timing.ts';

/**
 * Every shape of a garment for each of the bodies that ship, one a line: the figure, marked `*` outside its band, so that
 * two drafts can be laid beside each other. `npx tsx tests/bench/shape-table.ts dress sleeve=none …`
 */
export function shapesOfBodies(garment: string, styling: Readonly<Record<string, string>>): string {
  const bodies = shippedBodies.map((name) => ({
    name,
    shapes: drafted(garment, shippedBody(name), styling).report.shapes,
  }));
  const names = [...new Set(bodies.flatMap(({ shapes }) => shapes.map(({ name }) => name)))];
  const rows = names.map((name) => {
    const of = bodies.map(({ shapes }) => shapes.find((shape) => shape.name === name));
    const unit = of.find((shape) => shape)?.unit ?? '';
    const digits = unit === 'mm' || unit === 'degrees' ? 1 : 2;
    return [
      name,
      unit,
      ...of.map((shape) => (shape ? `${shape.value.toFixed(digits)}${shape.ok ? ' ' : '*'}` : '')),
    ];
  });
  return table([['shape', 'unit', ...shippedBodies], ...rows]);
}

const [garment = 'dress', ...choices] = process.argv.slice(2);
const styling = Object.fromEntries(
  choices.map((choice) => [choice.slice(0, choice.indexOf('=')), choice.slice(choice.indexOf('=') + 1)]),
);
console.log(shapesOfBodies(garment, styling));
