import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readMarkup } from '../../../engine/reading/read-markup.ts';
import { document, element, words } from '../../../engine/render/markup.ts';

/** Writes a text and an attribute, and reads both back. */
function roundTrip(text: string): {
  readonly attribute: string | undefined;
  readonly text: string | undefined;
} {
  const svg = document(element('svg', { 'data-piece': text }, words(text)));
  const read = readMarkup(svg);
  const root = read.ok ? read.value[0] : undefined;
  return { attribute: root?.attributes['data-piece'], text: root?.text };
}

describe('text from files', () => {
  test.each([
    '<script>alert(1)</script>',
    '</text></svg><svg onload="x">',
    ']]>',
    ']]>]]><script>',
    'a]]]]>b&]]>c',
    `"quotes" and 'quotes'`,
    '&amp; &lt;',
    '<![CDATA[ <b> ]]>',
    '<!-- no -->',
    'Zoë Ærø 衣装 🧵',
  ])('%s stands in the file as words, never as markup', (text) => {
    const svg = document(element('svg', { 'data-piece': text }, words(text)));
    expect(roundTrip(text)).toEqual({ attribute: text, text });
    const outside = svg.replace(/<!\[CDATA\[[\s\S]*?\]\]>/g, '').replace(/"[^"]*"/g, '');
    expect(outside).not.toMatch(/<(script|b|!--)|onload|<\/text/);
    expect(outside.match(/<[a-z]/g)).toHaveLength(1);
  });

  test('control characters and broken surrogates, which no XML file may hold, become spaces', () => {
    const svg = document(element('svg', { id: 'a\u0000\u001b[2Jb' }, words('c\ud800d\u0007e\u009bf\ufffeg')));
    expect(svg).toContain('id="a  [2Jb"');
    expect(svg).toContain('c d e f g');
  });

  test('whatever the words, the file holds one element with those words', () => {
    const printable = fc.string({ unit: 'grapheme-ascii', minLength: 1 }).filter((s) => s.trim() !== '');
    const wild = fc.string({
      unit: fc.constantFrom(']', '>', '<', '&', '"', "'", '!', '[', 'CDATA', '-', 'x', '/'),
      minLength: 1,
    });
    fc.assert(
      fc.property(fc.oneof(printable, wild), (text) => {
        expect(roundTrip(text)).toEqual({ attribute: text, text });
      }),
    );
  });
});

describe('reading markup', () => {
  test('marks what is transformed, by itself or by what it stands in', () => {
    const read = readMarkup(
      '<svg><g transform="scale(2)"><path d="M0 0"/></g><path transform="x"/><path/></svg>',
    );
    const paths = read.ok ? read.value.filter(({ name }) => name === 'path') : [];
    expect(paths.map(({ transformed }) => transformed)).toEqual([true, true, false]);
  });

  test('resolves entities and character numbers, and leaves alone what is none', () => {
    const said = (text: string) => {
      const read = readMarkup(`<svg><text>${text}</text></svg>`);
      return read.ok ? read.value[1]?.text : undefined;
    };
    expect(said('&lt;&gt;&amp;&quot;&apos;')).toBe('<>&"\'');
    expect(said('&#65;&#x42;&#x10FFFF;&#1114111;')).toBe('AB\u{10ffff}\u{10ffff}');
    expect(said('&#x110000;&#1114112;&nope;')).toBe('&#x110000;&#1114112;&nope;');
  });

  test.each(['', 'hello', '<svg>', '<svg><path></svg>', '<html></html>', '<svg/><svg/>', '</svg>', '<'])(
    'answers “%s” with an issue, not with a crash',
    (text) => {
      const read = readMarkup(text);
      expect(read).toMatchObject({ ok: false, issues: [{ code: 'not-svg' }] });
    },
  );
});
