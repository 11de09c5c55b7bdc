import { cupLetters, unitLabel, unitNames } from '../../../../drafts/index.ts';
import { AllSaid } from '../said.tsx';
import type { ViewProps } from '../view.ts';
import { inOtherUnit, unitBefore } from './in-other-unit.ts';

/** Who she is and in which unit she is measured; what else is said of her in words. */
export function Person({ state, send }: ViewProps) {
  const { form, answer } = state;
  const before = unitBefore(state);
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
        {before && form.units && (
          <button
            type="button"
            class="back"
            onClick={() => {
              if (form.units) send({ does: 'say', about: inOtherUnit(form, before, form.units) });
            }}
          >
            They were in {unitLabel[before]}: turn them into {unitLabel[form.units]}
          </button>
        )}
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
