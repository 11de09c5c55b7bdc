import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { edgeLength } from '../../../engine/geometry/edge.ts';
import { signedArea } from '../../../engine/geometry/outline.ts';
import { readOutline, type TracingOptions } from '../../../engine/render/read-outline.ts';
import type { TracedPiece } from '../../../engine/shaping/traced.ts';

const corner = (25 * Math.PI) / 180;

const read = (svg: string, options: Partial<TracingOptions> = {}) => readOutline(svg, { corner, ...options });

/** A drawing whose one unit is half a millimetre, by its square of 100 units. */
const drawing = (content: string, attributes = ''): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" ${attributes}><rect id="test-square" x="900" y="0" width="100" height="100"/>${content}</svg>`;

const square = 'M0 0L400 0L400 600L0 600Z';

function traced(svg: string, options: Partial<TracingOptions> = {}): TracedPiece {
  const result = read(svg, options);
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  return result.value;
}

const codes = (svg: string, options: Partial<TracingOptions> = {}): readonly string[] =>
  read(svg, options).issues.map(({ code }) => code);

const lengths = ({ edges }: TracedPiece): readonly number[] => edges.map((edge) => edgeLength(edge));

describe('a traced outline', () => {
  test.each([
    ['a path', `<path d="${square}"/>`],
    ['relative commands', '<path d="m0 0h400v600h-400z"/>'],
    ['anticlockwise, from another corner', '<path d="M400 600L400 0L0 0L0 600Z"/>'],
    ['a rectangle', '<rect width="400" height="600"/>'],
    ['a polygon', '<polygon points="0,0 400,0 400,600 0,600"/>'],
    ['a polyline that comes back', '<polyline points="0 0 400 0 400 600 0 600 0 0"/>'],
    ['a path that comes back without being closed', '<path d="M0 0L400 0L400 600L0 600L0 0"/>'],
    ['a path that stops half a millimetre short', '<path d="M0 0L400 0L400 600L0 600L0 1"/>'],
    [
      'four lines in any order and direction',
      '<g id="outline"><path d="M0 0H400"/><line x1="400" y1="600" x2="0" y2="600"/><path d="M400 600V0"/><path d="M0 0V600"/></g>',
    ],
    [
      'nested groups with transforms',
      `<g transform="translate(50 20)"><g transform="scale(2, 2) translate(-5)"><path transform="scale(.5)" d="${square}"/></g></g>`,
    ],
    ['a matrix', `<path transform="matrix(0 1 -1 0 700 30)" d="M0 0L600 0L600 400L0 400Z"/>`],
    [
      'turned about a point',
      `<path transform="rotate(90, 200 300)" d="M-100 100L500 100L500 500L-100 500Z"/>`,
    ],
    ['mirrored', `<path transform="scale(-1 1)" d="${square}"/>`],
    ['skewed there and back', `<g transform="skewX(30)"><path transform="skewX(-30)" d="${square}"/></g>`],
    ['numbers that run together', '<path d="M0 0L4e2 0 400 600-0 600z"/>'],
    ['a slip of the pen on a corner', '<path d="M0 0L400 0L400.001 0L400 600L0 600Z"/>'],
  ])('%s measures 200 by 300 mm, clockwise from the top left', (_, content) => {
    const piece = traced(drawing(content));
    expect(piece.mmPerUnit).toBeCloseTo(0.5, 9);
    expect(piece.scaleFrom).toBe('square');
    expect(piece.edges.map(({ name }) => name)).toEqual(['edge 1', 'edge 2', 'edge 3', 'edge 4']);
    [200, 300, 200, 300].map((length, i) =>
      expect(Math.abs((lengths(piece)[i] ?? 0) - length)).toBeLessThan(0.6),
    );
    expect(Math.abs(signedArea(piece.edges) / 60_000 - 1)).toBeLessThan(0.002);
  });

  test.each([
    ['absolute', 'M0 200A200 200 0 0 1 400 200L400 600L0 600Z'],
    ['relative, flags run together', 'm0 200a200 200 0 01400 0v400h-400z'],
    ['radius too short', 'M0 200A1 1 0 0 1 400 200L400 600L0 600Z'],
  ])('half a circle as an arc, %s, has the length of half a circle', (_, d) => {
    const found = lengths(traced(drawing(`<path d="${d}"/>`)));
    expect(found.some((length) => Math.abs(length - (100 * Math.PI + 400)) < 0.01)).toBe(true);
  });

  test('the large arc and the other way round', () => {
    const piece = traced(drawing('<path d="M0 0A300 200 30 1 1 200 200Z"/>'));
    const other = traced(drawing('<path d="M0 0A300 200 30 1 0 200 200Z"/>'));
    expect(signedArea(piece.edges)).toBeCloseTo(signedArea(other.edges), 3);
    const small = traced(drawing('<path d="M0 0A300 200 30 0 1 200 200Z"/>', ''), {});
    const whole = Math.PI * 150 * 100;
    expect(signedArea(piece.edges) + signedArea(small.edges)).toBeCloseTo(whole, 0);
  });

  test('an ellipse and a circle have no corners and are one edge', () => {
    expect(traced(drawing('<circle cx="300" cy="300" r="200"/>')).edges).toHaveLength(1);
    const [length] = lengths(traced(drawing('<ellipse cx="300" cy="300" rx="320" ry="220"/>')));
    // Semi-axes 16 and 11 cm: 85.55179440 cm (exact perimeter).
    expect(length).toBeCloseTo(855.517944, 2);
  });

  test('edges drawn one by one keep their names and what becomes of them', () => {
    const lines = [
      ['hem', 'M400 600H0', 'hem'],
      ['front', 'M0 600V0', 'fold'],
      ['top', 'M0 0H400', 'seam'],
      ['side', 'M400 0V600', 'seam'],
    ].map(([name, d, turn]) => `<path class="stitch" data-edge="${name}" data-turn="${turn}" d="${d}"/>`);
    const { edges } = traced(drawing(lines.join('')));
    expect(edges.map(({ name, turn }) => [name, turn])).toEqual([
      ['hem', 'hem'],
      ['front', 'fold'],
      ['top', undefined],
      ['side', undefined],
    ]);
  });

  test('notches, grainline and guide are known by their names or that of their group', () => {
    const piece = traced(
      drawing(
        `<path d="${square}"/><path id="bust notch" d="M395 200h20"/><g id="notches"><path id="waist-double" d="M100 590v20"/></g>
        <path id="far notch" d="M900 900h5"/><line id="grainline" x1="100" y1="100" x2="100" y2="500"/><path class="guide" d="M0 250H400"/>`,
      ),
    );
    expect(piece.notches).toMatchObject([
      { name: 'bust notch', edge: 'edge 2', mark: 'single' },
      { name: 'waist-double', edge: 'edge 3', mark: 'double' },
    ]);
    expect(piece.notches[0]?.at).toBeCloseTo(100, 6);
    expect(piece.notches[1]?.at).toBeCloseTo(150, 6);
    expect(piece.grain).toMatchObject({ from: { x: 50, y: 50 }, to: { x: 50, y: 250 } });
    expect(piece.guide).toBeCloseTo(125, 9);
  });
});

describe('the scale', () => {
  const bare = `<svg width="400mm" height="600mm" viewBox="0 0 400 600"><path d="M10 10H210V310H10Z"/></svg>`;

  test('comes from what she says, else from the square, else from the drawing, with a warning', () => {
    expect(traced(bare)).toMatchObject({ mmPerUnit: 1, scaleFrom: 'drawing' });
    expect(codes(bare)).toEqual(['scale-from-drawing']);
    expect(traced(bare, { mmPerUnit: 2 })).toMatchObject({ mmPerUnit: 2, scaleFrom: 'given' });
    expect(codes(bare, { mmPerUnit: 2 })).toEqual(['scales-differ']);
    expect(codes(drawing(`<path d="${square}"/>`), { mmPerUnit: 0.5 })).toEqual([]);
  });

  test.each([
    ['10in', '20in', 25.4],
    ['10cm', '20cm', 10],
    ['720pt', '1440pt', 25.4],
  ])('in %s by %s', (width, height, mmPerUnit) => {
    const svg = `<svg width="${width}" height="${height}" viewBox="0 0 10 20"><path d="M1 1H9V19H1Z"/></svg>`;
    expect(traced(svg).mmPerUnit).toBeCloseTo(mmPerUnit, 6);
  });

  test('a square inside moved and scaled groups is measured where it lies', () => {
    const svg = `<svg><g transform="scale(3)rotate(20)"><path id="square" d="M0 0h10v10h-10z"/></g><path d="${square}"/></svg>`;
    expect(traced(svg).mmPerUnit).toBeCloseTo(50 / 30, 9);
  });
});

describe('a drawing that cannot be used gets an answer', () => {
  test.each<[string, string, string, Partial<TracingOptions>?]>([
    ['nothing at all', '', 'not-svg'],
    ['no SVG', '{"pieces": 3}', 'not-svg'],
    ['a page of HTML', '<html><body/></html>', 'not-svg'],
    ['cut short', drawing(`<path d="${square}"/>`).slice(0, -20), 'not-svg'],
    ['two roots', '<svg/><svg/>', 'not-svg'],
    ['empty', drawing(''), 'outline-missing'],
    ['only text', drawing('<text>front</text>'), 'outline-missing'],
    ['no scale at all', `<svg><path d="${square}"/></svg>`, 'scale-unknown'],
    [
      'pixels only',
      `<svg width="400" height="600" viewBox="0 0 400 600"><path d="${square}"/></svg>`,
      'scale-unknown',
    ],
    [
      'per cent',
      `<svg width="100%" height="100%" viewBox="0 0 400 600"><path d="${square}"/></svg>`,
      'scale-unknown',
    ],
    [
      'a test square that is none',
      `<svg><rect id="square" width="50" height="60"/><path d="${square}"/></svg>`,
      'square-not-square',
    ],
    [
      'a test square of five corners',
      `<svg><path id="square" d="M0 0L50 0L50 50L25 60L0 50Z"/><path d="${square}"/></svg>`,
      'square-not-square',
    ],
    ['a scale of nothing', `<svg><path d="${square}"/></svg>`, 'scale-not-a-number', { mmPerUnit: 0 }],
    [
      'a scale that is no number',
      `<svg><path d="${square}"/></svg>`,
      'scale-not-a-number',
      { mmPerUnit: Number.NaN },
    ],
    ['an open outline', drawing('<path d="M0 0L400 0L400 600L0 600L0 100"/>'), 'outline-open'],
    ['lines that do not meet', drawing('<path d="M0 0H400"/><path d="M400 50V600H0V0"/>'), 'outline-open'],
    ['a figure of eight', drawing('<path d="M0 0L400 600L400 0L0 600Z"/>'), 'outline-crosses'],
    ['a line there and back', drawing('<path id="outline" d="M0 0L400 0L0 0Z"/>'), 'outline-crosses'],
    ['a dot', drawing('<path d="M5 5Z"/>'), 'outline-missing'],
    ['far too large', drawing('<path d="M0 0H90000V90000H0Z"/>'), 'outline-too-large'],
    ['far too small', drawing('<path d="M0 0H9V9H0Z"/>'), 'outline-too-small'],
    ['a letter that is no command', drawing('<path d="M0 0 X 400 600"/>'), 'path-unreadable'],
    ['numbers missing', drawing('<path d="M0 0L400 0 400"/>'), 'path-unreadable'],
    ['not a number', drawing('<path d="M0 0LNaN 0L400 600Z"/>'), 'path-unreadable'],
    ['numbers beyond all measure', drawing('<path d="M0 0L1e300 0L400 600Z"/>'), 'path-unreadable'],
    ['no move first', drawing('<path d="L400 0L400 600Z"/>'), 'path-unreadable'],
    [
      'a transform that makes no sense',
      drawing(`<path transform="twist(3)" d="${square}"/>`),
      'path-unreadable',
    ],
    [
      'a transform without numbers',
      drawing(`<path transform="matrix(1 2)" d="${square}"/>`),
      'path-unreadable',
    ],
    ['a rectangle in per cent', drawing('<rect width="50%" height="50%"/>'), 'path-unreadable'],
    ['a transform to nothing', drawing(`<path transform="scale(0)" d="${square}"/>`), 'outline-missing'],
    ['a transform to infinity', drawing(`<path transform="scale(1e8)" d="${square}"/>`), 'outline-missing'],
    [
      'an entity in the path',
      `<!DOCTYPE svg [<!ENTITY e "M0 0">]>${drawing('<path d="&e;L400 0L400 600Z"/>')}`,
      'path-unreadable',
    ],
    [
      'entities within entities',
      `<!DOCTYPE svg [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;&a;">]>${drawing('<path d="&b;"/>')}`,
      'path-unreadable',
    ],
    [
      'an outline hidden from view',
      drawing(`<g style="display: none"><path d="${square}"/></g>`),
      'outline-missing',
    ],
    [
      'an outline in a store of symbols',
      drawing(`<defs><path d="${square}"/></defs><use href="#a"/>`),
      'left-out',
    ],
    [
      'a drawing within the drawing',
      drawing(`<svg viewBox="0 0 1 1"><path d="${square}"/></svg>`),
      'left-out',
    ],
    [
      'several pieces',
      drawing(
        ['a', 'b']
          .map((p) => `<path class="stitch" data-piece="${p}" data-edge="x" d="${square}"/>`)
          .join(''),
      ),
      'which-piece',
    ],
    ['a piece that is not there', drawing(`<path d="${square}"/>`), 'no-such-piece', { piece: 'sleeve' }],
    [
      'two edges of one name',
      drawing(
        '<path class="stitch" data-edge="x" d="M0 0H400V600"/><path class="stitch" data-edge="x" d="M400 600H0V0"/>',
      ),
      'edge-twice',
    ],
    [
      'more points than a pattern has',
      drawing(`<path d="M0 0${'l.1 .01'.repeat(4000)}L0 600Z"/>`),
      'outline-too-detailed',
    ],
    ['a path without end', drawing(`<path d="M0 0${' 1 1'.repeat(200_000)}"/>`), 'path-unreadable'],
  ])('%s', (_, svg, code, options) => {
    const result = read(svg, options);
    expect(result.ok).toBe(false);
    expect(result.issues.map((issue) => issue.code)).toContain(code);
    for (const { message } of result.issues) expect(message).toMatch(/^[A-Z].*[.?]$/);
  });

  test('a script is never run, and told of', () => {
    const svg = drawing(`<script>throw 1</script><path onload="alert(1)" d="${square}"/>`);
    expect(read(svg).ok).toBe(true);
    expect(codes(svg)).toEqual(['left-out']);
  });

  test('groups nested deeper than any drawing', () => {
    expect(read(drawing('<g>'.repeat(20_000) + '</g>'.repeat(20_000))).ok).toBe(false);
  });

  test.each([
    ['lines', '<path d="M0 0L10 10L20 5"/>'.repeat(760_000)],
    ['one line', `<path d="M0 0${'L1.5 2.5'.repeat(2_500_000)}"/>`],
  ])('a file of 20 MB of %s is answered in seconds', (_, content) => {
    const start = performance.now();
    expect(codes(drawing(content))).toEqual(['drawing-too-large']);
    expect(performance.now() - start).toBeLessThan(5_000);
  });

  test('a picture of 20 MB to trace over is no hindrance', () => {
    const picture = `<image href="data:image/png;base64,${'iVBORw0K'.repeat(2_500_000)}"/>`;
    const result = read(drawing(`${picture}<path d="${square}"/>`));
    expect(result.ok).toBe(true);
    expect(result.issues.map(({ code }) => code)).toEqual(['left-out']);
  });

  test('any bytes changed, taken out or put in: an answer, never an exception', () => {
    const svg = drawing(
      `<g transform="translate(10 10) rotate(5)"><path id="outline" d="M0 0c40 9 300-9 400 0l0 300a300 300 0 0 1-20 300H0z"/></g><path class="notch" d="M395 200h20"/>`,
      'width="10in" height="10in" viewBox="0 0 960 960"',
    );
    const edit = fc.record({
      at: fc.nat({ max: svg.length }),
      take: fc.nat({ max: 6 }),
      put: fc.oneof(
        fc.string({ maxLength: 4, unit: 'binary' }),
        fc.constantFrom('<', '>', '"', '&', 'e9', '-', '.', 'NaN', 'A', 'Z', 'M', '\0'),
      ),
    });
    fc.assert(
      fc.property(fc.array(edit, { minLength: 1, maxLength: 5 }), (edits) => {
        let text = svg;
        for (const { at, take, put } of edits) text = text.slice(0, at) + put + text.slice(at + take);
        const result = read(text);
        if (!result.ok) expect(result.issues.some(({ severity }) => severity === 'error')).toBe(true);
        else expect(signedArea(result.value.edges)).toBeGreaterThan(0);
      }),
      { numRuns: 200, endOnFailure: true },
    );
  });
});
