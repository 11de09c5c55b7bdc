import type { Body, MeasurementName, Provenance } from '../../engine/body/body.ts';
import { howTaken } from '../../engine/body/how-taken.ts';
import type { Step } from '../../engine/pattern/garment.ts';
import type { Ground } from '../../engine/pattern/quantity.ts';
import { type Reason, reasonsOf, stepsCalled } from '../../engine/pattern/reasons.ts';
import { groundText, stepText } from '../../engine/pattern/step-text.ts';
import type { Choice, Styling } from '../../engine/pattern/styling.ts';
import { figure } from '../../engine/text/figure.ts';
import { nearestWord } from '../../engine/text/nearest-word.ts';
import type { Unit } from '../../engine/text/units.ts';
import { withLengthsIn } from '../../engine/text/with-lengths-in.ts';
import { unusable } from '../input/unusable.ts';

/** What a number of the draft rests on is looked up in: the body, and the choices with how they were made. */
export interface Known {
  readonly body: Body;
  readonly choices: readonly Choice[];
  readonly styling: Styling;
  /** The unit that lengths are shown in. */
  readonly units: Unit;
}

/** What the steps of a title rest on; a title that no step bears is refused, with the nearest that one does. */
export function reasonsFor(steps: readonly Step[], title: string): readonly Reason[] {
  const found = stepsCalled(steps, title);
  if (found.length > 0) return found.map((step) => reasonsOf(step, steps));
  const near = nearestWord(
    title,
    steps.map((step) => step.title),
  );
  const hint = near ? `Did you mean “${near}”?` : 'With --steps all are printed.';
  throw unusable('unknown-step', '--why', `No step is called “${title.slice(0, 60)}”. ${hint}`);
}

/** What a number rests on, each ground under what was found from it, down to the tape. */
export function reasonLines(reason: Reason, known: Known, indent = ''): string {
  const own = `${indent}${words(reason, known)}\n`;
  return own + reason.from.map((each) => reasonLines(each, known, `${indent}   `)).join('');
}

function words({ ground, step, told }: Reason, known: Known): string {
  const { units } = known;
  const said = (text: string): string => withLengthsIn(text, units);
  const amount = amountText(ground, units);
  if (step)
    return `${said(step.title)}: ${told ? `${amount}, as above` : `${stepText(step, units)} [${said(step.source)}]`}`;
  const { origin, name } = ground;
  if (origin.kind === 'step') return name;
  return `${origin.kind === 'rule' ? origin.id : name} ${amount}: ${whence(ground, known)}`;
}

/** Where a number came from that no step found: how it was measured, what was chosen, which rule says so. */
export function whence({ origin, name }: Ground, known: Known): string {
  const said = (text: string): string => withLengthsIn(text, known.units);
  switch (origin.kind) {
    case 'measurement':
      return said(fromTape(origin.measurement, known.body));
    case 'rule':
      return `${said(name)} (${said(origin.source)})`;
    case 'choice':
      return said(chosen(name, known));
    case 'fitting':
      return 'found at the fitting';
    case 'step':
      return `found in step ${origin.number}`;
  }
}

/** A number that something rests on, with its unit. */
export const amountText = (ground: Ground, units: Unit): string =>
  `${groundText(ground, units)}${ground.unit === 'mm' ? ` ${units}` : ''}`;

function fromTape(name: MeasurementName, { known }: Body): string {
  const from: Provenance = known[name];
  if (from.from === 'measured') return `measured. ${howTaken[name]}`;
  if (from.from === 'reconciled')
    return `reconciled: written ${figure(from.written)} mm. To measure it again: ${howTaken[name]}`;
  return from.from === 'derived'
    ? `derived: ${from.basis}`
    : `estimated: ${from.basis}. To measure it instead: ${howTaken[name]}`;
}

function chosen(name: string, { choices, styling }: Known): string {
  const choice = choices.find((each) => each.name === name);
  const how = choice && styling[name] === choice.default ? 'unless chosen otherwise' : 'as chosen';
  return choice ? `${choice.help} (${how})` : how;
}
