import { fileNamed } from '../../file-named.ts';
import type { ChartFile, NamedText } from '../../requests/sizes-messages.ts';
import type { SizesAction } from './own.ts';

/** No chart or body file is larger (bytes); a larger one is not even read. */
const largest = 400_000;

/** Files as texts. Throws a sentence about the first that cannot be taken. */
export async function textsOf(files: readonly File[]): Promise<readonly NamedText[]> {
  const texts: NamedText[] = [];
  for (const file of files) {
    if (file.size > largest)
      throw new Error(`${file.name} is too large for a size chart or for measurements.`);
    const text = await file.text().catch(() => undefined);
    if (text === undefined) throw new Error(`${file.name} cannot be read.`);
    texts.push({ file: file.name, text });
  }
  return texts;
}

/** A chart says its sizes, or is a table; any other file is taken for measurements that it names. */
const isChart = ({ file, text }: NamedText): boolean =>
  /\.[ct]sv$/i.test(file) || /^\s*\{?\s*"?(?:sizes|steps)"?\s*:/m.test(text);

/** What is done with files: a chart with the bodies beside it, or bodies for the chart that is there. */
export function filesTaken(files: readonly NamedText[], needs: readonly string[]): SizesAction | undefined {
  const bodies = files.filter((each) => needs.includes(fileNamed(each.file)) || !isChart(each));
  const chart = files.find((each) => !bodies.includes(each));
  if (chart) return chosen(chart, bodies);
  // One file by itself is looked at as a chart, and refused in words where it is none.
  const [only] = files;
  if (only && files.length === 1 && !needs.includes(only.file)) return chosen(only, []);
  return bodies.length > 0 ? { does: 'bodies', bodies } : undefined;
}

/** A chart that was chosen, with the body files that came with it. */
export const chosen = (chart: NamedText, bodies: ChartFile['bodies'] = []): SizesAction => ({
  does: 'chart',
  chart: { ...chart, units: '', bodies },
});
