import { describe, expect, it } from 'vitest';
import { sheetSvg } from '../../../engine/render/sheet.ts';
import { walkSheet } from '../../../engine/render/walk-sheet.ts';
import { drafted, shippedBody } from '../../drafts/drafted.ts';

const { garment, cutLines } = drafted('dress', shippedBody('leading-lady'));
const sheet = sheetSvg(garment, cutLines);

const codes = (svg: string): readonly string[] => {
  const walked = walkSheet(svg);
  return (walked.ok ? walked.value.issues : walked.issues).map(({ code }) => code);
};

/** The sheet with something else in what it says of itself. */
function claiming(change: (said: Record<string, unknown>) => void): string {
  const text = /<metadata>(.*?)<\/metadata>/s.exec(sheet)?.[1] ?? '';
  const said: Record<string, unknown> = JSON.parse(text);
  change(said);
  return sheet.replace(text, () => JSON.stringify(said).replaceAll('<', '\\u003c'));
}

type Claims = readonly Record<string, unknown>[];

describe('a sheet whose claims were changed', () => {
  it.each([
    [
      'seams emptied',
      (said: Record<string, unknown>) => {
        said.seams = [];
      },
      'edge-unsewn',
    ],
    [
      'one seam removed',
      (said: Record<string, unknown>) => {
        said.seams = (said.seams as Claims).slice(1);
      },
      'edge-unsewn',
    ],
    [
      'joins emptied',
      (said: Record<string, unknown>) => {
        said.joins = [];
      },
      'edited-since-written',
    ],
    [
      'girths emptied',
      (said: Record<string, unknown>) => {
        said.girths = [];
      },
      'level-uncounted',
    ],
    [
      'shapes emptied',
      (said: Record<string, unknown>) => {
        said.shapes = [];
      },
      'edited-since-written',
    ],
    [
      'body and ease shifted',
      (said: Record<string, unknown>) => {
        said.girths = (said.girths as Claims).map((girth) => ({
          ...girth,
          body: Number(girth.body) + 40,
          ease: Number(girth.ease) - 40,
        }));
      },
      'edited-since-written',
    ],
    [
      'more inflections allowed',
      (said: Record<string, unknown>) => {
        said.pieces = (said.pieces as Claims).map((piece) => ({
          ...piece,
          edges: (piece.edges as Claims).map((edge) => ({ ...edge, inflections: 9 })),
        }));
      },
      'edited-since-written',
    ],
    [
      'a notch removed',
      (said: Record<string, unknown>) => {
        said.pieces = (said.pieces as Claims).map((piece) =>
          piece.name === 'side front' ? { ...piece, notches: (piece.notches as Claims).slice(1) } : piece,
        );
      },
      'notch-without-partner',
    ],
    [
      'a count changed',
      (said: Record<string, unknown>) => {
        said.pieces = (said.pieces as Claims).map((piece) => ({
          ...piece,
          cut: (piece.cut as Claims).map((cut) => ({ ...cut, count: 3 })),
        }));
      },
      'cut-cannot-be',
    ],
    [
      'a number changed',
      (said: Record<string, unknown>) => {
        said.pieces = (said.pieces as Claims).map((piece, i) => ({
          ...piece,
          number: i === 0 ? 7 : piece.number,
        }));
      },
      'piece-misnumbered',
    ],
    [
      'the digest taken away',
      (said: Record<string, unknown>) => {
        delete said.digest;
      },
      'edited-since-written',
    ],
  ])('is found out: %s', (_, change, code) => {
    const found = codes(claiming(change));
    expect(found).toContain(code);
    expect(found).toContain('edited-since-written');
  });

  it('is as it was where nothing was changed', () => {
    expect(codes(sheet)).toEqual([]);
    expect(codes(claiming(() => undefined))).toEqual([]);
  });
});

describe('a sheet on which a line was nudged', () => {
  it('is told from one whose claims were changed', () => {
    const bent = sheet.replace(
      /(class="stitch" data-piece="side front" data-edge="princess upper"[^>]* d="M)([\d.]+)/,
      (_, head, x) => `${head}${Number(x) + 3}`,
    );
    expect(bent).not.toBe(sheet);
    expect(codes(bent).length).toBeGreaterThan(0);
    expect(codes(bent)).not.toContain('edited-since-written');
  });
});
