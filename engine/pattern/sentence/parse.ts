import {
  type Formula,
  type FunctionName,
  functionPhrases,
  type LimitWord,
  type Operator,
} from './formula.ts';
import type { Token } from './tokens.ts';

/** Words that would say a computation which is not carried out. */
const computingWords: readonly string[] = [
  'of',
  'x',
  'twice',
  'double',
  'times',
  'plus',
  'minus',
  'least',
  'most',
];

/** Units that would be typed behind the number of a length. */
const lengthUnits: ReadonlySet<string> = new Set(['mm', 'cm', 'm', 'in', 'inch', 'inches']);

type Refuse = (at: number, why: string) => never;

/**
 * Reads the formula of a sentence by the grammar that `sentence.ts` states, top down. What cannot be read is given to
 * `refuse`, with its place.
 */
export function parseFormula(tokens: readonly Token[], refuse: Refuse): Formula {
  const reader = new TokenReader(tokens, refuse);
  const formula = reader.bounded();
  reader.end();
  return formula;
}

/** Whether a name goes on with this, or its value comes. */
const goesOn = (token: Token | undefined): boolean =>
  token?.kind === 'given' || (token?.kind === 'word' && !computingWords.includes(token.word));

class TokenReader {
  readonly #tokens: readonly Token[];
  readonly #refuse: Refuse;
  #next = 0;

  constructor(tokens: readonly Token[], refuse: Refuse) {
    this.#tokens = tokens;
    this.#refuse = refuse;
  }

  /** A sum, and the bounds it is held in, one after the other. */
  bounded(): Formula {
    let formula = this.#sum();
    while (this.#sign(',')) {
      const { at } = this.#peek();
      if (this.#word('but') || this.#word('and')) {
        // Said for the ear alone: "but at most".
      }
      const op = this.#bound();
      if (!op)
        return this.#refuse(at, 'After a comma stands "at least" or "at most"; free words stand after a ";"');
      formula = { kind: 'bound', op, of: formula, bound: this.#sum(), at };
    }
    return formula;
  }

  end(): void {
    const token = this.#peek();
    if (token.kind !== 'end')
      this.#refuse(token.at, 'Between two values stands + - x / or "of"; free words stand after a ";"');
  }

  #sum(): Formula {
    let left = this.#product();
    for (let op = this.#operator('+', '-'); op; op = this.#operator('+', '-'))
      left = { kind: 'sum', ...op, left, right: this.#product() };
    return left;
  }

  #product(): Formula {
    let left = this.#factor();
    for (let op = this.#operator('x', '/'); op; op = this.#operator('x', '/'))
      left = { kind: 'product', ...op, left, right: this.#factor() };
    return left;
  }

  #factor(): Formula {
    const { at } = this.#peek();
    if (this.#sign('-')) return negative(this.#factor(), at);
    const name = this.#function();
    if (name) return { kind: 'function', name, of: this.#factor(), at };
    this.#label();
    const token = this.#peek();
    if (token.kind === 'number' || token.kind === 'given') {
      this.#next += 1;
      if (token.kind === 'number') this.#noUnit();
      return token;
    }
    if (!this.#sign('(')) return this.#refuse(token.at, 'Here a value is missing');
    const inner = this.bounded();
    if (!this.#sign(')')) return this.#refuse(this.#peek().at, 'A bracket is not closed before here');
    return inner;
  }

  /** A number typed out is no length. */
  #noUnit(): void {
    const behind = this.#peek();
    if (behind.kind === 'word' && lengthUnits.has(behind.word))
      this.#refuse(behind.at, 'A length is never typed: make it a choice or a rule, in mm, and put that in');
  }

  /** Words that name the value put in behind them; anywhere else a word would compute nothing. */
  #label(): void {
    const first = this.#peek();
    for (let token = first; token.kind === 'word'; token = this.#peek()) {
      const behind = this.#tokens[this.#next + 1];
      if (token.word === '' && !goesOn(behind))
        this.#refuse(
          token.at,
          'These words name no value: what is put in is a text, as of a step without mm, angle or ratio before it',
        );
      if (computingWords.includes(token.word))
        this.#refuse(token.at, `"${token.word}" cannot compute here, and does not stand in a name`);
      this.#next += 1;
    }
    if (first.kind === 'word' && this.#peek().kind !== 'given')
      this.#refuse(first.at, 'These words name no value put in behind them, and are no function');
  }

  #function(): FunctionName | undefined {
    const found = functionPhrases.find(([, words]) =>
      words.every((word, i) => {
        const token = this.#tokens[this.#next + i];
        return token?.kind === 'word' && token.word === word;
      }),
    );
    if (found) this.#next += found[1].length;
    return found?.[0];
  }

  #bound(): LimitWord | undefined {
    if (!this.#word('at')) return undefined;
    if (this.#word('least')) return 'at least';
    return this.#word('most') ? 'at most' : undefined;
  }

  #operator(...ops: readonly Operator[]): { readonly op: Operator; readonly at: number } | undefined {
    const token = this.#peek();
    const written = token.kind === 'sign' ? token.sign : token.kind === 'word' ? token.word : undefined;
    const op = ops.find((each) => each === (written === 'of' ? 'x' : written));
    if (!op) return undefined;
    this.#next += 1;
    return { op, at: token.at };
  }

  #sign(sign: string): boolean {
    const token = this.#peek();
    const is = token.kind === 'sign' && token.sign === sign;
    if (is) this.#next += 1;
    return is;
  }

  #word(word: string): boolean {
    const token = this.#peek();
    const is = token.kind === 'word' && token.word === word;
    if (is) this.#next += 1;
    return is;
  }

  #peek(): Token {
    return this.#tokens[Math.min(this.#next, this.#tokens.length - 1)] ?? { kind: 'end', at: 0 };
  }
}

/** Less than nothing; a number that is typed out carries its sign itself. */
const negative = (of: Formula, at: number): Formula =>
  of.kind === 'number' ? { ...of, value: -of.value, at } : { kind: 'negative', of, at };
