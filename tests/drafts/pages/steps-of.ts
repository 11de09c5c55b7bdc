import type { Step } from '../../../engine/pattern/garment.ts';
import { stepWords } from './step-words.ts';

/** A step of a page: its title, and its sentences, more than one where it goes another way in another styling. */
export interface PageStep {
  readonly title: string;
  readonly sentences: readonly string[];
}

/**
 * The steps under a heading, in the order in which they are taken, from several draftings together: a step that only
 * some of them take stands behind the one before it there.
 */
export function stepsUnder(heading: string, draftings: readonly (readonly Step[])[]): readonly PageStep[] {
  const order: string[] = [];
  const sentences = new Map<string, string[]>();
  for (const steps of draftings) {
    let place = -1;
    for (const step of steps.filter((each) => each.heading === heading)) {
      const known = order.indexOf(step.title);
      // A title may come twice, as where two facings measure the same seam.
      place = known >= 0 ? Math.max(place, known) : place + 1;
      if (known < 0) order.splice(place, 0, step.title);
      const said = sentences.get(step.title) ?? [];
      const words = stepWords(step);
      if (!said.includes(words)) sentences.set(step.title, [...said, words]);
    }
  }
  return order.map((title) => ({ title, sentences: sentences.get(title) ?? [] }));
}

/** Room for a line of a page, in characters. */
const lineWidth = 118;

/** Steps as a numbered list, from a number on. */
export const numbered = (steps: readonly PageStep[], first: number): string =>
  steps
    .map(({ title, sentences }, i) => {
      const text = `${title}: ${sentences.join('; or ')}${/[.]$/.test(sentences.at(-1) ?? '') ? '' : '.'}`;
      return filled(`${first + i}. `, text);
    })
    .join('\n');

/** Text in lines, the first behind its sign, the others under it. */
function filled(sign: string, text: string): string {
  const indent = ' '.repeat(sign.length);
  const lines = [sign.trimEnd()];
  for (const word of text.split(' ')) {
    const longer = `${lines.at(-1)} ${word}`;
    if (longer.length <= lineWidth) lines[lines.length - 1] = longer;
    else lines.push(`${indent}${word}`);
  }
  return lines.join('\n');
}
