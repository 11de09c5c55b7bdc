import { fixed } from '../../../drafts/index.ts';
import type { SceneReading, WornScene } from './scene.ts';

interface ReadingProps {
  readonly reading: SceneReading | 'nothing' | undefined;
  readonly reader: WornScene['reader'];
}

/** What was read of a place, told aloud too. */
export function Reading({ reading, reader: { perMm, unit, digits } }: ReadingProps) {
  const length = (mm: number): string => `${fixed(Math.abs(mm) * perMm, digits)} ${unit}`;
  return (
    <div class="worn-reading" aria-live="polite">
      {reading === undefined ? (
        <p class="quiet">No place is read yet.</p>
      ) : reading === 'nothing' ? (
        <p>There is no cloth there.</p>
      ) : (
        <>
          <p>
            {`${reading.piece}, ${length(reading.above)} ${reading.above < 0 ? 'below' : 'above'} the waist, ${length(reading.aside)} to the ${reading.aside < 0 ? 'right' : 'left'} of her middle`}
          </p>
          <dl>
            {reading.figures.map((figure) => (
              <div>
                <dt>{figure.title}</dt>
                <dd>{`${fixed(figure.value, figure.digits)} ${figure.unit}`}</dd>
              </div>
            ))}
          </dl>
        </>
      )}
    </div>
  );
}
