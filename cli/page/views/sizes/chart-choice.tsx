import { messageOf } from '../../../../drafts/index.ts';
import { chosen, filesTaken, textsOf } from './chart-files.ts';
import type { GradedSizes, SizesAction } from './own.ts';

const shipped = [
  ['workshop-stock.yaml', 'stock of the workshop, in cups (invented)'],
  ['en-13402-3-women.yaml', 'EN 13402-3, women'],
  ['astm-d5585-misses-straight.csv', 'ASTM D5585, misses, straight'],
  ['astm-d5585-misses-curvy.csv', 'ASTM D5585, misses, curvy'],
] as const;

interface ChartChoiceProps {
  readonly own: GradedSizes;
  readonly act: (what: SizesAction) => void;
  readonly note: (notice: string) => void;
}

/** By which size chart: one that is shipped, or a file of hers. */
export function ChartChoice({ own: { chart, issues, needs }, act, note }: ChartChoiceProps) {
  const units = chart?.units ?? '';
  const asksUnit = units !== '' || issues.some(({ message }) => /unit/i.test(message));
  const own = chart && !shipped.some(([file]) => file === chart.file) ? chart.file : undefined;
  return (
    <section aria-label="The chart">
      <p class="finder">
        <label for="chart">Size chart</label>
        <select
          id="chart"
          value={chart?.file ?? ''}
          onChange={async ({ currentTarget: { value } }) => {
            try {
              const found = await fetch(`charts/${value}`);
              if (!found.ok) throw new Error(found.statusText);
              act(chosen({ file: value, text: await found.text() }));
            } catch {
              note(`${value} could not be loaded.`);
            }
          }}
        >
          {!chart && <option value="">choose one</option>}
          {own !== undefined && <option value={own}>{own}</option>}
          {shipped.map(([file, title]) => (
            <option key={file} value={file}>
              {title}
            </option>
          ))}
        </select>
        <label>
          or a file of yours (YAML, JSON, CSV), with the body files that it names{' '}
          <input
            type="file"
            multiple
            accept=".yaml,.yml,.json,.csv,.tsv"
            onChange={async ({ currentTarget }) => {
              const files = [...(currentTarget.files ?? [])];
              currentTarget.value = '';
              try {
                const what = filesTaken(await textsOf(files), needs);
                if (what) act(what);
              } catch (error) {
                note(messageOf(error));
              }
            }}
          />
        </label>
      </p>
      {asksUnit && (
        <p class="finder">
          <label for="chart-units">The chart’s unit, where it says none</label>
          <select
            id="chart-units"
            value={units}
            onChange={({ currentTarget }) => act({ does: 'units', units: currentTarget.value })}
          >
            <option value="">not said</option>
            {['cm', 'in', 'mm'].map((unit) => (
              <option key={unit} value={unit}>
                {unit}
              </option>
            ))}
          </select>
        </p>
      )}
    </section>
  );
}
