import { describe, expect, test } from 'vitest';
import { isCalled, marksOf, meaningOf, ownName } from '../../../engine/reading/marked.ts';
import { type FoundElement, readMarkup } from '../../../engine/reading/read-markup.ts';

/** The innermost path of a drawing. */
function pathIn(content: string, root = ''): FoundElement {
  const read = readMarkup(`<svg ${root}>${content}</svg>`);
  const path = read.ok ? read.value.elements.find(({ name }) => name === 'path') : undefined;
  if (!path) throw new Error('no path');
  return path;
}

describe('a line is called', () => {
  test.each([
    ['by its id', '<path id="back yoke"/>'],
    ['by a label', '<path x:label="back yoke"/>'],
    ['by its piece', '<path data-piece="back yoke"/>'],
    ['by a group around it', '<g id="back yoke"><g><path/></g></g>'],
    ['in capitals and with blanks around', '<path id=" Back YOKE "/>'],
  ])('%s', (_, content) => {
    expect(isCalled(pathIn(content), ' Back yoke')).toBe(true);
    expect(isCalled(pathIn(content), 'yoke')).toBe(false);
  });

  test.each([
    ['its class', '<path class="back yoke"/>'],
    ['other data of it', '<path data-edge="back yoke"/>'],
    ['an attribute that only begins with “label”', '<path labelled="back yoke"/>'],
    ['a line beside it', '<g><path/><g id="back yoke"/></g>'],
  ])('not by %s', (_, content) => {
    expect(isCalled(pathIn(content), 'back yoke')).toBe(false);
  });

  test('not by the whole drawing', () => {
    expect(isCalled(pathIn('<path/>', 'id="back yoke"'), 'back yoke')).toBe(false);
  });
});

describe('what a line is', () => {
  test.each([
    ['its class', '<path class="notch"/>', 'notch'],
    ['its id', '<path id="grainline-2"/>', 'grain'],
    ['its label', '<path x:label="Stitching line"/>', 'outline'],
    ['its data', '<path data-kind="cut"/>', 'cut'],
    ['the group around it', '<g class="level"><path/></g>', 'guide'],
    ['the nearest mark', '<g class="cut"><path class="notch"/></g>', 'notch'],
    ['its class before its id', '<path id="cut" class="notch"/>', 'notch'],
    ['its id before its label', '<path x:label="cut" id="notch"/>', 'notch'],
    ['nothing else', '<path title="notch" class="notchy constructor"/>', undefined],
  ])('is told by %s', (_, content, meaning) => {
    expect(meaningOf(pathIn(content))).toBe(meaning);
  });

  test('is told by all its words, its own before those around it, and long ones are no marks', () => {
    const path = pathIn(
      `<g id="Left-Hem2"><path class="fold, cut" title="no" data-x="${'x'.repeat(201)}"/></g>`,
    );
    expect(marksOf(path).filter(Boolean)).toEqual(['fold', 'cut', 'left', 'hem']);
    expect(marksOf(pathIn(`<path id="${'x'.repeat(200)}"/>`))).toEqual(['x'.repeat(200)]);
  });
});

describe('the own name of a line', () => {
  test('is the one it is drawn under, then its label, then its id', () => {
    expect(ownName(pathIn('<path id="c" x:label="b" data-edge=" a "/>'), 'edge')).toBe('a');
    expect(ownName(pathIn('<path id="c" x:label="b" data-edge="a"/>'), 'notch')).toBe('b');
    expect(ownName(pathIn('<path id="c"/>'), 'notch')).toBe('c');
    expect(ownName(pathIn('<g id="d"><path/></g>'), 'notch')).toBeUndefined();
    expect(ownName(pathIn('<path id="  "/>'), 'edge')).toBeUndefined();
    expect(ownName(pathIn(`<path id="${'n'.repeat(70)}"/>`), 'edge')).toHaveLength(60);
  });
});
