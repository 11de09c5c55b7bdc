import {
  type Body,
  bodyForm,
  byImportance,
  type LineFigure,
  lengthIn,
  lineFigure,
  type MeasurementName,
  resolveStyling,
  sensitivities,
  takeAgain,
  type Unit,
  unitNames,
} from '../../../drafts/index.ts';
import { Unusable } from '../../input/unusable.ts';
import type { AskedDraft } from '../asked-draft.ts';
import { draftingOf } from '../own-draft/drafting-of.ts';
import { bodyOrUsual } from './usual-body.ts';

/** A body looked at more closely than a draft has time for. */
export interface StudyRequest extends AskedDraft {
  readonly kind: 'study';
  /** What this is a study of, so that its answer can be known. */
  readonly of: string;
}

export interface StudyAnswer {
  readonly kind: 'studied';
  readonly of: string;
  readonly figure: BodyFigure;
  /** Which it is best to take again, the first first. */
  readonly again: readonly TakenAgain[];
}

/** Her form in lines, or a usual one where hers is not known yet. */
export interface BodyFigure {
  readonly hers: boolean;
  readonly front: LineFigure;
  readonly side: LineFigure;
  readonly back: LineFigure;
}

export interface TakenAgain {
  readonly name: MeasurementName;
  readonly because: string;
}

export async function studied(asked: StudyRequest): Promise<StudyAnswer> {
  const { body, of } = asked;
  const shown = bodyOrUsual(body);
  const form = bodyForm(shown.body);
  const own = unitNames.find((unit) => unit === body.units) ?? 'mm';
  return {
    kind: 'studied',
    of,
    figure: {
      hers: shown.hers,
      front: lineFigure(form, 'front'),
      side: lineFigure(form, 'side'),
      back: lineFigure(form, 'back'),
    },
    again: shown.hers ? await againFor(shown.body, asked, own) : [],
  };
}

async function againFor(body: Body, asked: AskedDraft, units: Unit): Promise<readonly TakenAgain[]> {
  try {
    return await foundAgain(body, asked, units);
  } catch (error) {
    // Why code cannot be run a draft of it says.
    if (error instanceof Unusable) return [];
    throw error;
  }
}

async function foundAgain(body: Body, asked: AskedDraft, units: Unit): Promise<readonly TakenAgain[]> {
  const { draft, own } = await draftingOf(asked);
  const styling = resolveStyling(draft.choices, asked.choices);
  if (!styling.ok) return [];
  const found = own
    ? await own.elsewhere.sensitivities(body, styling.value)
    : sensitivities(draft, body, styling.value);
  if (!found.ok) return [];
  return takeAgain(byImportance(body, found.value)).map(({ measurement, from, likelyError, most }) => ({
    name: measurement,
    because: `${from === 'estimated' ? 'It is estimated, and' : 'A tape'} may well be off by ${lengthIn(likelyError, units)}${
      most ? `: that moves “${most.place.name}” by ${lengthIn(most.likelyOff, units)}` : ''
    }.`,
  }));
}
