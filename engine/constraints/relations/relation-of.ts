import type { Relation } from '../relations.ts';

/** The relation of one kind. */
export type RelationOf<K extends Relation['kind']> = Extract<Relation, { readonly kind: K }>;
