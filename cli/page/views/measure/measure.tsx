import {
  capital,
  cupLetters,
  essentialNames,
  howTaken,
  type MeasurementName,
  measurementNames,
  measurementWords,
  unitLabel,
  unitNames,
} from '../../../../drafts/index.ts';
import type { PageIssue } from '../../page-issue.ts';
import { AllSaid, Said } from '../said.tsx';
import type { FileViewProps, ViewProps } from '../view.ts';
import { Figure } from './figure.tsx';
import { Beside, TakeAgain, useStudy } from './study.tsx';

const essential: ReadonlySet<MeasurementName> = new Set(essentialNames);

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

const invented = [
  'leading lady',
  'understudy',
  'wardrobe mistress',
  'stage manager',
  'prompter',
  'scene painter',
  'lighting operator',
  'front of house',
];

/** Her measurements: typed, opened from a file, or those of an invented body. */
export function Measure(props: FileViewProps) {
  const { state, send } = props;
  const { form, answer } = state;
  const known: readonly string[] = [...measurementNames, 'age', 'cup', 'name', 'units'];
  const choices = state.garments.flatMap((garment) => garment.choices.map(({ name }) => name));
  // Of the garment drawn, as against the body, Checks tells.
  const others = (answer?.issues ?? []).filter(
    ({ path, code, severity }) =>
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
        <Files {...props} />
        <div class="found">
          <AllSaid issues={others} />
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

function Files({ open, ask, send }: FileViewProps) {
  return (
    <details class="files">
      <summary>Open a file, or try an invented body</summary>
      <p>
        <label>
          Measurements from a file (YAML or JSON; you may also drop it on the page){' '}
          <input
            type="file"
            accept=".yaml,.yml,.json"
            onChange={({ currentTarget }) => {
              const [file] = currentTarget.files ?? [];
              if (file) void open(file);
              currentTarget.value = '';
            }}
          />
        </label>
      </p>
      <p>Nobody in particular: eight invented bodies of a small theatre’s costume workshop.</p>
      <ul class="row">
        {invented.map((name) => (
          <li key={name}>
            <button
              type="button"
              onClick={async () => {
                const file = `${name.replaceAll(' ', '-')}.yaml`;
                try {
                  const found = await fetch(`bodies/${file}`);
                  if (!found.ok) throw new Error(found.statusText);
                  ask({ kind: 'open', file, text: await found.text() });
                } catch {
                  send({ does: 'note', notice: `${file} could not be loaded.` });
                }
              }}
            >
              {capital(name)}
            </button>
          </li>
        ))}
      </ul>
    </details>
  );
}

/** The way out where measurements contradict each other. */
function Reconcile({ state: { form, answer }, send }: ViewProps) {
  const offered = answer?.issues.some(({ code }) => code === 'reconcile-offered') ?? false;
  if (!offered && !form.reconcile) return null;
  return (
    <label class="tick">
      <input
        type="checkbox"
        checked={form.reconcile}
        onChange={({ currentTarget }) => send({ does: 'say', about: { reconcile: currentTarget.checked } })}
      />{' '}
      They cannot be taken again: draft for the most likely body behind measurements that contradict each
      other.
    </label>
  );
}

function Person({ state, send }: ViewProps) {
  const { form, answer } = state;
  const about = (path: string) => answer?.issues.filter((issue) => issue.path === path) ?? [];
  return (
    <section class="fields" aria-label="Who, and in which unit">
      <div class="field">
        <label for="name">Name or role</label>
        <input
          id="name"
          type="text"
          value={form.name}
          maxLength={80}
          autocomplete="off"
          aria-describedby="name-said"
          onInput={({ currentTarget }) => send({ does: 'say', about: { name: currentTarget.value } })}
        />
        <div id="name-said">
          <p class="quiet">Printed on the pieces.</p>
          <AllSaid issues={about('name')} />
        </div>
      </div>
      <fieldset class="field words">
        <legend>All lengths in</legend>
        {unitNames.map((unit) => (
          <label key={unit}>
            <input
              type="radio"
              name="units"
              checked={form.units === unit}
              onChange={() => send({ does: 'say', about: { units: unit } })}
            />{' '}
            {unitLabel[unit]}
          </label>
        ))}
        <AllSaid issues={about('units')} />
      </fieldset>
      <div class="field">
        <label for="age">Age, if she is a child</label>
        <input
          id="age"
          type="text"
          inputMode="numeric"
          value={form.age}
          autocomplete="off"
          aria-describedby="age-said"
          onInput={({ currentTarget }) => send({ does: 'say', about: { age: currentTarget.value } })}
        />
        <div id="age-said">
          <p class="quiet">Children’s clothes carry no drawstring.</p>
          <AllSaid issues={about('age')} />
        </div>
      </div>
      <div class="field">
        <label for="cup">Cup, if the under-bust is not measured</label>
        <select
          id="cup"
          value={form.cup}
          aria-describedby="cup-said"
          onChange={({ currentTarget }) => send({ does: 'say', about: { cup: currentTarget.value } })}
        >
          <option value="">not said</option>
          {cupLetters.map((letter) => (
            <option key={letter} value={letter}>
              {letter}
            </option>
          ))}
        </select>
        <div id="cup-said">
          <AllSaid issues={about('cup')} />
        </div>
      </div>
    </section>
  );
}

/** What `sure` can answer: that a number is unlikely, not that it cannot be read. */
const canBeSure = ({ severity, code }: PageIssue): boolean =>
  severity !== 'note' &&
  !['not-a-number', 'measurement-missing', 'measurement-out-of-range', 'unknown-field'].includes(code);

function Field({ name, state, send }: ViewProps & { name: MeasurementName }) {
  const { form, answer, garments, garment } = state;
  const { studied, at } = state.own.measure;
  const value = form.sizes[name] ?? '';
  const known = answer?.sizes?.[name];
  const issues = (answer?.issues ?? []).filter(
    ({ path, code }) => path === name && code !== 'measurement-missing',
  );
  const wrong = issues.some(({ severity }) => severity === 'error');
  const sure = form.sure.includes(name);
  const unit = name === 'shoulderSlope' ? '°' : form.units;
  const of = garments.find((each) => each.name === garment);
  const idle = of && !of.shapedBy.includes(name) && !essential.has(name);
  return (
    <div class="field">
      <label for={name}>{capital(measurementWords(name))}</label>
      <span class="entry">
        <input
          id={name}
          type="text"
          inputMode={form.units === 'in' ? 'text' : 'decimal'}
          autocomplete="off"
          value={value}
          maxLength={40}
          placeholder={value === '' && known ? known.text : undefined}
          required={essential.has(name)}
          aria-invalid={wrong}
          aria-describedby={`${name}-said`}
          onFocus={() => send({ does: 'within', view: 'measure', what: { does: 'attend', at: name } })}
          onInput={({ currentTarget }) => send({ does: 'measure', name, text: currentTarget.value })}
        />
        <span class="unit">{unit}</span>
      </span>
      <div id={`${name}-said`}>
        {value === '' && known?.from === 'estimated' && (
          <p class="estimate">
            Estimated {known.text}, give or take {known.spread} {unit}
          </p>
        )}
        {value === '' && known?.from === 'derived' && <p class="estimate">{known.text}, by the cup</p>}
        {value !== '' && known?.from === 'reconciled' && (
          <p class="estimate">
            Drafted as {known.text} {unit}
          </p>
        )}
        <p class="quiet">
          {howTaken[name]}
          {idle ? ` The ${garment} has no use for it.` : ''}
        </p>
        {issues.map((issue) => (
          <Said key={`${issue.code} ${issue.message}`} issue={issue} />
        ))}
      </div>
      {!state.wide && studied && at === name && <Figure figure={studied.figure} at={name} best />}
      {(sure || (value !== '' && issues.some(canBeSure))) && (
        <label class="tick">
          <input
            type="checkbox"
            checked={sure}
            onChange={({ currentTarget }) => send({ does: 'be sure', name, sure: currentTarget.checked })}
          />{' '}
          Taken twice: let it stand
        </label>
      )}
    </div>
  );
}
