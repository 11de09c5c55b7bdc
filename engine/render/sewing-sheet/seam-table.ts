import { listed } from '../../checks/words.ts';
import type { EdgeRef } from '../../pattern/garment.ts';
import { type Html, html } from './html.ts';
import type { SeamFacts, StepFacts, TurnFacts } from './step-facts.ts';
import { ratioWords, wholeMm } from './words.ts';

/** What is sewn to what in a step, how long it is, and which notches meet; a row for each seam and turned edge. */
export function seamTable({ seams, turns }: StepFacts): readonly Html[] {
  const rows = [...seams.map(seamRow), ...turns.map(turnRow)];
  return rows.length > 0 ? [html('table', { class: 'seams' }, rows)] : [];
}

const row = (letter: string, what: string, length: string, notches: string): Html =>
  html(
    'tr',
    {},
    html('td', { class: 'key' }, letter),
    html('td', {}, what),
    html('td', { class: 'figure' }, length),
    html('td', {}, notches),
  );

const seamRow = ({ letter, seam, lengthA, lengthB, matched, between }: SeamFacts): Html => {
  const gathered = seam.gatherRatio !== 1;
  const length = gathered
    ? `gather ${wholeMm(lengthA)} to ${wholeMm(lengthB)} (${ratioWords(seam.gatherRatio)})`
    : wholeMm(lengthB);
  const ends = between.length > 0 ? [`draw up between ${listed(between)}`] : [];
  const notches = [...ends, ...(matched.length > 0 ? [`match ${listed(matched)}`] : [])].join('; ');
  return row(letter, sidesOf(seam.a, seam.b), length, notches);
};

const turnRow = ({ edge, length, depth }: TurnFacts): Html =>
  row('', `${edge.piece}, ${edge.edge}`, wholeMm(length), `turn ${wholeMm(depth)}`);

/** The pieces of both sides; their edges where a piece is sewn to itself, or that a left is sewn to its right. */
function sidesOf(a: readonly EdgeRef[], b: readonly EdgeRef[]): string {
  const pieces = (side: readonly EdgeRef[]): string => listed(side.map(({ piece }) => piece));
  if (pieces(a) !== pieces(b)) return `${pieces(a)} to ${pieces(b)}`;
  const edges = (side: readonly EdgeRef[]): string => listed(side.map(({ edge }) => edge));
  return edges(a) === edges(b) ? `${pieces(a)}, left to right` : `${pieces(a)}, ${edges(a)} to ${edges(b)}`;
}
