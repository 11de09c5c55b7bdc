import type { Amount, SewingStep } from '../../pattern/sewing.ts';
import { seamClasses, stitchTypes } from '../../pattern/stitches.ts';
import { type Html, html } from './html.ts';
import { type Picture, pictureSvg } from './picture.ts';
import { seamTable } from './seam-table.ts';
import { sourceSign } from './sources.ts';
import type { StepFacts } from './step-facts.ts';
import { capital, fineMm, quantity } from './words.ts';

/** Everything a step has to show. */
export interface ShownStep {
  readonly number: number;
  readonly step: SewingStep;
  readonly facts: StepFacts;
  /** What earlier steps must have done, in words. */
  readonly ready: readonly string[];
  readonly picture: Picture | undefined;
  /** The drawing takes the whole width, below the words. */
  readonly wide: boolean;
}

/** A numbered step as it stands on the page: what to do, its figures, its cautions, its drawing. */
export function stepSection(shown: ShownStep, sources: readonly string[]): Html {
  const { number, step, facts, ready, picture, wide } = shown;
  const words = html(
    'div',
    { class: 'words' },
    html('h3', {}, html('span', { class: 'number' }, String(number)), step.title),
    ready.length > 0 ? html('p', { class: 'ready' }, `Ready: ${ready.join('; ')}.`) : [],
    step.how.map((sentence) => html('p', {}, sentence)),
    facts.notions.map((notion) =>
      html('p', { class: 'use' }, `${capital(notion.name)}: ${quantity(notion)}; ${notion.note}.`),
    ),
    seamTable(facts),
    amountList(step.amounts ?? [], sources),
    madeWith(step, facts),
    (step.cautions ?? []).map((caution) => html('p', { class: 'caution' }, html('b', {}, 'Care: '), caution)),
  );
  const drawn = picture
    ? html('figure', {}, pictureSvg(picture, `The pieces of step ${number}, what is worked on drawn heavy`))
    : [];
  return html('section', { class: wide ? 'step wide' : 'step' }, words, drawn);
}

const amountList = (amounts: readonly Amount[], sources: readonly string[]): readonly Html[] =>
  amounts.length === 0
    ? []
    : [
        html(
          'ul',
          { class: 'amounts' },
          amounts.map(({ says, mm, source }) =>
            html(
              'li',
              {},
              `${capital(says)}: `,
              html('b', {}, fineMm(mm)),
              source ? html('span', { class: 'source' }, ` ${sourceSign(sources, source)}`) : [],
            ),
          ),
        ),
      ];

/** Stitch, seam class and allowance in one line. */
function madeWith({ stitch, seamClass }: SewingStep, { allowances }: StepFacts): readonly Html[] {
  const parts = [
    ...(stitch ? [`stitch ${stitch}, ${stitchTypes[stitch]}`] : []),
    ...(seamClass ? [`seam class ${seamClass}, ${seamClasses[seamClass]}`] : []),
    ...(allowances.length > 0 ? [`allowance ${allowances.map(fineMm).join(' and ')}`] : []),
  ];
  return parts.length > 0 ? [html('p', { class: 'made-with' }, `${capital(parts.join('; '))}.`)] : [];
}
