import {
  type Body,
  fixed,
  type Issue,
  lengthCell,
  type MeasurementName,
  measurementNames,
  readBody,
  type Unit,
  unitNames,
} from '../../../drafts/index.ts';
import type { BodyFields } from '../body-form.ts';
import type { DraftAnswer, DraftRequest, KnownSize } from '../messages.ts';
import { draftingOf } from '../own-draft/drafting-of.ts';
import { restOfLast } from './last-made.ts';
import { readerUnits } from './reader-units.ts';
import { reconciledOf } from './reconciled.ts';
import { toldIssues } from './told-issues.ts';

/**
 * What is known of her, and the garment that was asked for. What drafts and checks is loaded when there is somebody to draft
 * for: it is a sixth of all that a first visit would load.
 */
export async function drafted(asked: DraftRequest): Promise<DraftAnswer> {
  const { number, body, parts } = asked;
  const own = unitNames.find((unit) => unit === body.units) ?? 'mm';
  const units = readerUnits(body);
  const read = readBody(body);
  if (!read.ok)
    return { kind: 'drafted', number, issues: toldIssues(read.issues, units), ofLast: restOfLast(parts) };
  // Begun with at once: code that draws is told apart by the order in which it is asked for.
  const drafting = draftingOf(asked);
  drafting.catch(() => {}); // It is heard of below.
  const { evaluated } = await import('./evaluated.ts');
  const { issues, made } = await evaluated(asked, drafting);
  return {
    kind: 'drafted',
    number,
    sizes: sizesOf(read.value, own),
    issues: toldIssues(issues, units),
    ...contradicted(issues, body, own),
    ...(made ? { made } : { ofLast: restOfLast(parts) }),
  };
}

/** What is more likely than what contradicts, where anything does; it is looked for in no other case, for that takes time. */
function contradicted(
  issues: readonly Issue[],
  body: BodyFields,
  units: Unit,
): Pick<DraftAnswer, 'reconciled'> {
  const anything = body.reconcile === true || issues.some(({ code }) => code === 'reconcile-offered');
  return anything ? { reconciled: reconciledOf(body, units) } : {};
}

/** Every measurement as a tape shows it in her own unit. */
const sizesOf = (body: Body, units: Unit): Readonly<Record<MeasurementName, KnownSize>> =>
  Object.fromEntries(measurementNames.map((name) => [name, knownSize(name, body, units)])) as Readonly<
    Record<MeasurementName, KnownSize>
  >;

/** Parts of an inch in which an estimate is said: it is never known more finely. */
const parts = 8;

function knownSize(name: MeasurementName, { size, known }: Body, units: Unit): KnownSize {
  const text = (value: number): string =>
    name === 'shoulderSlope' ? fixed((value * 180) / Math.PI, 1) : lengthCell(value, units, 0, parts);
  const from = known[name];
  return {
    text: text(size[name]),
    from: from.from,
    ...(from.from === 'estimated' ? { spread: text(from.spread) } : {}),
  };
}
