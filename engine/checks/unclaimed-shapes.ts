import { sides } from '../body/side.ts';
import type { Issue } from '../issue.ts';
import type { Garment } from '../pattern/garment.ts';
import { counted } from '../text/counted.ts';

/** The names of the shapes that a garment must claim, or why they cannot be told. */
export type Claimable =
  | { readonly kind: 'claims'; readonly names: readonly string[] }
  /** The garment does not say with which choices it was made, or none that its draft has. */
  | { readonly kind: 'no choices' }
  /** Its draft is not known, or draws for none of the bodies that were tried. */
  | { readonly kind: 'unknown' };

/** Whoever knows which shapes a garment must claim, by its name and choices. */
export type ShapesOf = (garment: Garment) => Claimable;

/** What a garment read from a file is no longer held to, though its draft holds every such garment to it. */
export function unclaimedShapes(garment: Garment, must: Claimable): readonly Issue[] {
  const { name } = garment;
  if (must.kind === 'unknown') {
    const message = `Which shapes a “${name}” must have is not known here. Name its draft with --draft.`;
    return [{ code: 'shapes-unknown', severity: 'note', path: name, message }];
  }
  const said = (message: string): readonly Issue[] => [
    { code: 'shape-unclaimed', severity: 'error', path: name, message },
  ];
  if (must.kind === 'no choices')
    return said(
      `The sheet does not say with which choices the ${name} was drafted, so whether it claims every shape cannot be told. Write it again.`,
    );
  const claimed = new Set(garment.shapes.map((claim) => claim.name));
  const lacking = must.names.filter(
    (shape) => !claimed.has(shape) && !sides.every((side) => claimed.has(`${side} ${shape}`)),
  );
  const [first] = lacking;
  if (first === undefined) return [];
  const others = lacking.length === 1 ? '' : `, nor to ${counted(lacking.length - 1, 'other shape')}`;
  return said(`The sheet is not held to “${first}”${others}, as every such ${name} is. Write it again.`);
}
