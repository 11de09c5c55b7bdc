import {
  capital,
  essentialNames,
  howTaken,
  type MeasurementName,
  measurementWords,
} from '../../../../drafts/index.ts';
import { letItStand } from '../../page-words.ts';
import { garmentNow } from '../../state.ts';
import { canBeSure, Said } from '../said.tsx';
import type { ViewProps } from '../view.ts';
import { Figure } from './figure.tsx';
import { toldSize, unitOf } from './told-size.ts';

/** What must be measured. */
export const essential: ReadonlySet<MeasurementName> = new Set(essentialNames);

/** One measurement: typed, or estimated, with how it is taken and what was found of it. */
export function Field({ name, state, send }: ViewProps & { name: MeasurementName }) {
  const { form, answer, garment } = state;
  const { studied, at } = state.own.measure;
  const value = form.sizes[name] ?? '';
  const known = answer?.sizes?.[name];
  const issues = (answer?.issues ?? []).filter(
    ({ path, code }) => path === name && code !== 'measurement-missing',
  );
  const wrong = issues.some(({ severity }) => severity === 'error');
  const sure = form.sure.includes(name);
  const unit = unitOf(name, form.units);
  const of = garmentNow(state);
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
      {!state.wide && studied && at === name && (
        <Figure figure={studied.figure} at={name} told={toldSize(state, name)} best />
      )}
      {(sure || (value !== '' && issues.some(canBeSure))) && (
        <label class="tick">
          <input
            type="checkbox"
            checked={sure}
            onChange={({ currentTarget }) => send({ does: 'be sure', name, sure: currentTarget.checked })}
          />{' '}
          {letItStand}
        </label>
      )}
    </div>
  );
}
