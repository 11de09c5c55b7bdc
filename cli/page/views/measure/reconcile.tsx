import { capital, measurementWords } from '../../../../drafts/index.ts';
import type { MovedMeasurement } from '../../requests/reconciled.ts';
import type { ViewProps } from '../view.ts';

/** The way out where measurements contradict each other: what was likely meant, to be taken over, or drafted for as it is. */
export function Reconcile({ state: { form, answer }, send }: ViewProps) {
  const offered = answer?.issues.some(({ code }) => code === 'reconcile-offered') ?? false;
  const moved = answer?.reconciled ?? [];
  if (!offered && !form.reconcile) return null;
  const take = (some: readonly MovedMeasurement[]): void =>
    send({
      does: 'take sizes',
      sizes: Object.fromEntries(some.map(({ name, taken }) => [name, taken])),
    });
  return (
    <section class="reconcile" aria-label="Measurements that contradict each other">
      {moved.length > 0 && (
        <>
          <h2>These contradict others</h2>
          <p>
            This is what the most likely body behind all of them has instead. Measure again what you can, and
            first what looks misread.
          </p>
          <ul class="likelier">
            {moved.map((each) => (
              <li key={each.name}>
                <p>
                  <strong>{capital(measurementWords(each.name))}:</strong> {each.written} written,{' '}
                  {each.taken} more likely; {each.moved}, which is {each.errors} times what a tape is usually
                  off there. {suspected(each)}
                </p>
                <button type="button" onClick={() => take([each])}>
                  Take {each.taken}
                  <span class="unseen"> for the {measurementWords(each.name)}</span>
                </button>
              </li>
            ))}
          </ul>
          {moved.length > 1 && (
            <p>
              <button type="button" onClick={() => take(moved)}>
                Take all {moved.length} over
              </button>
            </p>
          )}
        </>
      )}
      <label class="tick">
        <input
          type="checkbox"
          checked={form.reconcile}
          onChange={({ currentTarget }) => send({ does: 'say', about: { reconcile: currentTarget.checked } })}
        />{' '}
        They cannot be taken again: leave them as they are written, and draft for the most likely body behind
        them.
      </label>
    </section>
  );
}

function suspected({ suspicion, orElse }: MovedMeasurement): string {
  const others = orElse.map(measurementWords).join(' or the ');
  const or = orElse.length > 0 ? `, or else the ${others}` : '';
  return {
    misread: `It looks misread${or}.`,
    'first to blame': `If one of them was misread it is most likely this${or}.`,
    'one of two': `If one of them was misread it is either this or the ${others}: measure these two again.`,
    none: '',
  }[suspicion];
}
