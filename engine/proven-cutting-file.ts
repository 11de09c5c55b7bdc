import { cutGarment, cutSizes } from './cutting-file/cutting-file.ts';
import type { Flavour } from './cutting-file/flavour.ts';
import type { GradedSize } from './grading/laid-size.ts';
import type { Issue } from './issue.ts';
import type { Checked } from './proven-sheet.ts';
import { walkCuttingFile } from './reading/cutting-file/walk-cutting-file.ts';
import type { PrintOptions } from './render/print-options.ts';

/** A cutting file as it is to be written, and whatever its own text says otherwise than the draft. */
export interface ProvenCuttingFile {
  readonly text: string;
  readonly issues: readonly Issue[];
}

/** Writes the cutting file of a garment, and walks it again from its own text, read by a reader of another hand. */
export function provenCuttingFile(
  made: Checked,
  flavour: Flavour,
  options: PrintOptions = {},
): ProvenCuttingFile {
  const { text, blocks } = cutGarment(made, flavour, options);
  return { text, issues: walkCuttingFile([{ ...made, blocks }], text, flavour) };
}

/** The same of a grade: every size is walked. */
export function provenGradedCuttingFile(
  sizes: readonly GradedSize[],
  flavour: Flavour,
  options: PrintOptions = {},
): ProvenCuttingFile {
  const { text, blocks } = cutSizes(sizes, flavour, options);
  let begun = 0;
  const all = sizes.map(({ made, pieces }) => {
    const own = blocks.slice(begun, begun + pieces.size);
    begun += pieces.size;
    return { garment: made.garment, report: made.report, blocks: own };
  });
  return { text, issues: walkCuttingFile(all, text, flavour) };
}
