import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { walkSheet } from '../../../engine/reading/walk-sheet.ts';

const sheet = readFileSync(new URL('../../snapshots/dress-leading-lady.svg', import.meta.url), 'utf8');

const codes = (svg: string): readonly string[] => {
  const walked = walkSheet(svg);
  return (walked.ok ? walked.value.issues : walked.issues).map((issue) => issue.code);
};

describe('the labels of a written sheet', () => {
  it('lie clear of every line', () => {
    expect(codes(sheet)).toEqual([]);
  });

  it('are found out where one is moved onto a stitching line', () => {
    const start = /class="stitch"[^>]* d="M\s*([-\d.]+)[ ,]([-\d.]+)/.exec(sheet);
    if (!start) throw new Error('no stitching line');
    const moved = sheet.replace(
      /<text class="label" x="[^"]*" y="[^"]*"/,
      `<text class="label" x="${start[1]}" y="${Number(start[2]) + 1}"`,
    );
    const unturned = moved.replace(/(<text class="label"[^>]*?) transform="rotate[^"]*"/, '$1');
    expect(codes(unturned)).toContain('label-over-line');
  });
});
