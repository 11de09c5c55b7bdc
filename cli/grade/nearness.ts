import { readBody } from '../../engine/body/read.ts';
import { bringHome } from '../../engine/grading/bring-home.ts';
import type { Chart } from '../../engine/grading/chart.ts';
import { nearestSizes } from '../../engine/grading/nearest.ts';
import type { Issue } from '../../engine/issue.ts';
import type { Draft } from '../../engine/pattern/draft.ts';
import type { Unit } from '../../engine/text/units.ts';
import { unusable } from '../input/unusable.ts';
import { used } from '../input/used.ts';
import type { Nearness } from './nearest-rows.ts';

/** So many sizes are named beside the nearest. */
const NEXT = 3;

/** Which size of a chart is nearest to a body as its file has it, and what brings it home. Throws `Unusable` where none is. */
export function nearnessOf(
  draft: Draft,
  chart: Chart,
  data: unknown,
  styling: object,
  units: Unit,
): { readonly found: Nearness; readonly issues: readonly Issue[] } {
  const body = readBody(data);
  const her = used(body, units);
  const [near, ...others] = used(nearestSizes(chart, her, draft.shapedBy));
  if (!near) throw unusable('chart-without-sizes', '--sizes', 'There are no sizes in this chart.');
  const brought = bringHome(draft, near, data, styling);
  return {
    found: { her, chart, near, next: others.slice(0, NEXT), home: used(brought, units) },
    issues: [...body.issues, ...brought.issues],
  };
}
