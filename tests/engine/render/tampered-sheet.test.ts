import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nearestOnEdge } from '../../../engine/geometry/nearest.ts';
import { readPath } from '../../../engine/reading/read-path.ts';
import { walkSheet } from '../../../engine/reading/walk-sheet.ts';
import { sheetSvg } from '../../../engine/render/sheet.ts';
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

/** Every number of every stitching and cutting line, by where it stands in its line and in the file. */
const numbers = [...sheet.matchAll(/<path class="(?:stitch|cut)"[^>]* d="([^"]*)"/g)].flatMap((path) => {
  const data = path[1] ?? '';
  const from = path.index + path[0].length - 1 - data.length;
  return [...data.matchAll(/[\d.]+/g)].map(({ index, 0: text }) => ({ data, index, at: from + index, text }));
});

const edgeOf = (data: string) => {
  const read = readPath(data);
  if (!read.ok) throw new Error('no path');
  return { name: 'drawn', curves: read.curves };
};

describe('a sheet on which a line was nudged', () => {
  // A number may move its line by less than it is moved itself, as a handle does: only ends are tried here.
  const ends = numbers.filter(({ at }) => /[ML][\d. ]*$/.test(sheet.slice(at - 14, at)));

  it('is found out wherever it was by 0.2 mm, and told from one whose claims were changed', () => {
    fc.assert(
      fc.property(fc.constantFrom(...ends), fc.constantFrom(-0.2, 0.2), ({ data, index, at, text }, by) => {
        const put = (into: string, place: number): string =>
          into.slice(0, place) + String(Number(text) + by) + into.slice(place + text.length);
        // An end that slides along its line, or nearly, leaves the line where it was.
        const line = edgeOf(data);
        fc.pre(edgeOf(put(data, index)).curves.some(({ from }) => nearestOnEdge(line, from).distance > 0.1));
        const found = codes(put(sheet, at));
        expect(found.length).toBeGreaterThan(0);
        expect(found).not.toContain('edited-since-written');
      }),
      { numRuns: 12 },
    );
  });
});

describe('a sheet that is drawn otherwise than its numbers say', () => {
  const stitch = /<path class="stitch"/;
  it.each([
    [
      'a style attribute',
      (svg: string) => svg.replace(stitch, '<path style="transform:translate(9px)" class="stitch"'),
    ],
    ['a style sheet of its own', (svg: string) => svg.replace('<style>', '<style>.stitch{display:none} ')],
    [
      'a second style sheet',
      (svg: string) => svg.replace('</svg>', '<style>.cut{visibility:hidden}</style></svg>'),
    ],
    ['display', (svg: string) => svg.replace(stitch, '<path display="none" class="stitch"')],
    [
      'visibility on a group',
      (svg: string) => svg.replace('<g class="piece"', '<g visibility="hidden" class="piece"'),
    ],
    [
      'a transform on a group',
      (svg: string) => svg.replace('<g class="piece"', '<g transform="scale(0.9)" class="piece"'),
    ],
    [
      'a transform on the test squares',
      (svg: string) => svg.replace('<rect class="square"', '<rect transform="scale(1.1)" class="square"'),
    ],
    [
      'a label turned aslant',
      (svg: string) =>
        svg.replace(
          /<text class="label"(?![^>]*transform)/,
          '<text transform="rotate(12 1 1)" class="label"',
        ),
    ],
    [
      'percentages',
      (svg: string) => svg.replace(/<rect class="square" x="[^"]*"/, '<rect class="square" x="10%"'),
    ],
    [
      'preserveAspectRatio',
      (svg: string) => svg.replace('<svg ', '<svg preserveAspectRatio="xMinYMin slice" '),
    ],
    ['a clip', (svg: string) => svg.replace('<g class="piece"', '<g clip-path="url(#a)" class="piece"')],
    [
      'a drawing within',
      (svg: string) => svg.replace('</svg>', '<svg width="10" height="10" viewBox="0 0 1 1"/></svg>'),
    ],
    ['a copy by reference', (svg: string) => svg.replace('</svg>', '<use href="#a"/></svg>')],
    ['a fading', (svg: string) => svg.replace('<path class="cut"', '<path stroke-opacity="0" class="cut"')],
    ['a style sheet for the printer alone', (svg: string) => svg.replace('<style>', '<style media="print">')],
    [
      'a style sheet beside it',
      (svg: string) => svg.replace('<svg ', '<?xml-stylesheet href="data:text/css,path{}"?><svg '),
    ],
    [
      'definitions of its own',
      (svg: string) =>
        svg.replace('<svg ', '<!DOCTYPE svg [<!ATTLIST path style CDATA "display:none">]><svg '),
    ],
    [
      'a style under another name',
      (svg: string) =>
        svg.replace(
          '</svg>',
          '<s:style xmlns:s="http://www.w3.org/2000/svg">.cut{display:none}</s:style></svg>',
        ),
    ],
    [
      'paper laid over its lines',
      (svg: string) => svg.replace('</svg>', '<rect class="paper" width="900" height="2400"/></svg>'),
    ],
    ['a page that begins elsewhere', (svg: string) => svg.replace('viewBox="0 0 ', 'viewBox="50 0 ')],
    ['an animation', (svg: string) => svg.replace('</svg>', '<animate attributeName="d"/></svg>')],
  ])('is refused by name: %s', (_, change) => {
    const changed = change(sheet);
    expect(changed).not.toBe(sheet);
    expect(codes(changed)).toContain('drawn-otherwise');
  });

  it('is refused where a stitching line calls itself a fold, which is drawn without a line', () => {
    expect(codes(sheet.replace('data-turn="seam"', 'data-turn="fold"'))).toEqual(['path-otherwise']);
  });

  it.each([
    [
      'a page cut short',
      (svg: string) =>
        svg.replace(/height="(\d+)mm" viewBox="0 0 (\d+) \d+"/, 'height="900mm" viewBox="0 0 $2 900"'),
    ],
    [
      'a label moved away',
      (svg: string) => svg.replace(/<text class="label" x="[^"]*"/, '<text class="label" x="-400"'),
    ],
    ['letters of no size', (svg: string) => svg.replace(/font-size="[^"]*"/, 'font-size="0"')],
  ])('is found out where a printer would show less of it: %s', (_, change) => {
    const changed = change(sheet);
    expect(changed).not.toBe(sheet);
    expect(codes(changed)).toContain('off-page');
  });

  it('is not refused for what another program notes of itself', () => {
    const noted = sheet.replace('</svg>', '<note:view zoom="2"/></svg>');
    expect(codes(noted)).toEqual([]);
  });

  it('is found out by its test squares where the page is not 1:1', () => {
    const smaller = sheet.replace(
      / width="(\d+)mm" height="(\d+)mm"/,
      (_, w, h) => ` width="${0.9 * w}mm" height="${0.9 * h}mm"`,
    );
    expect(codes(smaller)).toContain('test-square-wrong');
    expect(codes(sheet.replace(/(<rect class="square"[^>]*?) width="50"/, '$1 width="49"'))).toEqual([
      'test-square-wrong',
    ]);
    expect(codes(sheet.replace(/<rect class="square"[^>]*\/>/g, ''))).toEqual([
      'test-square-wrong',
      'test-square-wrong',
    ]);
  });
});
