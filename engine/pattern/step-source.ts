import type { Ground } from './quantity.ts';

/**
 * On whose word a step stands: that of its rules, and of the source it names itself; else what it was found from: a
 * measurement, a choice of style, a fitting, or the drawing so far.
 */
export function stepSource(from: readonly Ground[], cited: string | undefined): string {
  const has = (kind: Ground['origin']['kind']): boolean => from.some(({ origin }) => origin.kind === kind);
  const named = [...(has('fitting') ? ['fitting'] : []), ...rulesIn(from), ...(cited ? [cited] : [])];
  if (named.length > 0) return named.join('; ');
  const kinds = [...(has('measurement') ? ['measurement'] : []), ...(has('choice') ? ['styling'] : [])];
  return kinds.length > 0 ? kinds.join(' and ') : 'construction';
}

/** "B1, from memory", or "B2, B3, common practice, no source" where several rest on one. */
function rulesIn(from: readonly Ground[]): readonly string[] {
  const bySource = new Map<string, string[]>();
  for (const { origin } of from) {
    if (origin.kind !== 'rule') continue;
    const ids = bySource.get(origin.source);
    if (ids) ids.push(origin.id);
    else bySource.set(origin.source, [origin.id]);
  }
  return [...bySource].map(([source, ids]) => [...ids, source].join(', '));
}
