import type { Grade, Uneven } from '../../../drafts/index.ts';

/** So many uneven steps are told in words; the rule table has all. */
const most = 6;

const quantities: Readonly<Record<Uneven['quantity'], string>> = {
  length: 'length',
  dx: 'across',
  dy: 'down',
};

/** Which steps of a piece are uneven, and which of its sizes are not true, in words. */
export function nestFaults(
  uneven: readonly Uneven[],
  { sizes }: Grade,
  piece: string,
  shown: readonly string[],
): string {
  const places = new Map<string, string[]>();
  for (const { what, quantity, name } of uneven.filter((one) => one.piece === piece)) {
    const called = `${what}, ${quantities[quantity]}`;
    places.set(called, [...(places.get(called) ?? []), name]);
  }
  const steps = [...places].map(([called, names]) => `${called} at ${names.join(' and ')}`);
  const rest = steps.length > most ? `; and ${steps.length - most} more` : '';
  const untrue = sizes
    .filter(({ of, made }) => shown.includes(of.name) && !made.report.ok)
    .map(({ of }) => of.name);
  return [
    steps.length === 0 ? 'Every step is even.' : `Uneven steps: ${steps.slice(0, most).join('; ')}${rest}.`,
    ...(untrue.length > 0 ? [`Not true: ${untrue.join(', ')}.`] : []),
  ].join(' ');
}
