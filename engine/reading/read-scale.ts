import { NO_TURN } from '../geometry/tolerance.ts';
import type { Issue, Result } from '../issue.ts';
import type { IssueCode } from '../issue-codes/issue-codes.ts';
import { fixed } from '../text/figure.ts';

/** Millimetres in each unit of length that an SVG may be measured in (CSS Values 3; a pixel is 1/96 in). */
const unitsOfLength: Readonly<Record<string, number>> = {
  mm: 1,
  cm: 10,
  Q: 0.25,
  in: 25.4,
  pt: 25.4 / 72,
  pc: 25.4 / 6,
  px: 25.4 / 96,
  '': 25.4 / 96,
};

/** Width and height may differ in scale by this share before the drawing counts as stretched. */
const stretch = 1e-3;

/**
 * Millimetres of paper that one unit of the drawing takes, from `width`, `height` and `viewBox`. A sheet written
 * here answers 1.
 */
export function readScale(attributes: Readonly<Record<string, string>>): Result<number> {
  const width = lengthOf(attributes.width);
  const height = lengthOf(attributes.height);
  const box = (attributes.viewBox ?? '')
    .trim()
    .split(/[\s,]+/)
    .map(Number);
  const [, , boxWidth = 0, boxHeight = 0] = box;
  const whole = box.length === 4 && box.every(Number.isFinite) && boxWidth > 0 && boxHeight > 0;
  if (width === undefined || height === undefined || !whole)
    return refuse(
      'size-unknown',
      'The drawing does not say how large it is on paper (width and height in mm, and a viewBox).',
    );
  const [across, down] = [width / boxWidth, height / boxHeight];
  if (Math.abs(across / down - 1) > stretch)
    return refuse(
      'stretched',
      `The drawing is stretched: its width is scaled by ${fixed(across, 4)}, its height by ${fixed(down, 4)}.`,
    );
  return { ok: true, value: Math.abs(across - 1) < NO_TURN ? 1 : across, issues: [] };
}

function lengthOf(text: string | undefined): number | undefined {
  const [, number, unit] =
    /^\s*(\+?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?)\s*([a-zA-Z]*)\s*$/.exec(text ?? '') ?? [];
  const mm = unit === undefined ? undefined : unitsOfLength[unit];
  const length = Number(number) * (mm ?? Number.NaN);
  return length > 0 && length < 1e6 ? length : undefined;
}

const refuse = (
  code: IssueCode,
  message: string,
): { readonly ok: false; readonly issues: readonly Issue[] } => ({
  ok: false,
  issues: [{ code, severity: 'error', path: 'file', message }],
});
