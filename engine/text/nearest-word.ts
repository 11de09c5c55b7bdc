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
