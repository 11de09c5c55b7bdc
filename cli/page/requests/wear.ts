import {
  cannotKnow,
  cloths,
  type Draft,
  type Evaluation,
  evaluate,
  garments,
  type Judged,
  judged,
  notWorn,
  proposed,
  shownWorn,
  type Unit,
  wornMaps,
} from '../../../drafts/index.ts';
import { Unusable } from '../../input/unusable.ts';
import { used } from '../../input/used.ts';
import { hangingAndRaised, type PutOn } from '../../wear/hanging.ts';
import { notYet } from '../../wear/wear-line.ts';
import { alteration, findingsRows } from '../../wear/wear-table.ts';
import { wornSaid } from '../../wear/worn-said.ts';
import { wornScene } from '../../wear/worn-scene.ts';
import { wornSides } from '../../wear/worn-sides.ts';
import { findingWords, wornWords } from '../../wear/worn-words.ts';
import type { AskedDraft } from '../asked-draft.ts';
import { breathe } from './breathe.ts';
import { type MadeDraft, madeDraft, refusal } from './made-draft.ts';
import { toldIssues } from './told-issues.ts';
import type { Finding, WearAnswer, WearRequest, WornShown } from './wear-messages.ts';

/** The garment that hangs, or hung last. */
let hangs: { enough: boolean } | undefined;

/** Puts a garment on the form of her own measurements, telling how far it is. */
export async function wear(request: WearRequest, tell: (answer: WearAnswer) => void): Promise<void> {
  if (hangs) hangs.enough = true;
  if (request.does === 'stop') return;
  const { number, asked, spacing } = request;
  const own = { enough: false };
  hangs = own;
  try {
    const { drafted, instead } = await wearable(asked);
    if (hangs !== own) return;
    const { made, units } = drafted;
    const cloth = cloths.find(({ name }) => name === request.cloth) ?? cloths[0];
    if (!cloth) return;
    const worn = await hangingAndRaised(made.garment, cloth, made.body, spacing, {
      reached: async (share) => {
        tell({ kind: 'wearing', number, share });
        await breathe();
      },
      enough: () => own.enough,
    });
    if (hangs !== own) return;
    const issues = toldIssues(
      made.report.issues.filter(({ severity }) => severity === 'error'),
      units,
    );
    tell({ kind: 'worn', number, worn: shown(made, worn, units, instead), issues });
  } catch (error) {
    tell({ kind: 'worn', number, worn: undefined, issues: refusal(error) });
  }
}

/** What was asked for, or its bodice where it is not known yet how the whole is put on. */
async function wearable(asked: AskedDraft): Promise<{
  readonly drafted: Pick<MadeDraft, 'made' | 'units'>;
  readonly instead: string | undefined;
}> {
  const drafted = await madeDraft(asked);
  const [unworn] = notWorn(drafted.made.garment);
  if (unworn === undefined) return { drafted, instead: undefined };
  // What is not worn of code that somebody wrote has nothing in its place.
  if (drafted.drafting.own) throw new Unusable([notYet(unworn)], drafted.units);
  const draft: Draft = garments.bodice;
  const choices = Object.fromEntries(
    Object.entries(asked.choices).filter(([name]) => draft.choices.some((choice) => choice.name === name)),
  );
  const bodice = evaluate(draft, asked.body, choices);
  if (!bodice.ok || notWorn(bodice.value.garment).length > 0)
    throw new Unusable([notYet(unworn)], drafted.units);
  const instead = `It is not known yet how the ${drafted.made.garment.name} is put on: this is the bodice, with the same choices.`;
  return { drafted: { made: used(bodice), units: drafted.units }, instead };
}

function shown(
  { garment, body }: Evaluation,
  worn: PutOn,
  units: Unit,
  instead: string | undefined,
): WornShown {
  const verdicts = judged(garment, worn.findings, body, undefined);
  const reader = { units, columns: 0 };
  const maps = wornMaps(worn.hung, worn.stand, units);
  const title = `${garment.name} worn by ${body.name}`;
  const words = { title, says: wornWords(title, verdicts, units) };
  const seen = shownWorn(worn.form, worn.hung, worn.stand);
  const { columns, rows } = findingsRows(worn.findings, units);
  return {
    scene: wornScene(seen, Object.values(maps), words, units),
    sides: wornSides(seen, title),
    instead,
    lead: wornSaid(worn, verdicts, undefined, reader, false).lead,
    findings: verdicts
      .filter(({ verdict }) => verdict !== 'well')
      .map((verdict) => findingOf(verdict, units)),
    sure: proposed(verdicts),
    figures: { titles: columns.map((column) => column.title), rows },
    cannotKnow,
  };
}

function findingOf(found: Judged, units: Unit): Finding {
  const { verdict, change } = found;
  return {
    words: findingWords(found, units),
    sure: verdict === 'off',
    alter: change && { words: alteration(change, units), change },
  };
}
