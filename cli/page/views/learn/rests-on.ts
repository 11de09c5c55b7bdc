/** What a step rests on, in a sentence, from what it names as its source. */
export function restsOn(source: string): string {
  const plain = ofItself.get(source);
  if (plain !== undefined) return plain;
  const parts = source.split('; ').map((part) => {
    const [, ids, words] = /^((?:[A-Z]\d+, )+)(.*)$/.exec(part) ?? [];
    if (ids === undefined) return `this: ${part}`;
    const rules = ids.split(', ').filter(Boolean);
    return `rule${rules.length > 1 ? 's' : ''} ${rules.join(', ').replace(/, (?=[^,]*$)/, ' and ')}: ${words}`;
  });
  return `It rests on ${parts.join('; ')}.`;
}

/** Sources that are no rule and no publication. */
const ofItself: ReadonlyMap<string, string> = new Map([
  ['measurement', 'It comes from her measurements.'],
  ['styling', 'It comes from what was chosen.'],
  ['measurement and styling', 'It comes from her measurements and from what was chosen.'],
  ['construction', 'It follows from what is drawn already.'],
  ['common practice, no source', 'It is common practice; no source is known.'],
]);
