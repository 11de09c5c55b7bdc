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
  const root = read.ok ? read.value.elements[0] : undefined;
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
    // Nor where the file is put into a page: HTML knows no sections inside a title.
    expect(svg.replace('<?xml', '').match(/<[^/]/g)).toHaveLength(1);
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
    const paths = read.ok ? read.value.elements.filter(({ name }) => name === 'path') : [];
    expect(paths.map(({ transformed }) => transformed)).toEqual([true, true, false]);
  });

  test('resolves entities and character numbers, and refuses what is none', () => {
    const said = (text: string) => {
      const read = readMarkup(`<svg><text>${text}</text></svg>`);
      return read.ok ? read.value.elements[1]?.text : undefined;
    };
    expect(said('&lt;&gt;&amp;&quot;&apos;')).toBe('<>&"\'');
    expect(said('&#65;&#x42;&#x10FFFF;&#1114111;')).toBe('AB\u{10ffff}\u{10ffff}');
    for (const none of ['&#x110000;', '&#1114112;', '&nope;', '&', '&#0;'])
      expect(said(none)).toBeUndefined();
  });

  test('resolves the short entities that a file defines, as drawing programs do for name spaces, and says that it does', () => {
    const read = readMarkup(
      '<!DOCTYPE svg [<!ENTITY ns "http://www.w3.org/2000/svg">\n<!ENTITY b \'x\'>]><svg xmlns="&ns;">&b;&b;</svg>',
    );
    expect(read).toMatchObject({
      ok: true,
      value: {
        defining: true,
        elements: [{ attributes: { xmlns: 'http://www.w3.org/2000/svg' }, text: 'xx' }],
      },
    });
  });

  test.each([
    ['entities in entities', '<!ENTITY a "aaaa"><!ENTITY b "&a;&a;">', '&b;'],
    ['an entity of a page', `<!ENTITY b "${'x'.repeat(201)}">`, '&b;'],
    ['a file by its name', '<!ENTITY b SYSTEM "file:///etc/hostname">', '&b;'],
  ])('never resolves %s', (_, definitions, text) => {
    expect(readMarkup(`<!DOCTYPE svg [${definitions}]><svg>${text}</svg>`)).toMatchObject({
      ok: false,
      issues: [{ code: 'not-svg' }],
    });
  });

  test('gathers the words of an element, sections among them, and none of those in its children', () => {
    const read = readMarkup('<svg>a<!-- b --><g>c</g>d<![CDATA[<e>&amp;]]></svg>');
    expect(read.ok && read.value.elements.map(({ text }) => text)).toEqual(['ad<e>&amp;', 'c']);
  });

  test.each([
    ['an attribute twice', '<svg a="1" a="2"/>'],
    ['an attribute without quotes', '<svg a=1/>'],
    ['an angle bracket in an attribute', '<svg a="<"/>'],
    ['the end of a section outside one', '<svg>]]></svg>'],
    ['tags that cross', '<svg><a><b></a></b></svg>'],
    ['words behind the root', '<svg/>more'],
    ['two hyphens in a comment', '<svg><!-- a -- b --></svg>'],
  ])('refuses %s', (_, text) => {
    expect(readMarkup(text)).toMatchObject({ ok: false, issues: [{ code: 'not-svg' }] });
  });

  test.each(['', 'hello', '<svg>', '<svg><path></svg>', '<html></html>', '<svg/><svg/>', '</svg>', '<'])(
    'answers “%s” with an issue, not with a crash',
    (text) => {
      const read = readMarkup(text);
      expect(read).toMatchObject({ ok: false, issues: [{ code: 'not-svg' }] });
    },
  );
});
