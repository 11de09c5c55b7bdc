import { type CheckBounds, draftBounds } from '../checks/bounds.ts';
import { FILE, FILE_KINK } from '../geometry/tolerance.ts';

/** What a written file is held to: lengths, and corners inside a curve, as they come back from other programs; else as a draft. */
export const fileBounds: CheckBounds = { ...draftBounds, seam: FILE, cutLine: FILE, kink: FILE_KINK };
