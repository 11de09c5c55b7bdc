import { checkGarment } from '../checks/check-garment.ts';
import { cutAsMade } from '../checks/cut-as-made.ts';
import { cutReady, labelFaults } from '../checks/cut-ready.ts';
import { type Like, type LikeOf, leftOut } from '../checks/left-out.ts';
import { notchDepthFaults } from '../checks/notch-depth.ts';
import { overlapFaults } from '../checks/overlaps.ts';
import type { Report } from '../checks/report.ts';
import type { Issue, Result } from '../issue.ts';
import type { Garment } from '../pattern/garment.ts';
import { type Metadata, metadataOf } from '../render/metadata.ts';
import type { Unit } from '../text/units.ts';
import { claimedOtherwise } from './claimed-otherwise.ts';
import { fileBounds } from './file-bounds.ts';
import { offPage } from './off-page.ts';
import { readSheet } from './read-sheet.ts';

/** What was found, and in which unit its lengths are told to whom the sheet was written for. */
export interface WalkedSheet extends Report {
  readonly units: Unit;
}

const editedSince: Issue = {
  code: 'edited-since-written',
  severity: 'error',
  path: 'file',
  message:
    'What this sheet says of itself was changed since it was written, so it is no longer held to what was drafted. Write it again.',
};

/** What a sheet leaves out that its garment must have, and what it claims otherwise than the same draft does again. */
function notAsDrafted(said: Metadata, garment: Garment, like: Like): readonly Issue[] {
  const left = leftOut(garment, like);
  if (left.length > 0 || like.kind !== 'drafted again') return left;
  return claimedOtherwise(said, metadataOf(like.garment, like.garment.pieces, 'sheet', {}));
}

/**
 * Walks a written sheet again from its paths alone: every check of a garment, each cutting line measured
 * against its stitching line, no piece on another, and no label over a line. Fails when the file cannot be read
 * as a sheet; `readSheet` names the issues. `likeOf` drafts such a garment, whose seams, notches and shapes it must have.
 */
export function walkSheet(svg: string, likeOf?: LikeOf): Result<WalkedSheet> {
  const sheet = readSheet(svg);
  if (!sheet.ok) return sheet;
  const { garment, said, cutLines, notches, labels, edited, page, squares, units } = sheet.value;
  const walked = checkGarment(garment, fileBounds);
  const issues = [
    ...(edited ? [editedSince] : []),
    ...squares,
    ...offPage(page, cutLines, labels),
    ...walked.issues,
    ...(likeOf ? notAsDrafted(said, garment, likeOf(garment)) : []),
    ...cutReady(garment, cutLines, fileBounds.cutLine),
    ...cutAsMade(garment, cutLines),
    ...garment.pieces.flatMap((piece) =>
      notchDepthFaults(piece, notches.get(piece.name) ?? [], fileBounds.cutLine),
    ),
    ...overlapFaults(cutLines),
    ...garment.pieces.flatMap((piece) => labelFaults(piece, labels)),
  ];
  const ok = issues.every(({ severity }) => severity !== 'error');
  return { ok: true, value: { ...walked, issues, ok, units }, issues };
}
