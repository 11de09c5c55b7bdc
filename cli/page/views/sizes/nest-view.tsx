import type { GradeShown, NestAsked } from '../../requests/sizes-messages.ts';
import { SvgPicture } from '../svg-picture.tsx';
import { WordedTable } from '../worded-table.tsx';
import type { GradedSizes, SizesAction } from './own.ts';

interface NestViewProps {
  readonly own: GradedSizes;
  readonly grade: GradeShown;
  readonly act: (what: SizesAction) => void;
}

/** One piece in many sizes, laid on each other; the one that the sliders stand at in a heavy line. */
export function NestView({ own: { looked, nest }, grade, act }: NestViewProps) {
  const look = (at: Partial<NestAsked>): void => act({ does: 'look', at });
  const inCups = grade.cups.length > 1;
  return (
    <section aria-label="The nest of one piece" class="nest-view">
      <h2>One piece in all sizes</h2>
      <div class="nest-tools">
        <p class="finder">
          <span class="pair">
            <label for="nest-piece">Piece</label>
            <select
              id="nest-piece"
              value={looked.piece}
              onChange={({ currentTarget }) => look({ piece: currentTarget.value })}
            >
              {grade.pieces.map((name) => (
                <option key={name} value={name}>
                  {name}
                </option>
              ))}
            </select>
          </span>
          <span class="pair">
            <label for="nest-line">Line</label>
            <select
              id="nest-line"
              value={looked.line}
              onChange={({ currentTarget }) =>
                look({ line: currentTarget.value === 'cutting' ? 'cutting' : 'stitching' })
              }
            >
              <option value="stitching">sewn on</option>
              <option value="cutting">cut on</option>
            </select>
          </span>
        </p>
        <Along label="Size" names={grade.sizes} at={looked.size} move={(size) => look({ size })} />
        {inCups && <Along label="Cup" names={grade.cups} at={looked.cup} move={(cup) => look({ cup })} />}
        {inCups && (
          <fieldset class="field words">
            <legend>Laid on each other</legend>
            {(
              [
                ['sizes', 'all sizes of this cup'],
                ['cups', 'all cups of this size'],
              ] as const
            ).map(([along, title]) => (
              <label key={along}>
                <input
                  type="radio"
                  name="along"
                  checked={looked.along === along}
                  onChange={() => look({ along })}
                />{' '}
                {title}
              </label>
            ))}
          </fieldset>
        )}
      </div>
      {nest && <SvgPicture svg={nest.svg} called="Nest" words={nest.words} />}
      {nest && nest.rules.rows.length > 0 && (
        <details>
          <summary>
            Rule table of the {nest.asked.piece}: what each {nest.asked.along === 'sizes' ? 'size' : 'cup'}{' '}
            adds to the one before
          </summary>
          <WordedTable
            title={`Rule table of the ${nest.asked.piece}`}
            table={nest.rules}
            odd={new Set(nest.uneven)}
            oddWord="uneven"
          />
        </details>
      )}
    </section>
  );
}

interface AlongProps {
  readonly label: string;
  readonly names: readonly string[];
  readonly at: string;
  readonly move: (name: string) => void;
}

/** A slider whose places have names. */
const Along = ({ label, names, at, move }: AlongProps) => (
  <div class="field">
    <label for={`nest-${label}`}>
      {label} {at}
    </label>
    <span class="slide">
      <span aria-hidden="true">{names[0]}</span>
      <input
        id={`nest-${label}`}
        type="range"
        min={0}
        max={names.length - 1}
        step={1}
        value={Math.max(0, names.indexOf(at))}
        aria-valuetext={at}
        onInput={({ currentTarget }) => move(names[currentTarget.valueAsNumber] ?? at)}
      />
      <span aria-hidden="true">{names.at(-1)}</span>
    </span>
  </div>
);
