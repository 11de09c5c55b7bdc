import type * as z from 'zod';

/** What a schema of `cli/results` says, as a command makes it: nothing in it is changed once it is made. */
export type Printed<Schema extends z.ZodType> = Frozen<z.output<Schema>>;

type Frozen<T> = T extends readonly (infer Item)[]
  ? readonly Frozen<Item>[]
  : T extends object
    ? { readonly [Key in keyof T]: Frozen<T[Key]> }
    : T;
