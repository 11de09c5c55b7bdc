import { useEffect, useRef, useState } from 'preact/hooks';
import type { ViewProps } from '../view.ts';
import type { SewnEdge } from './walk.ts';

/** A seam is rolled at so many mm a second, but none takes longer than so many seconds, nor less. */
const [pace, longest, shortest] = [160, 8, 2];

/** The seam of the edge that is touched: both lengths, and its partner walked along it. */
export function WalkBar({
  state,
  send,
  sewn,
  others,
}: ViewProps & {
  readonly sewn: SewnEdge;
  /** How many seams the edge is in. */
  readonly others: readonly SewnEdge[];
}) {
  const { walked, touched } = state.own.pieces;
  const [rolls, roll] = useState(false);
  const walk = (to: number | undefined): void =>
    send({ does: 'within', view: 'pieces', what: { does: 'walk', walked: to } });
  useRoll(rolls, sewn.length, walked ?? 0, (to) => {
    walk(to);
    if (to >= 1) roll(false);
  });
  if (!touched) return null;
  const { own, other, seam } = sewn;
  const names = (side: SewnEdge['own']): string =>
    [...new Set(side.edges.map(({ piece, edge }) => `${piece}, ${edge}`))].join(' with ');
  return (
    <section class="walk" aria-label="The seam">
      <h2>{seam.name}</h2>
      {others.length > 1 && (
        <p>
          <label>
            It is sewn in{' '}
            <select
              value={touched.seam}
              onChange={({ currentTarget }) =>
                send({
                  does: 'within',
                  view: 'pieces',
                  what: { does: 'touch', touched: { ...touched, seam: Number(currentTarget.value) } },
                })
              }
            >
              {others.map((each, i) => (
                <option key={each.seam.name} value={i}>
                  {each.seam.name}
                </option>
              ))}
            </select>
          </label>
        </p>
      )}
      <dl>
        <dt>{names(own)}</dt>
        <dd>{own.length}</dd>
        <dt class="partner">{names(other)}</dt>
        <dd>{other.length}</dd>
        <dt>Sewn</dt>
        <dd>{seam.says}</dd>
      </dl>
      <p class="row">
        {walked === undefined ? (
          <button type="button" onClick={() => walk(0)}>
            Walk it
          </button>
        ) : (
          <>
            <label class="walking">
              Walked
              <input
                type="range"
                min={0}
                max={100}
                step={1}
                value={walked * 100}
                aria-valuetext={`${Math.round(walked * 100)} % of ${own.length}`}
                onInput={({ currentTarget }) => {
                  roll(false);
                  walk(currentTarget.valueAsNumber / 100);
                }}
              />
            </label>
            <button
              type="button"
              onClick={() => {
                if (!rolls && walked >= 1) walk(0);
                roll(!rolls);
              }}
            >
              {rolls ? 'Stop' : 'Roll'}
            </button>
            <button
              type="button"
              onClick={() => {
                roll(false);
                walk(undefined);
              }}
            >
              Lay aside
            </button>
          </>
        )}
      </p>
    </section>
  );
}

/** Rolls on, frame by frame; for whoever wants little motion, in ten steps. */
function useRoll(rolls: boolean, length: number, walked: number, on: (to: number) => void): void {
  const last = useRef<number | undefined>(undefined);
  useEffect(() => {
    if (!rolls) last.current = undefined;
    if (!rolls) return;
    const seconds = Math.min(longest, Math.max(shortest, length / pace));
    if (matchMedia('(prefers-reduced-motion: reduce)').matches) {
      const step = setTimeout(() => on(Math.min(1, walked + 0.1)), seconds * 100);
      return () => clearTimeout(step);
    }
    const frame = requestAnimationFrame((now) => {
      const since = last.current === undefined ? 0 : now - last.current;
      last.current = now;
      on(Math.min(1, walked + Math.max(1, since) / (1000 * seconds)));
    });
    return () => cancelAnimationFrame(frame);
  }, [rolls, walked, length]);
}
