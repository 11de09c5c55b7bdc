import { cloths } from '../../../../drafts/index.ts';
import { isOutdated } from '../../asked-draft.ts';
import { askedDraft, ready } from '../../state.ts';
import { WornStage } from '../../worn/worn-stage.tsx';
import { Progress } from '../progress.tsx';
import { AllSaid } from '../said.tsx';
import { ToMeasure } from '../to-measure.tsx';
import type { FileViewProps } from '../view.ts';
import { WordedTable } from '../worded-table.tsx';
import { FindingList } from './finding-list.tsx';
import { InLines } from './in-lines.tsx';
import type { WornAction } from './own.ts';

/** Size of the triangles, mm: of a first answer, and of one as the command line gives it. */
const spacings = { first: 20, fine: 12 } as const;

/** The garment on her form, what is found on it, and what a fitter would alter. */
export function Worn({ state, send, ask }: FileViewProps) {
  const own = state.own.worn;
  const { busy, worn, number } = own;
  const made = ready(state);
  const asked = askedDraft(state);
  const act = (what: WornAction): void => send({ does: 'within', view: 'worn', what });
  const begin = (): void => {
    const spacing = own.fine ? spacings.fine : spacings.first;
    act({ does: 'begin', number: number + 1, of: asked });
    ask({ kind: 'wear', number: number + 1, does: 'begin', asked, cloth: own.cloth, spacing });
  };
  const old = isOutdated(own.of, asked);
  return (
    <>
      <h1 tabIndex={-1}>Worn</h1>
      {!made && !own.of && (
        <>
          <p>There is nothing to put on yet: the pieces come first.</p>
          <ToMeasure send={send} />
        </>
      )}
      {made && !own.of && (
        <p class="quiet">
          The pieces are sewn together on her form and hung in a cloth, to see where it is loose, tight or not
          level. A first answer takes seconds; a skirt and sleeves take longer.
        </p>
      )}
      <p class="finder">
        <label for="worn-cloth">In</label>
        <select
          id="worn-cloth"
          value={own.cloth}
          onChange={({ currentTarget }) => act({ does: 'cloth', cloth: currentTarget.value })}
        >
          {cloths.map(({ name }) => (
            <option key={name} value={name}>
              {name}
            </option>
          ))}
        </select>
        <label>
          <input
            type="checkbox"
            checked={own.fine}
            onChange={({ currentTarget }) => act({ does: 'fine', fine: currentTarget.checked })}
          />{' '}
          finely, which takes much longer
        </label>
        <button type="button" disabled={!made || busy !== undefined} onClick={begin}>
          {worn ? 'Put it on again' : 'Put it on'}
        </button>
        <button
          type="button"
          disabled={busy === undefined}
          onClick={() => ask({ kind: 'wear', number, does: 'stop' })}
        >
          Stop, and keep the best
        </button>
      </p>
      <p role="status">
        {busy !== undefined && `Hanging it on her form: about ${Math.round(100 * busy)} % …`}
      </p>
      {busy !== undefined && <Progress share={busy} label="Hanging" />}
      <AllSaid issues={own.issues} hers={{ state, send }} />
      {worn && (
        <>
          {old && <p class="notice">This is how it was before. Put it on again to see it as it is now.</p>}
          <p class="said warning">{worn.cannotKnow[0]}</p>
          {worn.instead && <p>{worn.instead}</p>}
          <p class="quiet">{worn.lead}</p>
          <WornStage scene={worn.scene} instead={<InLines worn={worn} />} />
          <FindingList
            worn={worn}
            taken={own.taken}
            takeOver={(words, changes) => {
              act({ does: 'take over', words });
              ask({ kind: 'fit', body: asked.body, changes });
            }}
          />
          <section aria-label="Every figure">
            <h2>Every figure</h2>
            <WordedTable title="Every figure" table={worn.figures} />
          </section>
          <section aria-label="What this cannot know" class="cautions">
            <h2>What this cannot know</h2>
            <ul>
              {worn.cannotKnow.slice(1).map((each) => (
                <li key={each}>{each}</li>
              ))}
            </ul>
          </section>
        </>
      )}
    </>
  );
}
