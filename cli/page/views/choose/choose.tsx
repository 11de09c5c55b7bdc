import { type Choice, capital, lengthFigure, writtenLength } from '../../../../drafts/index.ts';
import { choicesOf } from '../../state.ts';
import { Said } from '../said.tsx';
import type { ViewProps } from '../view.ts';
import { sliderOf } from './slider.ts';

type NumberChoice = Exclude<Choice, { kind: 'word' }>;

/** The garment and what it leaves open. */
export function Choose({ state, send }: ViewProps) {
  const { garments, garment, sought } = state;
  const of = garments.find(({ name }) => name === garment);
  const made = choicesOf(state);
  const words = sought.trim().toLowerCase().split(/\s+/);
  const shown = (of?.choices ?? []).filter(({ name, help }) => {
    const said = `${spoken(name)} ${help}`.toLowerCase();
    return words.every((word) => said.includes(word));
  });
  return (
    <>
      <h1 tabIndex={-1}>Choose</h1>
      <fieldset class="garments">
        <legend>The garment</legend>
        {garments.map(({ name, title }) => (
          <label key={name}>
            <input
              type="radio"
              name="garment"
              checked={name === garment}
              onChange={() => send({ does: 'choose garment', garment: name })}
            />{' '}
            <strong>{capital(name)}</strong> <span class="quiet">{title}</span>
          </label>
        ))}
      </fieldset>
      <div class="finder">
        <label for="sought">Look for a choice</label>
        <input
          id="sought"
          type="search"
          value={sought}
          placeholder="sleeve, hem, allowance"
          onInput={({ currentTarget }) => send({ does: 'seek', sought: currentTarget.value })}
        />
        <button
          type="button"
          disabled={Object.keys(made).length === 0}
          onClick={() => send({ does: 'choose nothing' })}
        >
          All as usual again
        </button>
      </div>
      <div class="fields">
        {shown.map((choice) =>
          choice.kind === 'word' ? (
            <Words key={choice.name} choice={choice} state={state} send={send} />
          ) : (
            <Figure key={choice.name} choice={choice} state={state} send={send} />
          ),
        )}
      </div>
      {of && shown.length === 0 && <p>The {garment} has no such choice.</p>}
    </>
  );
}

/** A choice's name as it is spoken: `necklineDepth` is the neckline depth. */
const spoken = (name: string): string =>
  name
    .replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)
    .replace(/^(under|upper) (bust|arm)/, '$1-$2');

/** What was found of a choice, and the way back to what is usual. */
function Below({ choice: { name, help }, state, send }: ViewProps & { choice: Choice }) {
  const issues = (state.answer?.issues ?? []).filter(({ path }) => path === name);
  return (
    <div id={`${name}-said`}>
      <p class="quiet">{capital(help)}.</p>
      {issues.map((issue) => (
        <Said key={`${issue.code} ${issue.message}`} issue={issue} />
      ))}
      {name in choicesOf(state) && (
        <button type="button" class="back" onClick={() => send({ does: 'choose', name, text: undefined })}>
          As usual again<span class="unseen">: {spoken(name)}</span>
        </button>
      )}
    </div>
  );
}

function Words({ choice, state, send }: ViewProps & { choice: Extract<Choice, { kind: 'word' }> }) {
  const { name, words } = choice;
  const made = choicesOf(state)[name] ?? choice.default;
  return (
    <fieldset class="field words" aria-describedby={`${name}-said`}>
      <legend>{capital(spoken(name))}</legend>
      {words.map((word) => (
        <label key={word}>
          <input
            type="radio"
            name={name}
            checked={word === made}
            onChange={() => send({ does: 'choose', name, text: word })}
          />{' '}
          {word === 'auto' ? 'by itself' : word}
        </label>
      ))}
      <Below choice={choice} state={state} send={send} />
    </fieldset>
  );
}

/** Parts of an inch in which the shortest sliders move. */
const finest = 64;

/** How units are written behind a figure; a share or a number of things has none. */
const unitSigns = { mm: 'mm', degrees: '°', ratio: '×', share: '', count: '' } as const;

function Figure({ choice, state, send }: ViewProps & { choice: NumberChoice }) {
  const { name, unit } = choice;
  const inches = unit === 'mm' && state.form.units === 'in';
  const text = choicesOf(state)[name];
  const shownIn = (value: number): string => (inches ? lengthFigure(value, 'in') : String(value));
  const usual = choice.default === 'auto' ? 'by itself' : shownIn(choice.default);
  const slider = sliderOf(choice, inches);
  const at = text === undefined ? choice.default : (writtenLength(text)?.value ?? Number.NaN);
  const wrong = state.answer?.issues.some(({ path, severity }) => path === name && severity === 'error');
  const label = capital(spoken(name));
  const sign = inches ? 'in' : unitSigns[unit];
  const typed = (typing: string): string | undefined => {
    if (typing.trim() === '') return undefined;
    return inches && !/[a-z"″]/i.test(typing) ? `${typing} in` : typing;
  };
  return (
    <div class="field figure">
      <label for={name}>{label}</label>
      <span class="entry">
        <input
          id={name}
          type="text"
          inputMode={inches ? 'text' : 'decimal'}
          autocomplete="off"
          maxLength={40}
          value={text === undefined ? '' : inches ? text.replace(/ in$/, '') : text}
          placeholder={usual}
          aria-invalid={wrong ?? false}
          aria-describedby={`${name}-said`}
          onInput={({ currentTarget }) => send({ does: 'choose', name, text: typed(currentTarget.value) })}
        />
        <span class="unit">{sign}</span>
      </span>
      <span class="slide">
        <span aria-hidden="true">{shownIn(choice.min)}</span>
        <input
          type="range"
          class={text === undefined ? 'usual' : undefined}
          min={slider.min}
          max={slider.max}
          step={slider.step}
          value={typeof at === 'number' && Number.isFinite(at) ? at : (slider.min + slider.max) / 2}
          aria-label={`${label}, from ${shownIn(choice.min)} to ${shownIn(choice.max)} ${sign}`.trim()}
          aria-valuetext={
            text === undefined ? `${usual}, as usual` : `${inches ? text.replace(/ in$/, '') : text} ${sign}`
          }
          onInput={({ currentTarget: { value, valueAsNumber } }) =>
            send({
              does: 'choose',
              name,
              text: inches ? `${lengthFigure(valueAsNumber, 'in', finest)} in` : value,
            })
          }
        />
        <span aria-hidden="true">{shownIn(choice.max)}</span>
      </span>
      <Below choice={choice} state={state} send={send} />
    </div>
  );
}
