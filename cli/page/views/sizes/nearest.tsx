import { AllSaid } from '../said.tsx';
import { WordedTable } from '../worded-table.tsx';
import type { GradedSizes } from './own.ts';

interface NearestProps {
  readonly own: GradedSizes;
  readonly unmeasured: boolean;
  readonly seek: () => void;
}

/** Which size is nearest to her, what it is off, and what brings it home. */
export const Nearest = ({ own: { near, nearIssues }, unmeasured, seek }: NearestProps) => (
  <section aria-label="Nearest to her">
    <h2>Nearest to her</h2>
    <p>
      <button type="button" disabled={unmeasured || near === 'sought'} onClick={seek}>
        Which size is nearest?
      </button>{' '}
      {unmeasured && 'Her measurements are needed for it.'}
      {near === 'sought' && 'Comparing …'}
    </p>
    <AllSaid issues={nearIssues} />
    {near && near !== 'sought' && (
      <>
        <p class="lead">{near.words}.</p>
        <p class="quiet">Lengths in {near.units === 'in' ? 'inches' : 'mm'}.</p>
        <WordedTable title="What the size is off" table={near.off} />
        <p class="quiet">Compared is what was measured of her and shapes the garment.</p>
        <WordedTable title="Finished girths, as it is and altered" table={near.home} />
        {near.changes.length === 0 ? (
          <p>Nothing to alter.</p>
        ) : (
          <>
            <p>Alterations that bring it home, as a fitting says them:</p>
            <ul>
              {near.changes.map((change) => (
                <li key={change}>{change}</li>
              ))}
            </ul>
          </>
        )}
        {near.left.length > 0 && (
          <p>
            No alteration of a fitting brings these home; draft from her own measurements instead where they
            matter: {near.left.join(', ')}.
          </p>
        )}
      </>
    )}
  </section>
);
