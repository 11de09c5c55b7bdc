import { checkKind } from '../compile/check-kind.ts';
import type { Equations } from '../compile/equations.ts';
import type { Slots } from '../compile/slots.ts';
import type { Relation } from '../relations.ts';
import { coincident } from './coincident.ts';
import { curvature } from './curvature.ts';
import { acrossSeam, tangent, turn } from './directions.ts';
import { distanceApart } from './distance.ts';
import { headingFrom } from './heading.ts';
import { leastRadius } from './least-radius.ts';
import { edgeLengths } from './length.ts';
import { noInflection } from './no-inflection.ts';
import { onLine } from './on-line.ts';
import type { RelationOf } from './relation-of.ts';
import { weightedSum } from './sum.ts';

/** How each kind of relation is made ready for computing. */
const TABLE: { readonly [K in Relation['kind']]: (relation: RelationOf<K>, slots: Slots) => Equations } = {
  coincident,
  'on line': onLine,
  distance: distanceApart,
  heading: headingFrom,
  turn,
  sum: weightedSum,
  length: edgeLengths,
  tangent,
  curvature,
  'smooth across seam': acrossSeam,
  'no inflection': noInflection,
  'least radius': leastRadius,
};

/** The equations of a relation. Throws a `DraftMistake`, with its name, for a kind or a name that is not there. */
export function equationsOf<K extends Relation['kind']>(relation: RelationOf<K>, slots: Slots): Equations {
  checkKind('relation', relation, TABLE);
  return TABLE[relation.kind as K](relation, slots);
}
