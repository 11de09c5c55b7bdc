import type { Result } from '../../issue.ts';
import type { IssueCode } from '../../issue-codes/issue-codes.ts';
import { nearestWord } from '../../text/nearest-word.ts';
import { writtenLength } from '../../text/written-length.ts';

/** What a pattern is printed on. */
export interface Paper {
  readonly name: string;
  /** `sheets` come in one size, a `roll` is cut to length, a `projector` shows one page of any size. */
  readonly kind: 'sheets' | 'roll' | 'projector';
  /** mm */
  readonly width: number;
  /** mm; of a roll or a projected page the most there may be. */
  readonly height: number;
}

/**
 * The longest side of a PDF page, mm: 14,400 units of 1/72 in, 200 in (PDF 1.7, ISO 32000-1:2008, Annex C.2). A
 * larger unit would allow more, but not every printer's software heeds it.
 */
export const longestSide = 5080;

/** The width of a projected page, mm: what a projector over a cutting table shows; common practice, no source. */
const projectedWidth = 1200;

/** Rolls narrower or wider than this (mm) fit no plotter. */
const rolls = { narrowest: 250, widest: 1700 };

const named: readonly Paper[] = [
  // ISO 216:2007.
  { name: 'a4', kind: 'sheets', width: 210, height: 297 },
  { name: 'a3', kind: 'sheets', width: 297, height: 420 },
  { name: 'a1', kind: 'sheets', width: 594, height: 841 },
  { name: 'a0', kind: 'sheets', width: 841, height: 1189 },
  // 8.5 x 11 in (ANSI/ASME Y14.1).
  { name: 'letter', kind: 'sheets', width: 215.9, height: 279.4 },
  { name: 'projector', kind: 'projector', width: projectedWidth, height: longestSide },
];

/** The papers that have a name; a roll is called by its width. */
export const paperNames: readonly string[] = named.map(({ name }) => name);

/** The ways to name a paper, for help and for answers. */
export const paperWords = 'a4, letter, a3, a1, a0, roll:914 (any width in mm; or roll:36in) or projector';

/** The paper of that name, such as `a4` or `roll:914`. Issues: `unknown-paper`, `roll-width`. */
export function readPaper(text: string): Result<Paper> {
  const name = text.trim().toLowerCase();
  const found = named.find((paper) => paper.name === name);
  if (found) return { ok: true, value: found, issues: [] };
  const [, wide = ''] = /^roll:(.*)$/.exec(name) ?? [];
  const width = writtenLength(wide)?.value;
  if (width === undefined || width < 0) {
    const near = nearestWord(name, paperNames);
    const hint = near ? `Did you mean “${near}”?` : `Choose ${paperWords}.`;
    return refuse('unknown-paper', `There is no paper called “${text.slice(0, 40)}”. ${hint}`);
  }
  if (width >= rolls.narrowest && width <= rolls.widest)
    return { ok: true, value: { name, kind: 'roll', width, height: longestSide }, issues: [] };
  return refuse('roll-width', `A roll should be ${rolls.narrowest} to ${rolls.widest} mm wide.`);
}

const refuse = (code: IssueCode, message: string): Result<Paper> => ({
  ok: false,
  issues: [{ code, severity: 'error', path: '--paper', message }],
});
