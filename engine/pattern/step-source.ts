import type { Ground } from './quantity.ts';

/**
 * On whose word a step stands: that of its rules, and of the source it names itself; else what it was found from: a
 * measurement, a choice of style, a fitting, or the drawing so far.
 */
export function stepSource(from: readonly Ground[], cited: string | undefined): string {
  const found = { measurement: false, choice: false, fitting: false, rule: false, step: false };
  for (const { origin } of from) found[origin.kind] = true;
  let named = found.fitting ? 'fitting' : '';
  if (found.rule) named = also(named, rulesIn(from));
  if (cited) named = also(named, cited);
  if (named) return named;
  if (found.measurement) return found.choice ? 'measurement and styling' : 'measurement';
  return found.choice ? 'styling' : 'construction';
}

/** "B1, from memory", or "B2, B3, common practice, no source" where rules that stand together rest on one. */
function rulesIn(from: readonly Ground[]): string {
  let text = '';
  let ids = '';
  let before = '';
  for (const { origin } of from) {
    if (origin.kind !== 'rule') continue;
    if (ids && origin.source !== before) {
      text = also(text, `${ids}, ${before}`);
      ids = '';
    }
    ids = ids ? `${ids}, ${origin.id}` : origin.id;
    before = origin.source;
  }
  return also(text, `${ids}, ${before}`);
}

const also = (text: string, more: string): string => (text ? `${text}; ${more}` : more);
