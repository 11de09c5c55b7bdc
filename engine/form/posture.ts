import type { Issue, Result } from '../issue.ts';
import { nearestWord } from '../text/nearest-word.ts';
import { writtenLength } from '../text/written-length.ts';
import { type FormChoice, formChoiceNames, formChoices, type Posture } from './choices.ts';

/** Reads what was chosen of a posture: lengths in mm or with their unit behind them, degrees and shares as plain numbers. */
export function readPosture(data: Readonly<Record<string, unknown>>): Result<Posture> {
  const issues: Issue[] = [];
  const posture: Record<string, number> = {};
  for (const [name, written] of Object.entries(data)) {
    const known = formChoiceNames.find((each) => each === name);
    if (!known) {
      const near = nearestWord(name, formChoiceNames);
      const hint = near ? `Did you mean “${near}”?` : `Known are: ${formChoiceNames.join(', ')}.`;
      issues.push(
        refusal('unknown-posture', name, `A form has no choice called “${name.slice(0, 40)}”. ${hint}`),
      );
      continue;
    }
    const { least, most, unit }: FormChoice = formChoices[known];
    const value = chosenValue(written, unit);
    if (value >= least && value <= most) posture[known] = value;
    else
      issues.push({
        ...refusal(
          'posture-out-of-range',
          known,
          `${known} lies from ${least} to ${most}${unit === 'share' ? '' : ` ${unit}`}.`,
        ),
        limits: { min: least, max: most, unit: unit === 'share' ? 'ratio' : unit },
      });
  }
  return issues.length > 0 ? { ok: false, issues } : { ok: true, value: posture, issues: [] };
}

function chosenValue(written: unknown, unit: FormChoice['unit']): number {
  const found = writtenLength(String(written));
  return found === undefined || (found.withUnit && unit !== 'mm') ? Number.NaN : found.value;
}

const refusal = (code: 'unknown-posture' | 'posture-out-of-range', path: string, message: string): Issue => ({
  code,
  severity: 'error',
  path,
  message,
});
