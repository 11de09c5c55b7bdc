import { isOutdated } from '../../asked-draft.ts';
import type { LayRequest } from '../../requests/lay-messages.ts';
import { askedDraft, ready } from '../../state.ts';
import { Cautions } from '../cautions.tsx';
import { Progress } from '../progress.tsx';
import { AllSaid } from '../said.tsx';
import { SvgPicture } from '../svg-picture.tsx';
import { ToMeasure } from '../to-measure.tsx';
import type { FileViewProps } from '../view.ts';
import { WordedTable } from '../worded-table.tsx';
import { ClothForm } from './cloth-form.tsx';
import { clothAsked } from './her-unit.ts';
import { type ClothAction, efforts } from './own.ts';

/** How the pieces lie on the cloth with little waste, and what is to be bought. */
export function Cloth({ state, send, ask }: FileViewProps) {
  const own = state.own.cloth;
  const { busy, plans, laid, buy, number } = own;
  const made = ready(state);
  const inches = state.form.units === 'in';
  const asked = askedDraft(state);
  const act = (what: ClothAction): void => send({ does: 'within', view: 'cloth', what });
  const begin = (): void => {
    const { title: _, ...effort } = efforts[own.effort];
    const request: LayRequest = {
      ...{ kind: 'lay', number: number + 1, does: 'begin', asked, ...effort },
      cloth: clothAsked(own.cloth, inches),
    };
    act({ does: 'begin', number: number + 1, of: asked });
    ask(request);
  };
  const old = isOutdated(own.of, asked);
  return (
    <>
      <h1 tabIndex={-1}>Cloth</h1>
      {!made && !own.of && (
        <>
          <p>There is nothing to lay yet: the pieces come first.</p>
          <ToMeasure send={send} />
        </>
      )}
      {made && !own.of && (
        <p class="quiet">How the pieces lie on the cloth she means to buy, and how much of it that is.</p>
      )}
      <ClothForm own={own} inches={inches} act={act} />
      <p class="finder lay-tools">
        <button type="button" disabled={!made || busy !== undefined} onClick={begin}>
          Lay the {made?.garment ?? 'garment'} on it
        </button>
        <button type="button" disabled={!busy} onClick={() => ask({ kind: 'lay', number, does: 'stop' })}>
          Stop, and keep the best
        </button>
        <button
          type="button"
          disabled={!laid || plans.length === 0 || own.writing}
          onClick={() => {
            act({ does: 'write' });
            ask({ kind: 'lay', number, does: 'take' });
          }}
        >
          Take the plan (SVG and PDF)
        </button>
      </p>
      <p role="status">
        {busy &&
          (busy.cloth === '' ? 'Drafting …' : `Laying the ${busy.cloth === 'self' ? 'cloth' : busy.cloth} …`)}
        {laid &&
          plans.length > 0 &&
          (laid.issues.some(({ severity }) => severity === 'error')
            ? 'The plan is not as it should be:'
            : 'No overlaps, and every piece is there: proven from the plan as it is drawn.')}
      </p>
      {busy && <Progress share={busy.share} label="The search" />}
      {old && <p class="quiet">This is of the garment as it was before. Lay it again for what it is now.</p>}
      <AllSaid issues={laid?.issues ?? []} hers={{ state, send }} />
      {plans.map(({ cloth, svg, words, alt, buy: toBuy }) => (
        <section key={cloth} aria-label={`Plan of the ${cloth}`} class="lay-plan">
          <h2>
            For the {cloth}: buy {toBuy}
          </h2>
          <p class="quiet">{words}</p>
          <SvgPicture svg={svg} called={`Plan of the ${cloth}`} words={alt} />
        </section>
      ))}
      {laid?.table && (
        <section aria-label="Figures of the plans">
          <h2>In figures</h2>
          <WordedTable title="Figures of the plans" table={laid.table} />
          {laid.stripes.map((line) => (
            <p key={line}>{line}</p>
          ))}
        </section>
      )}
      {buy && (
        <>
          <section aria-label="What to buy">
            <h2>What to buy</h2>
            <WordedTable title="Cloth, by its width" table={buy.cloth} />
            <p class="quiet">
              {buy.planned
                ? 'Cloth without nap or stripes, folded lengthwise, or open where it says so; lengths of a quick plan. The plan above is of the cloth you described.'
                : 'No lay of these pieces is shorter.'}
            </p>
            {buy.besides.rows.length > 0 && <WordedTable title="Notions and thread" table={buy.besides} />}
            <p class="quiet">{buy.threadNote}</p>
          </section>
          <section aria-label="What to cut">
            <h2>What to cut</h2>
            <WordedTable title="What to cut" table={buy.cut} />
          </section>
        </>
      )}
      {made && buy && <Cautions made={made} />}
    </>
  );
}
