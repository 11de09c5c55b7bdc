import { garments } from '../../drafts/index.ts';
import { Unusable } from '../unusable.ts';
import { drafted } from './drafted.ts';
import type { GarmentChoices, PageAnswer, PageRequest } from './messages.ts';

/** What can be drafted, told first of all. */
export const garmentsAnswer = (): PageAnswer => ({
  kind: 'garments',
  garments: Object.values(garments).map(
    ({ name, title, choices, shapedBy }): GarmentChoices => ({ name, title, choices, shapedBy }),
  ),
});

/** The answer to a request. Never fails: a fault of the program is told as well. */
export async function answerTo(request: PageRequest): Promise<PageAnswer> {
  try {
    if (request.kind === 'draft') return drafted(request);
    // Files are read and written seldom, and YAML is a tenth of all the code: it is loaded when it is first wanted.
    const { opened, written } = await import('./body-text.ts');
    return request.kind === 'open' ? opened(request) : written(request);
  } catch (error) {
    if (error instanceof Unusable) return { kind: 'refused', message: error.message };
    const message = `The program itself failed: ${error instanceof Error ? error.message : String(error)}`;
    if (request.kind !== 'draft') return { kind: 'refused', message };
    const issue = { code: 'program-fault', severity: 'error', path: '', message } as const;
    return { kind: 'drafted', number: request.number, issues: [issue] };
  }
}
