import type { Issue } from '../issue.ts';
import type { Draft } from '../pattern/draft.ts';
import type { Garment } from '../pattern/garment.ts';

/** The titles that more than one step of a garment bears: asked for by its title, none of them could be told from the others. */
export function calledAlike({ placeOf }: Draft, { steps }: Garment): readonly Issue[] {
  const titles = steps.map(({ title }) => title);
  const again = titles.filter((title, i) => titles.indexOf(title) < i);
  return Array.from(new Set(again), (title): Issue => {
    const source = placeOf?.([title]);
    return {
      code: 'draft-steps-alike',
      severity: 'error',
      path: title,
      message: `More than one step has the title “${title}”. Give each its own, so that it can be asked for.`,
      ...(source && { source }),
    };
  });
}
