import { garments, messageOf } from '../../drafts/index.ts';
import { Unusable } from '../input/unusable.ts';
import type { GarmentChoices } from './garment-choices.ts';
import type { PageAnswer, PageRequest } from './messages.ts';
import { drafted } from './requests/draft.ts';

/** What can be drafted, told first of all. */
export const garmentsAnswer = (): PageAnswer => ({
  kind: 'garments',
  garments: Object.values(garments).map(
    ({ name, title, choices, shapedBy }): GarmentChoices => ({ name, title, choices, shapedBy }),
  ),
});

/** Tells the page something, once or on the way more often. */
export type Tell = (answer: PageAnswer) => void;

type Answering = {
  readonly [Kind in PageRequest['kind']]: (
    request: Extract<PageRequest, { readonly kind: Kind }>,
    tell: Tell,
  ) => void | Promise<void>;
};

/** Who answers which kind. But for drafting, code is loaded when it is first wanted (YAML is a tenth of all the code). */
const answering: Answering = {
  draft: async (request, tell) => tell(await drafted(request)),
  fit: async (request, tell) => tell((await import('./requests/fit.ts')).fittedWith(request)),
  lay: async (request, tell) => (await import('./requests/lay.ts')).lay(request, tell),
  lesson: async (request, tell) => tell(await (await import('./requests/lesson.ts')).turnedLesson(request)),
  link: async (request, tell) => tell((await import('./requests/link.ts')).linked(request)),
  'own draft': async (request, tell) => {
    // Whoever is asked for a drawing loads this first: so the code is waited for before anything is told of it.
    await import('./own-draft/drafting-elsewhere.ts');
    return (await import('./own-draft/own-drafts.ts')).ownDraftCame(request, tell);
  },
  open: async (request, tell) => tell((await import('./requests/open.ts')).opened(request)),
  pictures: async (request, tell) => (await import('./requests/pictures.ts')).pictured(request, tell),
  sizes: async (request, tell) => (await import('./requests/sizes.ts')).sizes(request, tell),
  study: async (request, tell) => tell(await (await import('./requests/study.ts')).studied(request)),
  take: async (request, tell) => (await import('./requests/take.ts')).take(request, tell),
  wear: async (request, tell) => (await import('./requests/wear.ts')).wear(request, tell),
  write: async (request, tell) => tell((await import('./requests/write.ts')).written(request)),
};

/** Answers a request. Never fails: a fault of the program is told as well. */
export async function answer(request: PageRequest, tell: Tell): Promise<void> {
  try {
    await answerOf(request, tell);
  } catch (error) {
    const refused = { kind: 'refused', asked: request.kind } as const;
    if (error instanceof Unusable) return tell({ ...refused, message: error.message });
    const message = `The program itself failed: ${messageOf(error)}`;
    if (request.kind !== 'draft') return tell({ ...refused, message });
    const issue = { code: 'program-fault', severity: 'error', path: '', message } as const;
    tell({ kind: 'drafted', number: request.number, issues: [issue] });
  }
}

const answerOf = <Kind extends PageRequest['kind']>(
  request: Extract<PageRequest, { readonly kind: Kind }>,
  tell: Tell,
): void | Promise<void> => answering[request.kind as Kind](request, tell);
