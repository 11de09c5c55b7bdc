import type { Evaluation } from '../../engine/evaluate.ts';
import { type Materials, materialsFor } from '../../engine/materials/materials.ts';
import { toBuyWords } from '../../engine/materials/words.ts';
import type { Picture } from '../../engine/render/booklet/picture.ts';
import { lessonPages } from '../../engine/render/lesson-sheet/lesson-pages.ts';
import { lessonSheet } from '../../engine/render/lesson-sheet/lesson-sheet.ts';
import type { Fonts } from '../../engine/render/pdf/fonts.ts';
import { pdfOf } from '../../engine/render/pdf/write-pdf.ts';
import { sewingPages } from '../../engine/render/sewing-sheet/pdf/sewing-pages.ts';
import { sewingSheet } from '../../engine/render/sewing-sheet/sewing-sheet.ts';
import type { Page } from '../../engine/render/tiles/page.ts';
import type { Unit } from '../../engine/text/units.ts';
import { unusable } from '../input/unusable.ts';

/** How a garment is made, step by step: the same for a screen and on paper. */
export interface StepPages {
  /** Of both files, without what is behind the dot. */
  readonly file: string;
  readonly title: string;
  readonly html: string;
  readonly pages: readonly Page[];
  readonly steps: readonly { readonly title: string }[];
}

/** What stands on every page: when it was made, where that is to be said, and in which unit. */
interface Dated {
  readonly date: string | undefined;
  readonly units: Unit;
}

/**
 * How a garment is sewn, and what is to be bought for it; `finished` is what it looks like when it is worn. Throws `Unusable`
 * where nobody says how it is sewn.
 */
export function sewnStepByStep(
  { garment, cutLines }: Evaluation,
  as: Dated,
  finished: readonly Picture[] = [],
): StepPages & { readonly materials: Materials } {
  const steps = garment.sewing;
  if (!steps) throw unusable('no-sewing-order', 'garment', `There is no sewing order for “${garment.name}”.`);
  const materials = materialsFor(garment, cutLines, as.units, 'planned');
  const toBuy = toBuyWords(materials, as.units);
  return {
    file: 'sewing',
    title: `Sewing the ${garment.name} for ${garment.body}`,
    html: sewingSheet(garment, cutLines, as, toBuy, finished),
    pages: sewingPages(garment, cutLines, as, toBuy, finished),
    steps,
    materials,
  };
}

/** How a garment is drawn. */
export const drawnStepByStep = ({ garment }: Evaluation, as: Dated): StepPages => ({
  file: 'lesson',
  title: `Drawing the ${garment.name} for ${garment.body}`,
  html: lessonSheet(garment, as),
  pages: lessonPages(garment, as),
  steps: garment.steps,
});

/** The steps as HTML and as PDF, by file name. */
export const stepFiles = async (
  { file, title, html, pages }: StepPages,
  fonts: Fonts,
): Promise<ReadonlyMap<string, string | Uint8Array>> =>
  new Map<string, string | Uint8Array>([
    [`${file}.html`, html],
    [`${file}.pdf`, await pdfOf(pages, title, fonts)],
  ]);
