import type { Piece } from '../../engine/pattern/piece.ts';

/** The panels of a bodice, in front and behind, each half from the centre outwards. */
const panelNames = ['upper centre front', 'centre front', 'side front', 'centre back', 'side back'];

/** The panels among the pieces of a bodice, in that order: what is finished inside. Insert and straps face themselves. */
export const panelsOf = (pieces: readonly Piece[]): readonly Piece[] =>
  panelNames.flatMap((name) => pieces.filter((piece) => piece.name === name));

export type BodiceHalf = 'front' | 'back';
export const parts: readonly BodiceHalf[] = ['front', 'back'];

/** The half that a panel or its lining belongs to. */
export const partOf = (name: string): BodiceHalf => (name.includes('front') ? 'front' : 'back');

/** The panels of one half. */
export const panelsIn = (part: BodiceHalf, panels: readonly Piece[]): readonly Piece[] =>
  panels.filter(({ name }) => partOf(name) === part);

export const isNeckline = ({ name }: { readonly name: string }): boolean => name.startsWith('neckline');
export const isArmhole = ({ name }: { readonly name: string }): boolean => name.startsWith('armhole');
