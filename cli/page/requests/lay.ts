import {
  besidesTable,
  clothTable,
  cutTable,
  fixed,
  type Garment,
  type Issue,
  type Lay,
  layTasks,
  lengthCell,
  materialsFor,
  threadNote,
  type Unit,
  unitLabel,
  withLengthsIn,
} from '../../../drafts/index.ts';
import { used } from '../../input/used.ts';
import { type ClothWords, clothTold } from '../../lay/cloth-asked.ts';
import {
  layFaults,
  layFiles,
  layTable,
  type PlannedLay,
  plannedLay,
  shareOf,
  stripeLines,
} from '../../lay/planned-lay.ts';
import { soughtLay } from '../../lay/seek-lay.ts';
import { fileWord } from '../file-word.ts';
import { takenBytes } from '../taken-file.ts';
import { breathe } from './breathe.ts';
import { readFonts } from './fonts.ts';
import type { BuyShown, LayAnswer, LayRequest, PlanShown } from './lay-messages.ts';
import { type MadeDraft, madeDraft, refusal } from './made-draft.ts';
import { toldIssues } from './told-issues.ts';
import { zipFile } from './zip-file.ts';

type Tell = (answer: LayAnswer) => void;
type Begin = Extract<LayRequest, { readonly does: 'begin' }>;

/** The search that goes on, or was the last: whether it is to end, and its plans. */
interface Search {
  readonly number: number;
  ended: boolean;
  laid?: { readonly garment: Garment; readonly plans: readonly PlannedLay[]; readonly units: Unit };
}

let search: Search | undefined;

const called: ClothWords = {
  width: 'The width of the cloth',
  selvedge: 'What is kept free along a selvedge',
  gap: 'What is kept free between pieces',
  shrink: 'What the cloth loses in the wash, in %,',
  stripe: 'The repeat of the stripes across',
  stripeAlong: 'The repeat of the stripes along',
};

/** Answers what is asked about laying. */
export async function lay(request: LayRequest, tell: Tell): Promise<void> {
  switch (request.does) {
    case 'begin': {
      if (search) search.ended = true;
      search = { number: request.number, ended: false };
      return seek(request, search, tell);
    }
    case 'stop':
      if (search) search.ended = true;
      return;
    case 'take': {
      const laid = search?.laid;
      return tell({ kind: 'lay written', number: request.number, handed: laid ? [await written(laid)] : [] });
    }
  }
}

async function seek(request: Begin, own: Search, tell: Tell): Promise<void> {
  const { number } = request;
  const plans: PlannedLay[] = [];
  try {
    const drafted = await madeDraft(request.asked);
    if (search !== own) return;
    const { made, units } = drafted;
    const { garment, cutLines } = made;
    tell({ kind: 'to buy', number, buy: toBuy(drafted, 'least') });
    const tasks = used(layTasks(garment, cutLines, clothTold(request.cloth, called)), units);
    const issues: Issue[] = [];
    const shown = (all: readonly PlannedLay[]): readonly PlanShown[] =>
      all.map((planned) => planShown(planned, garment, units));
    for (const task of tasks) {
      let last: Lay | undefined;
      const look = (share: number, best: Lay | undefined): void => {
        const better = best && best !== last ? [...plans, plannedLay(task, best, garment, units)] : undefined;
        last = best;
        tell({
          kind: 'laying',
          number,
          cloth: task.clothName,
          share,
          ...(better && { plans: shown(better) }),
        });
      };
      const seconds = request.seconds * shareOf(task, tasks);
      const best = await soughtLay(
        task.problem,
        { seconds, rounds: request.rounds, seed: 1 },
        {
          clock: () => performance.now(),
          breathe,
          seen: look,
          ended: () => (search !== own ? 'at once' : own.ended ? 'once there is a lay' : 'no'),
        },
      );
      if (!best || search !== own) return;
      const planned = plannedLay(task, best, garment, units);
      issues.push(...layFaults(planned, garment));
      plans.push(planned);
    }
    own.laid = { garment, plans, units };
    tell({
      kind: 'laid',
      number,
      plans: shown(plans),
      table: layTable(plans, units),
      stripes: stripeLines(plans),
      issues: toldIssues(issues, units),
    });
    await breathe();
    if (search === own) tell({ kind: 'to buy', number, buy: toBuy(drafted, 'planned') });
  } catch (error) {
    tell({ kind: 'laid', number, plans: [], table: undefined, stripes: [], issues: refusal(error) });
  }
}

function planShown(planned: PlannedLay, garment: Garment, units: Unit): PlanShown {
  const { plan, toBuy: buy, svg } = planned;
  const say = (mm: number): string => `${lengthCell(mm, units)} ${unitLabel[units]}`;
  const called = plan.clothName === 'self' ? 'cloth' : plan.clothName;
  const words = `${plan.copies.length} pieces on the ${called}: ${say(plan.length)} long, ${fixed(100 * plan.used, 1)} % used; no lay is shorter than ${say(plan.leastLength)}`;
  const wrong = layFaults(planned, garment).map(({ message }) => withLengthsIn(message, units));
  const verdict =
    wrong.length > 0
      ? `Not as it should be: ${wrong.join(' ')}`
      : 'Every piece is placed, and none overlaps another.';
  return { cloth: called, svg, words, alt: `Plan of the ${called}: ${words}. ${verdict}`, buy };
}

function toBuy({ made: { garment, cutLines }, units }: MadeDraft, how: 'least' | 'planned'): BuyShown {
  const materials = materialsFor(garment, cutLines, units, how);
  return {
    cut: cutTable(garment),
    cloth: clothTable(materials.cloths, units),
    besides: besidesTable(materials, units),
    threadNote: materials.thread.length > 0 ? threadNote(units) : '',
    planned: how === 'planned',
  };
}

/** The plans as `bodkin lay` writes them, in one ZIP. */
async function written({ garment, plans, units }: NonNullable<Search['laid']>) {
  const files = takenBytes(await layFiles(plans, garment, units, await readFonts()));
  return zipFile(`${[garment.name, fileWord(garment.body)].filter(Boolean).join('-for-')}-lay.zip`, files);
}
