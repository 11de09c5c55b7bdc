import { fixed } from '../../engine/text/figure.ts';
import { lengthIn } from '../../engine/text/length.ts';
import type { Unit } from '../../engine/text/units.ts';
import type { Judged } from '../../engine/wear/judged.ts';

/** A finding in a sentence: what is, what should be, and how sure that is. */
export function findingWords({ finding, unit, worn, should, within, restsOn }: Judged, units: Unit): string {
  const figure = (value: number): string =>
    unit === 'mm'
      ? lengthIn(units === 'in' ? value : Math.round(value), units)
      : `${fixed(value, 1)} ${unit}`;
  const rests = restsOn === 'measurements' ? '' : `, and rests on an ${restsOn}`;
  return `${finding}: ${figure(worn)}, where ${figure(should)} would sit well; sure to ± ${figure(within)}${rests}`;
}

/** A worn garment in words, for who cannot see it: what it is, and what a fitter would find. */
export function wornWords(title: string, verdicts: readonly Judged[], units: Unit): string {
  const told = (of: Judged['verdict'], called: string): readonly string[] => {
    const found = verdicts.filter(({ verdict }) => verdict === of);
    return found.length === 0
      ? []
      : [`${called}: ${found.map((each) => findingWords(each, units)).join('. ')}.`];
  };
  const findings = [...told('off', 'Off'), ...told('perhaps', 'Perhaps')];
  return [`${title}.`, ...(findings.length > 0 ? findings : ['Nothing is outside its band.'])].join(' ');
}
