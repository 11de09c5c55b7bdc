import { type Choice, capital, lengthFigure, writtenLength } from '../../../../drafts/index.ts';
import { spoken } from '../../page-words.ts';
import { unlessSame } from '../unless-same.ts';
import { type Asked, Below, sameAsked } from './asked.tsx';
import { sliderOf } from './slider.ts';

/** Parts of an inch in which the shortest sliders move. */
const finest = 64;

/** How units are written behind a figure; a share or a number of things has none. */
const unitSigns = { mm: 'mm', degrees: '°', ratio: '×', share: '', count: '' } as const;

/** A choice of a figure: typed, or by a slider. */
export const Figure = unlessSame<Asked<Exclude<Choice, { kind: 'word' }>>>((asked) => {
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
  const entered = inches ? text?.replace(/ in$/, '') : text;
  const behind = entered !== undefined && writtenLength(entered)?.withUnit ? '' : sign;
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
          value={entered ?? ''}
          placeholder={usual}
          aria-invalid={wrong}
          aria-describedby={`${name}-said`}
          onInput={({ currentTarget }) => send({ does: 'choose', name, text: typed(currentTarget.value) })}
        />
        <span class="unit">{behind}</span>
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
          aria-valuetext={entered === undefined ? `${usual}, as usual` : `${entered} ${behind}`.trim()}
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
