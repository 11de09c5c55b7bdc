/**
 * Works out a formula as `draft --steps --json` writes it, by the page drafts/sentences.md alone: nothing of the
 * program is used. Angles are degrees throughout.
 */
export function workOut(formula: string): number {
  const words = formula.replaceAll(',', ' ,').split(' ');
  let next = 0;
  const take = (...wanted: readonly string[]): boolean => {
    const there = wanted.every((word, i) => words[next + i] === word);
    if (there) next += wanted.length;
    return there;
  };
  const radians = Math.PI / 180;
  const functions: readonly (readonly [string, (x: number) => number])[] = [
    ['arc sine of', (x) => Math.asin(x) / radians],
    ['arc cosine of', (x) => Math.acos(x) / radians],
    ['arc tangent of', (x) => Math.atan(x) / radians],
    ['arc of angle', (x) => x * radians],
    ['angle of arc', (x) => x / radians],
    ['sine of', (x) => Math.sin(x * radians)],
    ['cosine of', (x) => Math.cos(x * radians)],
    ['tangent of', (x) => Math.tan(x * radians)],
    ['root of', (x) => Math.sqrt(x)],
    ['square of', (x) => x * x],
    ['whole part of', Math.floor],
  ];
  const factor = (): number => {
    for (const [name, apply] of functions) if (take(...name.split(' '))) return apply(factor());
    if (take('(')) {
      const inner = bounded();
      if (!take(')')) throw new Error(`no ) in ${formula}`);
      return inner;
    }
    const word = words[next] ?? '';
    next += 1;
    if (!/^-?\d+(\.\d+)?(e-?\d+)?°?$/.test(word)) throw new Error(`${word} is no number in ${formula}`);
    return Number(word.replace('°', ''));
  };
  const product = (): number => {
    let value = factor();
    for (;;) {
      if (take('x')) value *= factor();
      else if (take('/')) value /= factor();
      else return value;
    }
  };
  const sum = (): number => {
    let value = product();
    for (;;) {
      if (take('+')) value += product();
      else if (take('-')) value -= product();
      else return value;
    }
  };
  const bounded = (): number => {
    let value = sum();
    for (;;) {
      if (take(',', 'at', 'least')) value = Math.max(value, sum());
      else if (take(',', 'at', 'most')) value = Math.min(value, sum());
      else return value;
    }
  };
  const value = bounded();
  if (next !== words.length) throw new Error(`${words.slice(next).join(' ')} is left over in ${formula}`);
  return value;
}
