import { takeableNames, takeables } from '../../takeables.ts';
import type { TakeAction, Taking } from './own.ts';

/** All of it in one file, but for what is left out. */
export const Zip = ({
  own: { without, busy },
  act,
  take,
}: {
  own: Taking;
  act: (what: TakeAction) => void;
  take: () => void;
}) => (
  <section aria-label="All in one" class="zip">
    <h2>All in one</h2>
    <fieldset class="field">
      <legend>What the ZIP holds</legend>
      {takeableNames.map((writing) => (
        <label class="tick" key={writing}>
          <input
            type="checkbox"
            checked={!without.includes(writing)}
            onChange={({ currentTarget }) =>
              act({ does: 'include', writing, included: currentTarget.checked })
            }
          />{' '}
          {takeables[writing].words}
        </label>
      ))}
    </fieldset>
    <ul class="takes">
      <li>
        <button
          type="button"
          disabled={busy !== undefined || without.length === takeableNames.length}
          onClick={take}
        >
          Take it as one ZIP
        </button>
      </li>
    </ul>
  </section>
);
