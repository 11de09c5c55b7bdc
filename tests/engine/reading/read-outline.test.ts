import { describe, expect, test } from 'vitest';
import { edgeLength } from '../../../engine/geometry/edge.ts';
import { signedArea } from '../../../engine/geometry/outline.ts';
import { readOutline, type TracingOptions } from '../../../engine/reading/read-outline.ts';
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
  test('a rectangle with round corners keeps them', () => {
    const [round, ...more] = traced(drawing('<rect width="400" height="600" rx="40"/>')).edges;
    expect(more).toEqual([]);
    // Straight sides of 160 and 260 mm and a whole circle of radius 20 mm.
    expect(round ? edgeLength(round) : 0).toBeCloseTo(2 * (160 + 260) + 2 * Math.PI * 20, 3);
  });

  test('rules of style that may move lines are told of', () => {
    const style = '<style>path { transform: scale(2) }</style>';
    expect(codes(drawing(`${style}<path d="${square}"/>`))).toEqual(['left-out']);
    expect(codes(drawing(`<style>path { fill: red }</style><path d="${square}"/>`))).toEqual([]);
  });

  test('a line of which one part lies beyond every sheet is no outline', () => {
    const far = '<g transform="scale(1e5)"><path d="M0 0L.001 0L900 900L0 .001Z"/></g>';
    expect(codes(drawing(far))).toContain('outline-missing');
    expect(lengths(traced(drawing(`<path d="${square}"/>${far}`)))[0]).toBeCloseTo(200, 9);
  });

  test('a cutting line is the outline only where it is wanted', () => {
    const both = drawing(`<path class="cut" d="M-20 -20H420V620H-20Z"/><path class="stitch" d="${square}"/>`);
    expect(lengths(traced(both))[0]).toBeCloseTo(200, 9);
    expect(lengths(traced(both, { line: 'cutting' }))[0]).toBeCloseTo(220, 9);
    expect(lengths(traced(drawing(`<path d="${square}"/>`), { line: 'cutting' }))[0]).toBeCloseTo(200, 9);
  });

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
    [
      'turned in its style',
      '<path style="fill:none; transform: rotate(90deg) translate(0px, -400px)" d="M0 0H600V400H0Z"/>',
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

  test('a stroke in a group of notches is one, though its own name would leave it out', () => {
    const stroke = '<path aria-label="gather start" d="M100 590v20"/>';
    const found = (label: string) =>
      traced(drawing(`<path d="${square}"/><g aria-label="${label}">${stroke}</g>`)).notches;
    expect(found('notches')).toMatchObject([{ name: 'gather start', mark: 'gather' }]);
    expect(found('rows of stitching to gather')).toEqual([]);
  });
});

describe('a test square', () => {
  const page = (content: string, size = 'width="400mm" height="600mm" viewBox="0 0 400 600"'): string =>
    `<svg ${size}>${content}</svg>`;
  const nameless = '<rect x="300" y="500" width="50" height="50"/>';
  const small = '<path d="M10 10H50V40H10Z"/>';

  test.each([
    ['lost its name', page(nameless + small), ['scale-from-drawing']],
    ['is not there', page(small), ['scale-from-drawing']],
    ['of 2 in lost its name', page(`<rect width="50.8" height="50.8"/>${small}`), ['scale-from-drawing']],
  ])('that %s never becomes the piece, and the message says that there is none', (_, svg, said) => {
    expect(traced(svg).edges.map(({ curves }) => curves[0]?.to)).toContainEqual({ x: 50, y: 40 });
    expect(codes(svg)).toEqual(said);
    expect(read(svg).issues[0]?.message).toContain('There is no test square');
  });

  test('alone on the page is no piece, with its name or without it, unless it is called the outline', () => {
    expect(codes(page(nameless))).toEqual(['outline-missing', 'scale-from-drawing']);
    expect(read(page(nameless)).issues.map(({ message }) => message)).toEqual([
      expect.stringContaining('only a test square'),
      expect.stringContaining('no test square that is called so'),
    ]);
    expect(codes(page(nameless.replace('<rect', '<rect id="test square"')))).toEqual(['outline-missing']);
    expect(codes(page(nameless), { mmPerUnit: 1 })).toEqual(['outline-missing', 'square-missing']);
    expect(traced(page(nameless.replace('<rect', '<rect class="outline"'))).edges).toHaveLength(4);
    expect(
      traced(page(nameless.replace('<rect', '<rect id="pocket"')), { piece: 'pocket' }).edges,
    ).toHaveLength(4);
  });

  test('that is not there is said where nothing else tells the scale', () => {
    expect(read(page(small, '')).issues[0]).toMatchObject({
      code: 'scale-unknown',
      message: expect.stringMatching(/^There is no test square/),
    });
  });
});

describe('the scale', () => {
  const bare = `<svg width="400mm" height="600mm" viewBox="0 0 400 600"><path d="M10 10H210V310H10Z"/></svg>`;

  test('comes from what she says, else from the square, else from the drawing, with a warning', () => {
    expect(traced(bare)).toMatchObject({ mmPerUnit: 1, scaleFrom: 'drawing' });
    expect(codes(bare)).toEqual(['scale-from-drawing']);
    expect(traced(bare, { mmPerUnit: 2 })).toMatchObject({ mmPerUnit: 2, scaleFrom: 'given' });
    expect(codes(bare, { mmPerUnit: 2 })).toEqual(['square-missing', 'scales-differ']);
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
