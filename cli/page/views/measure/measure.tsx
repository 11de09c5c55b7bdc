import { type MeasurementName, measurementNames } from '../../../../drafts/index.ts';
import { garmentsNow } from '../../state.ts';
import { AllSaid } from '../said.tsx';
import type { FileViewProps } from '../view.ts';
import { essential, Field } from './field.tsx';
import { OpenBody } from './open-body.tsx';
import { Person } from './person.tsx';
import { Reconcile } from './reconcile.tsx';
import { Beside, TakeAgain, useStudy } from './study.tsx';

/** Those that pay best for measuring, as the README says. */
const paying: ReadonlySet<MeasurementName> = new Set([
  'underBustGirth',
  'neckShoulderPointToBustPoint',
  'neckShoulderPointToWaist',
  'bustPointWidth',
  'scyeDepth',
]);

const groups = [
  {
    title: 'Needed',
    says: 'Without these four nothing can be drafted.',
    names: measurementNames.filter((name) => essential.has(name)),
  },
  {
    title: 'Well worth taking',
    says: 'Tie a tape round the waist first, and take every length to that tape.',
    names: measurementNames.filter((name) => paying.has(name)),
  },
  {
    title: 'The others',
    says: 'What you leave out is estimated from the rest.',
    names: measurementNames.filter((name) => !essential.has(name) && !paying.has(name)),
  },
];

/** Her measurements: typed, opened from a file, or those of an invented body. */
export function Measure(props: FileViewProps) {
  const { state, send } = props;
  const { form, answer } = state;
  const known: readonly string[] = [...measurementNames, 'age', 'cup', 'name', 'units'];
  const choices = garmentsNow(state).flatMap((garment) => garment.choices.map(({ name }) => name));
  // Of the garment drawn, as against the body, Checks tells.
  const others = (answer?.issues ?? []).filter(
    ({ path, code, severity }) =>
      // The way out is offered below, in the words of the page.
      code !== 'reconcile-offered' &&
      !known.includes(path) &&
      !choices.includes(path) &&
      (path in form.rest || code.includes('reconcile') || (severity === 'error' && !answer?.made)),
  );
  const unread = Object.keys(form.rest).filter((name) => name !== 'fitting');
  useStudy(props);
  return (
    <div class={state.wide ? 'measuring wide' : 'measuring'}>
      <div>
        <h1 tabIndex={-1}>Measure</h1>
        <OpenBody {...props} />
        <div class="found">
          <AllSaid issues={others} hers={{ state, send }} />
          {unread.length > 0 && (
            <button type="button" onClick={() => send({ does: 'leave out the rest' })}>
              Leave out what cannot be read ({unread.join(', ')})
            </button>
          )}
          {form.rest.fitting !== undefined && (
            <p>The file also says what was pinned at a fitting. It is drafted in, and saved again.</p>
          )}
          <Reconcile {...props} />
        </div>
        <Person {...props} />
        {groups.map(({ title, says, names }) => (
          <section key={title} aria-label={title}>
            <h2>{title}</h2>
            <p class="quiet">{says}</p>
            <div class="fields">
              {names.map((name) => (
                <Field key={name} name={name} state={state} send={send} />
              ))}
            </div>
          </section>
        ))}
        {!state.wide && <TakeAgain state={state} />}
      </div>
      {state.wide && <Beside state={state} />}
    </div>
  );
}
