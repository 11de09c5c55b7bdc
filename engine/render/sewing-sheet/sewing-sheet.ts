import { sewingFaults } from '../../checks/sewing.ts';
import { tapeFor } from '../../checks/tape.ts';
import type { Edge } from '../../geometry/curve.ts';
import type { Garment } from '../../pattern/garment.ts';
import { finishedPieces } from '../finish.ts';
import { type Html, html, page } from './html.ts';
import { cutList, notionList, openEdges } from './lists.ts';
import { readyWords } from './ready.ts';
import { sourceList, sourcesOf } from './sources.ts';
import { stepFacts } from './step-facts.ts';
import { stepPicture } from './step-picture.ts';
import { stepSection } from './step-section.ts';
import { styleSheet } from './style.ts';
import { capital } from './words.ts';

/** Room for a drawing beside the words of its step, and for one that needs the whole width; mm. */
const beside = { width: 78, height: 58 };
const below = { width: 178, height: 58 };

/** More pieces than this do not fit beside the words. */
const mostBeside = 5;

/**
 * The sewing order as a page to print: what to cut, what to have at hand, and every step with its figures for this
 * body and a drawing of its pieces. One file of HTML that needs nothing else. `cutLines` holds the cutting lines by
 * piece name; the date is printed as given.
 */
export function sewingSheet(garment: Garment, cutLines: ReadonlyMap<string, Edge>, date?: string): string {
  const title = `Sewing the ${garment.name} for ${garment.body}`;
  const head = [
    html('meta', { charset: 'utf-8' }),
    html('meta', { name: 'viewport', content: 'width=device-width' }),
    html('title', {}, title),
    html('style', {}, { markup: styleSheet }),
  ];
  const sources = sourcesOf(garment.sewing ?? []);
  const lead =
    'All figures are for this one body, measured on its own pieces. In the drawings the lines that are worked on are heavy, and a letter stands on both sides of a seam.';
  return page(head, [
    html('h1', {}, title),
    html('p', { class: 'lead' }, [date, lead].filter(Boolean).join('. ')),
    ...faults(garment),
    html(
      'div',
      { class: 'lists' },
      html('div', {}, html('h2', {}, 'To cut'), cutList(garment)),
      html('div', {}, html('h2', {}, 'To have at hand'), notionList(garment)),
    ),
    html('h2', {}, 'Step by step'),
    ...steps(garment, cutLines, sources),
    ...leftOpen(garment),
    html(
      'p',
      { class: 'source' },
      'Stitch types are numbered as in ISO 4915, seam classes as in ISO 4916. “Common practice, no source” marks what every workroom does and no publication was read for.',
    ),
    sourceList(sources),
  ]);
}

function steps(
  garment: Garment,
  cutLines: ReadonlyMap<string, Edge>,
  sources: readonly string[],
): readonly Html[] {
  const { sewing = [] } = garment;
  const tape = tapeFor(garment);
  const pieces = finishedPieces(garment, cutLines, 'slit');
  const folded = piecesFolded(garment);
  return sewing.map((step, i) => {
    const facts = stepFacts(garment, step, tape);
    const wide = facts.pieces.length > mostBeside;
    const picture = stepPicture(step, facts, pieces, folded, wide ? below : beside);
    const ready = readyWords(sewing, i);
    return stepSection({ number: i + 1, step, facts, ready, picture, wide }, sources);
  });
}

/** The pieces that are folded double on an edge, and stay so. */
const piecesFolded = ({ sewing = [] }: Garment): ReadonlySet<string> =>
  new Set(
    sewing.flatMap(({ brings = [] }) => brings.flatMap(({ is, piece }) => (is === 'folded' ? piece : []))),
  );

/** A sheet whose order does not hold must say so before anyone sews by it. */
function faults(garment: Garment): readonly Html[] {
  const found = sewingFaults(garment, tapeFor(garment));
  if (found.length === 0) return [];
  const items = found.map(({ message }) => html('li', {}, message));
  return [
    html('div', { class: 'faults' }, html('b', {}, 'Do not sew by this sheet yet.'), html('ul', {}, items)),
  ];
}

function leftOpen(garment: Garment): readonly Html[] {
  const open = openEdges(garment);
  if (open.length === 0) return [];
  return [
    html('h2', {}, 'Left open'),
    html(
      'p',
      {},
      'These edges have an allowance and are sewn to nothing here: finish them as you like best.',
    ),
    html(
      'ul',
      {},
      open.map((edge) => html('li', {}, capital(edge))),
    ),
  ];
}
