import { type Choice, capital, lengthFigure, writtenLength } from '../../../../drafts/index.ts';
import type { PageIssue } from '../../page-issue.ts';
import { choicesOf } from '../../state.ts';
import { Said } from '../said.tsx';
import { sameIn, unlessSame } from '../unless-same.ts';
import type { FileViewProps } from '../view.ts';
import { Link } from './link.tsx';
import type { Pictures } from './own.ts';
import { Picture, scaleOf, usePictures } from './pictures.tsx';
import { sliderOf } from './slider.ts';

type NumberChoice = Exclude<Choice, { kind: 'word' }>;

/** The garment and what it leaves open. */
export function Choose(props: FileViewProps) {
  const { state, send } = props;
  usePictures(props);
  const { garments, garment, sought } = state;
  const of = garments.find(({ name }) => name === garment);
  const made = choicesOf(state);
  const words = sought.trim().toLowerCase().split(/\s+/);
  const found = (of?.choices ?? []).filter(({ name, help }) => {
    const said = `${spoken(name)} ${help}`.toLowerCase();
    return words.every((word) => said.includes(word));
  });
  // What has pictures leads; figures follow.
  const shown = [
    ...found.filter(({ kind }) => kind === 'word'),
    ...found.filter(({ kind }) => kind !== 'word'),
  ];
  const asked = <Kind extends Choice>(choice: Kind): Asked<Kind> => ({
    choice,
    send,
    text: made[choice.name],
    inches: state.form.units === 'in',
    pictures: state.own.choose.pictures[choice.name],
    issues: (state.answer?.issues ?? []).filter(({ path }) => path === choice.name),
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
      <Link state={state} send={send} />
      <div class="fields">
        {shown.map((choice) =>
          choice.kind === 'word' ? (
            <Words key={choice.name} {...asked(choice)} />
          ) : (
            <Figure key={choice.name} {...asked(choice)} />
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

/** One choice as it is asked for. */
interface Asked<Kind extends Choice = Choice> extends Pick<FileViewProps, 'send'> {
  readonly choice: Kind;
  /** What was chosen or typed; nothing where it is left to the draft. */
  readonly text: string | undefined;
  readonly inches: boolean;
  readonly pictures: Pictures[string] | undefined;
  readonly issues: readonly PageIssue[];
}

const sameAsked = (before: Asked, now: Asked): boolean =>
  sameIn<Asked>(['choice', 'text', 'inches', 'pictures'])(before, now) &&
  before.issues.length === now.issues.length &&
  before.issues.every(({ message }, i) => message === now.issues[i]?.message);

/** What was found of a choice, and the way back to what is usual. */
function Below({ choice: { name, help }, text, issues, send }: Asked) {
  return (
    <div id={`${name}-said`}>
      <p class="quiet">{capital(help)}.</p>
      {issues.map((issue) => (
        <Said key={`${issue.code} ${issue.message}`} issue={issue} />
      ))}
      {text !== undefined && (
        <button type="button" class="back" onClick={() => send({ does: 'choose', name, text: undefined })}>
          As usual again<span class="unseen">: {spoken(name)}</span>
        </button>
      )}
    </div>
  );
}

const Words = unlessSame<Asked<Extract<Choice, { kind: 'word' }>>>((asked) => {
  const { choice, text, pictures = {}, send } = asked;
  const { name, words } = choice;
  const made = text ?? choice.default;
  const drawn = Object.keys(pictures).length > 0;
  const scale = scaleOf(pictures);
  return (
    <fieldset class={drawn ? 'field words drawn' : 'field words'} aria-describedby={`${name}-said`}>
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
          {pictures[word] && <Picture picture={pictures[word]} scale={scale} />}
        </label>
      ))}
      <Below {...asked} />
    </fieldset>
  );
}, sameAsked);

/** Parts of an inch in which the shortest sliders move. */
const finest = 64;

/** How units are written behind a figure; a share or a number of things has none. */
const unitSigns = { mm: 'mm', degrees: '°', ratio: '×', share: '', count: '' } as const;

const Figure = unlessSame<Asked<NumberChoice>>((asked) => {
  const { choice, text, issues, send } = asked;
  const { name, unit } = choice;
  const inches = unit === 'mm' && asked.inches;
  const shownIn = (value: number): string => (inches ? lengthFigure(value, 'in') : String(value));
  const usual = choice.default === 'auto' ? 'by itself' : shownIn(choice.default);
  const slider = sliderOf(choice, inches);
  const at = text === undefined ? choice.default : (writtenLength(text)?.value ?? Number.NaN);
  const wrong = issues.some(({ severity }) => severity === 'error');
  const label = capital(spoken(name));
  // The nearest that the draft takes, where it takes what was typed not at all.
  const beyond = wrong && typeof at === 'number' && (at < choice.min || at > choice.max);
  const nearest = beyond ? (at < choice.min ? slider.min : slider.max) : undefined;
  const asText = (value: number): string =>
    inches ? `${lengthFigure(value, 'in', finest)} in` : String(value);
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
          aria-invalid={wrong}
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
            send({ does: 'choose', name, text: inches ? asText(valueAsNumber) : value })
          }
        />
        <span aria-hidden="true">{shownIn(choice.max)}</span>
      </span>
      {nearest !== undefined && (
        <button
          type="button"
          class="back"
          onClick={() => send({ does: 'choose', name, text: asText(nearest) })}
        >
          Take {shownIn(nearest)} {sign}
        </button>
      )}
      <Below {...asked} />
    </div>
  );
}, sameAsked);
