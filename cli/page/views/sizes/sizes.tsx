import { askedDraft, isUntouched } from '../../state.ts';
import { Progress } from '../progress.tsx';
import { AllSaid } from '../said.tsx';
import { useLater } from '../use-later.ts';
import type { FileViewProps } from '../view.ts';
import { WordedTable } from '../worded-table.tsx';
import { BodyFiles } from './body-files.tsx';
import { ChartChoice } from './chart-choice.tsx';
import { Nearest } from './nearest.tsx';
import { NestView } from './nest-view.tsx';
import { isSameGrade, isSameNest, type SizesAction } from './own.ts';
import { useDropped } from './use-dropped.ts';

/** The garment in every size of a chart: nests, what each size adds, and which is nearest to her. */
export function Sizes({ state, send, ask }: FileViewProps) {
  const own = state.own.sizes;
  const { chart, grade, busy, looked, number } = own;
  const asked = askedDraft(state);
  const act = (what: SizesAction): void => send({ does: 'within', view: 'sizes', what });
  const note = (notice: string): void => send({ does: 'note', notice });
  useDropped(own.needs, act, note);
  const uneven = own.issues.filter(({ code }) => code === 'uneven-grade');
  const current = isSameGrade(own.of, asked);
  useLater(chart !== undefined && !current, () => {
    if (!chart) return;
    act({ does: 'begin', number: number + 1, of: { garment: asked.garment, choices: asked.choices } });
    ask({ kind: 'sizes', number: number + 1, does: 'grade', asked, chart });
  }, [chart, asked.garment, asked.choices]);
  const free = grade !== undefined && !busy && !own.drawing && looked.piece !== '';
  const nest = { ...looked, beside: matchMedia('(min-width: 40rem)').matches };
  useLater(free && !isSameNest(own.nest?.asked, nest), () => {
    act({ does: 'draw', nest });
    ask({ kind: 'sizes', number, does: 'nest', ...nest });
  }, [looked, nest.beside]);
  return (
    <>
      <h1 tabIndex={-1}>Sizes</h1>
      {!chart && (
        <p class="quiet">
          Every size of a chart drafted from its own measurements, its pieces laid over one another, and which
          size is nearest to her.
        </p>
      )}
      <ChartChoice own={own} act={act} note={note} />
      <BodyFiles state={state} act={act} note={note} />
      <p role="status">
        {busy
          ? `Drafting size by size${busy.of > 0 ? `: ${busy.done} of ${busy.of}` : ''} …`
          : grade && verdict(grade, uneven.length)}
      </p>
      {busy && busy.of > 0 && <Progress share={busy.done / busy.of} label="Sizes drafted" />}
      <AllSaid issues={own.issues.filter(({ code }) => code !== 'uneven-grade')} />
      {grade && (
        <>
          <NestView own={own} grade={grade} act={act} />
          {uneven.length > 0 && (
            <details class="more">
              <summary>
                Where steps are uneven, and why: {uneven.length} {uneven.length === 1 ? 'place' : 'places'}
              </summary>
              <AllSaid issues={uneven} />
            </details>
          )}
          <details class="more">
            <summary>Every size: finished girths, and whether all is true</summary>
            <p class="quiet">
              Finished girths, and the worst mismatch of a seam; lengths in{' '}
              {grade.units === 'in' ? 'inches' : 'mm'}. {grade.source && `The chart: ${grade.source}`}
            </p>
            <WordedTable title="Every size" table={grade.girths} />
          </details>
          {grade.even.rows.length > 0 && (
            <details class="more">
              <summary>Even steps: how many were looked at, and how many are uneven</summary>
              <p class="quiet">
                A step is uneven where it changes by more than the chart’s own does; why, is said under the
                nest.
              </p>
              <WordedTable title="Even steps" table={grade.even} />
            </details>
          )}
          <p>
            <button
              type="button"
              disabled={own.writing}
              onClick={() => {
                act({ does: 'write' });
                ask({ kind: 'sizes', number, does: 'take', line: looked.line });
              }}
            >
              Take nests and rule tables as one ZIP
            </button>{' '}
            {own.writing ? 'Writing …' : ''}
          </p>
          <Nearest
            own={own}
            unmeasured={isUntouched(state)}
            seek={() => {
              act({ does: 'seek' });
              if (chart) ask({ kind: 'sizes', number, does: 'nearest', asked, chart });
            }}
          />
        </>
      )}
    </>
  );
}

const verdict = (
  {
    garment,
    girths,
    chart,
    ok,
  }: { garment: string; girths: { rows: readonly unknown[] }; chart: string; ok: boolean },
  uneven: number,
): string =>
  `The ${garment} in ${girths.rows.length} sizes of ${chart}: ${ok ? 'all true' : 'not all true'}, ${
    uneven === 0 ? 'every step even' : `steps uneven in ${uneven} ${uneven === 1 ? 'place' : 'places'}`
  }.`;
