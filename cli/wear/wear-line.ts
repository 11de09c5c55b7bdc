import type { WovenCloth } from '../../engine/cloth/cloth.ts';
import { toTheEnd } from '../../engine/cloth/equilibrium.ts';
import type { Evaluation } from '../../engine/evaluate.ts';
import type { Issue } from '../../engine/issue.ts';
import type { Draft } from '../../engine/pattern/draft.ts';
import { rounded } from '../../engine/text/figure.ts';
import { findingsOf } from '../../engine/wear/findings.ts';
import { judged } from '../../engine/wear/judged.ts';
import { notWorn } from '../../engine/wear/panel-levels.ts';
import { fittedFurther, proposed } from '../../engine/wear/proposed.ts';
import { raising } from '../../engine/wear/raised.ts';
import { formRaised, standFor } from '../../engine/wear/stand-for.ts';
import { worn } from '../../engine/wear/worn.ts';
import type { FileLine } from '../input/lines.ts';
import { codeOf, drafted, faultOnBody, readLine, type WalkedLine } from '../many-bodies/walk-line.ts';
import { issuesResult } from '../output/walk-result.ts';
import type { WornLineResult } from '../results/wear.ts';
import { foundResult } from './worn-result.ts';

/** How each body of a file wears a garment. */
export interface LineWorn {
  readonly styling: unknown;
  readonly cloth: WovenCloth;
  /** Size of triangles, mm. */
  readonly spacing: number;
}

/** Drafts a garment for the body of one line and puts it on; a line that cannot be read is answered with its issues. */
export function wearLine(draft: Draft, how: LineWorn, line: FileLine, clock: () => number): WalkedLine {
  const start = clock();
  const { id, body, issue } = readLine(line.number, line.text);
  const made = issue ? { ok: false as const, issues: [issue] } : drafted(draft, body, how.styling);
  const found = made.ok ? wornOn(made.value, how) : undefined;
  const issues = [...(made.ok ? made.value.report.issues : made.issues), ...(found?.issues ?? [])];
  const report = made.ok ? made.value.report : undefined;
  const result: WornLineResult = {
    id,
    ok: report?.ok ?? false,
    ...found?.result,
    issues: issuesResult(issues),
    milliseconds: rounded(clock() - start, 0),
  };
  return { text: `${JSON.stringify(result)}\n`, code: codeOf(report, issues) };
}

/** A fault of the program on one body must not take the results of all others with it. */
function wornOn({ garment, body }: Evaluation, { cloth, spacing }: LineWorn) {
  try {
    const [unworn] = notWorn(garment);
    if (unworn !== undefined) return { issues: [notYet(unworn)] };
    const { stand } = standFor(garment, body);
    const hung = worn(garment, cloth, stand, spacing);
    const raised = toTheEnd(raising(garment, hung, stand, (rise) => formRaised(body, rise)));
    const findings = { ...findingsOf(garment, hung, stand), arms: raised?.found };
    const verdicts = judged(garment, findings, body, undefined);
    const fitting = fittedFurther(body.fitting, proposed(verdicts));
    return { issues: [], result: foundResult(hung, findings, verdicts, fitting) };
  } catch (error) {
    return { issues: [faultOnBody(error)] };
  }
}

/** Told of what cannot be put on. */
export const notYet = (what: string): Issue => ({
  code: 'not-worn-yet',
  severity: 'error',
  path: what,
  message: `It is not known yet how this is put on: ${what}. It crosses no bust, waist or hip level whose finished girth the garment states.`,
});
