import type { GradedSizes, SizesAction } from './own.ts';

const shipped = [
  ['workshop-stock.yaml', 'stock of the workshop, in cups (invented)'],
  ['en-13402-3-women.yaml', 'EN 13402-3, women'],
  ['astm-d5585-misses-straight.csv', 'ASTM D5585, misses, straight'],
  ['astm-d5585-misses-curvy.csv', 'ASTM D5585, misses, curvy'],
] as const;

/** No chart is larger (bytes); a larger one is not even read. */
const largest = 400_000;

interface ChartChoiceProps {
  readonly own: GradedSizes;
  readonly act: (what: SizesAction) => void;
  readonly note: (notice: string) => void;
}

/** By which size chart: one that is shipped, or a file of hers. */
export function ChartChoice({ own: { chart, issues }, act, note }: ChartChoiceProps) {
  const units = chart?.units ?? '';
  const asksUnit = units !== '' || issues.some(({ message }) => /unit/i.test(message));
  const own = chart && !shipped.some(([file]) => file === chart.file) ? chart.file : undefined;
  const take = (file: string, text: string): void => act({ does: 'chart', chart: { file, text, units: '' } });
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
              take(value, await found.text());
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
          or a file of yours (YAML, JSON, CSV){' '}
          <input
            type="file"
            accept=".yaml,.yml,.json,.csv,.tsv"
            onChange={async ({ currentTarget }) => {
              const [file] = currentTarget.files ?? [];
              currentTarget.value = '';
              if (!file) return;
              if (file.size > largest) return note(`${file.name} is too large for a size chart.`);
              try {
                take(file.name, await file.text());
              } catch {
                note(`${file.name} cannot be read.`);
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
