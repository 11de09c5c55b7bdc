import { type Choice, capital } from '../../../../drafts/index.ts';
import { spoken } from '../../page-words.ts';
import { choicesOf, garmentNow } from '../../state.ts';
import type { FileViewProps } from '../view.ts';
import type { Asked } from './asked.tsx';
import { Figure } from './figure.tsx';
import { OwnGarment } from './own-garment.tsx';
import { usePictures } from './pictures.tsx';
import { Words } from './words.tsx';

/** The garment and what it leaves open. */
export function Choose(props: FileViewProps) {
  const { state, send } = props;
  usePictures(props);
  const { garments, garment, byCode, sought } = state;
  const of = garmentNow(state);
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
              checked={!byCode && name === garment}
              onChange={() => send({ does: 'choose garment', garment: name })}
            />{' '}
            <strong>{capital(name)}</strong> <span class="quiet">{title}</span>
          </label>
        ))}
        <OwnGarment state={state} send={send} />
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
