import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { signedArea } from '../../../engine/geometry/outline.ts';
import { readOutline, type TracingOptions } from '../../../engine/reading/read-outline.ts';

const corner = (25 * Math.PI) / 180;

const read = (svg: string, options: Partial<TracingOptions> = {}) => readOutline(svg, { corner, ...options });

/** A drawing whose one unit is half a millimetre, by its square of 100 units. */
const drawing = (content: string, attributes = ''): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" ${attributes}><rect id="test-square" x="900" y="0" width="100" height="100"/>${content}</svg>`;

const square = 'M0 0L400 0L400 600L0 600Z';

const codes = (svg: string, options: Partial<TracingOptions> = {}): readonly string[] =>
  read(svg, options).issues.map(({ code }) => code);

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
      'an entity that nothing defines',
      `<!DOCTYPE svg [<!ENTITY e "M0 0">]>${drawing('<path d="&f;L400 0L400 600Z"/>')}`,
      'not-svg',
    ],
    [
      'entities within entities',
      `<!DOCTYPE svg [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;&a;">]>${drawing('<path d="&b;"/>')}`,
      'not-svg',
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
