/**
 * What a sentence computes, as it was read. `at` is the place in the sentence, counted in characters of its template
 * with each value put in taken as one, for messages.
 */
export type Formula =
  | { readonly kind: 'number'; readonly value: number; readonly degrees: boolean; readonly at: number }
  /** A value put in, by its place among them. */
  | { readonly kind: 'given'; readonly given: number; readonly at: number }
  | { readonly kind: 'negative'; readonly of: Formula; readonly at: number }
  | {
      readonly kind: 'sum' | 'product';
      readonly op: Operator;
      readonly left: Formula;
      readonly right: Formula;
      readonly at: number;
    }
  | { readonly kind: 'function'; readonly name: FunctionName; readonly of: Formula; readonly at: number }
  | {
      readonly kind: 'bound';
      readonly op: LimitWord;
      readonly of: Formula;
      readonly bound: Formula;
      readonly at: number;
    };

export type Operator = '+' | '-' | 'x' | '/';

export type LimitWord = 'at least' | 'at most';

/** The functions by name, each with how it computes; angles are radians. */
export const functions = {
  'root of': Math.sqrt,
  'square of': (x: number) => x * x,
  'sine of': Math.sin,
  'cosine of': Math.cos,
  'tangent of': Math.tan,
  'arc sine of': Math.asin,
  'arc cosine of': Math.acos,
  'arc tangent of': Math.atan,
  'whole part of': Math.floor,
  /** The angle whose arc, divided by its radius, is this. */
  'angle of arc': (x: number) => x,
  /** The arc of an angle, divided by its radius. */
  'arc of angle': (x: number) => x,
} as const;

export type FunctionName = keyof typeof functions;

/** The names of the functions in words, the longest first, so that each is found whole. */
export const functionPhrases: readonly (readonly [FunctionName, readonly string[]])[] = (
  Object.keys(functions) as FunctionName[]
)
  .map((name) => [name, name.split(' ')] as const)
  .toSorted(([, a], [, b]) => b.length - a.length);
