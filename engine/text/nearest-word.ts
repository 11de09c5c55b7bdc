/**
 * The known word most like a mistyped one, or nothing when none is near: at most a third of its letters wrong,
 * counted as insertions, deletions and replacements (V. I. Levenshtein, 1966), capitals and gaps apart.
 */
export function nearestWord(typed: string, known: readonly string[]): string | undefined {
  const bare = (word: string): string => word.toLowerCase().replace(/[\s_-]/g, '');
  const wanted = bare(typed.slice(0, 64));
  let best: string | undefined;
  let least = Infinity;
  for (const word of known) {
    const wrong = lettersWrong(wanted, bare(word));
    if (wrong < least && wrong <= Math.max(1, Math.floor(bare(word).length / 3))) {
      best = word;
      least = wrong;
    }
  }
  return best;
}

/** A part of a word as short as this says nothing by itself. */
const shortest = 3;

/** The last part of a name, such as girth or length, says of what kind a thing is, and so less than the others. */
const kindCounts = 0.3;

/** Names as their parts: `upperArmGirth` is upper, arm, girth. */
const partsOf = (word: string): readonly string[] =>
  word
    .slice(0, 64)
    .replace(/([a-z])(?=[A-Z])/g, '$1 ')
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((part) => part.length >= shortest);

/**
 * The known words that a typed one may stand for, the likeliest first, no more than `most`: those that have most parts
 * of a name in common with it (`wrist` and `wristGirth`, `armGirth` and `upperArmGirth`), or the one that was mistyped.
 */
export function nearestWords(typed: string, known: readonly string[], most: number): readonly string[] {
  const wanted = partsOf(typed);
  const ranked = known.map((word) => ({ word, ...commonParts(wanted, partsOf(word)) }));
  const greatest = Math.max(0, ...ranked.map(({ letters }) => letters));
  const alike = ranked
    .filter(({ letters }) => letters > 0 && letters === greatest)
    .toSorted((a, b) => a.strange - b.strange)
    .map(({ word }) => word);
  const mistyped = nearestWord(typed, known);
  return [...new Set([...alike, ...(mistyped === undefined ? [] : [mistyped])])].slice(0, most);
}

/** How many letters two names have in common, part by part, and how many parts of either the other has not. */
function commonParts(
  wanted: readonly string[],
  own: readonly string[],
): { readonly letters: number; readonly strange: number } {
  const together = own.join('');
  const matches = wanted.flatMap((part, i) => {
    const isKind = i > 0 && i === wanted.length - 1;
    const likeness = Math.max(
      together.includes(part) ? part.length : 0,
      ...own.map((other) => Math.min(part.length, other.length) - 2 * lettersWrong(part, other)),
    );
    return likeness > 0 ? [likeness * (isKind ? kindCounts : 1)] : [];
  });
  return {
    letters: matches.reduce((sum, letters) => sum + letters, 0),
    strange: own.length + wanted.length - 2 * matches.length,
  };
}

function lettersWrong(a: string, b: string): number {
  let above = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const replaced = (above[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      row.push(Math.min(replaced, (above[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1));
    }
    above = row;
  }
  return above[b.length] ?? 0;
}
