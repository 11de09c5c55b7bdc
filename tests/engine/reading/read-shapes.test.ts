import { describe, expect, test } from 'vitest';
import { boundingBox } from '../../../engine/geometry/bounds.ts';
import { edgeLength } from '../../../engine/geometry/edge.ts';
import { readMarkup } from '../../../engine/reading/read-markup.ts';
import { readShapes } from '../../../engine/reading/read-shapes.ts';

function shapesIn(content: string) {
  const read = readMarkup(`<svg>${content}</svg>`);
  if (!read.ok) throw new Error('not SVG');
  return readShapes(read.value.elements);
}

/** Where the lines of a drawing lie: left, top, right, bottom of each, its length, and whether it is closed. */
const measured = (content: string) =>
  shapesIn(content).lines.map(({ curves, closed }) => {
    const { left, top, right, bottom } = boundingBox(curves);
    return [
      ...[left, top, right, bottom, edgeLength({ name: '', curves })].map((value) =>
        Number(value.toFixed(3)),
      ),
      closed,
    ];
  });

describe('a shape', () => {
  test.each<[string, readonly (number | boolean)[]]>([
    ['<rect x="10" y="20" width="30" height="40"/>', [10, 20, 40, 60, 140, true]],
    ['<rect width="30" height="40"/>', [0, 0, 30, 40, 140, true]],
    ['<line x1="1" y1="2" x2="4" y2="6"/>', [1, 2, 4, 6, 5, false]],
    ['<polygon points="0,0 3,0 3,4"/>', [0, 0, 3, 4, 12, true]],
    ['<polyline points="0,0 3,0 3,4"/>', [0, 0, 3, 4, 7, false]],
    ['<circle cx="10" cy="20" r="5"/>', [5, 15, 15, 25, 31.416, true]],
    ['<path d="M0 0H3V4"/>', [0, 0, 3, 4, 7, false]],
    // A corner of 5 mm for two sides of 5 mm: 2 pi 5 - 8 x 5 mm shorter than 140.
    ['<rect x="10" y="20" width="30" height="40" rx="5"/>', [10, 20, 40, 60, 131.416, true]],
    ['<rect x="10" y="20" width="30" height="40" ry="5"/>', [10, 20, 40, 60, 131.416, true]],
    ['<rect x="10" y="20" width="30" height="40" rx="5" ry="0"/>', [10, 20, 40, 60, 140, true]],
    ['<rect width="20" height="20" rx="90"/>', [0, 0, 20, 20, 62.832, true]],
  ])('%s lies where it is drawn', (shape, wanted) => {
    expect(measured(shape)).toEqual([wanted]);
  });

  test('is measured whatever blanks stand about its numbers', () => {
    expect(measured('<line x1=" 1px " y1=" 2" x2="4 " y2="\t6 "/>')[0]?.slice(0, 4)).toEqual([1, 2, 4, 6]);
    expect(measured('<line x1="1" y1="2" x2="  " y2="6"/>')).toEqual([]);
  });

  test('of an ellipse reaches as far as its radii on either side', () => {
    expect(measured('<ellipse cx="10" cy="20" rx="4" ry="9"/>')[0]?.slice(0, 4)).toEqual([6, 11, 14, 29]);
  });

  test('without extent draws nothing', () => {
    expect(measured('<circle cx="1" cy="1"/><ellipse rx="3"/><ellipse ry="3"/>')).toEqual([]);
  });

  test('stands where its own transform and those around it put it, the innermost first', () => {
    const line = '<line transform="scale(2)" x1="1" y1="2" x2="4" y2="6"/>';
    expect(measured(`<g transform="translate(100 0)">${line}</g>`)).toEqual([[102, 4, 108, 12, 10, false]]);
    expect(
      measured(`<g style="fill:none;transform:translate(5px,0)" transform="scale(9)">${line}</g>`),
    ).toEqual([[7, 4, 13, 12, 10, false]]);
  });

  test.each([
    ['<rect x="2e6" width="30" height="40"/>'],
    ['<rect x="2e6" width="30" height="40" rx="5"/>'],
    ['<rect width="30" height="2000001" rx="5"/>'],
    ['<rect width="30%" height="40"/>'],
    ['<line x1="" x2="3"/>'],
    ['<circle r="3cm"/>'],
    ['<ellipse cx="one" rx="1" ry="1"/>'],
    ['<path d="M0 0 Q"/>'],
    ['<polygon points="0,0 3"/>'],
    ['<path transform="turn(3)" d="M0 0H3"/>'],
  ])('%s is told to be unreadable', (shape) => {
    const { lines, unreadable } = shapesIn(shape);
    expect(lines).toEqual([]);
    expect(unreadable).toHaveLength(1);
  });

  test.each([
    '<rect x="one" width="30" height="40" rx="5"/>',
    '<rect width="30" height="4e" rx="5" ry="2"/>',
    '<ellipse cx="one" rx="1" ry="1"/>',
  ])('%s is told to have measures that are no plain numbers', (shape) => {
    expect(shapesIn(shape).unreadable[0]?.reason).toBe('its measures are not plain numbers');
  });

  test('that is not drawn where it stands is left alone, and so is what is no line to follow', () => {
    const line = '<path d="M0 0H3"/>';
    for (const around of ['defs', 'symbol', 'clipPath', 'mask', 'pattern', 'marker'])
      expect(measured(`<${around}>${line}</${around}>`)).toEqual([]);
    expect(
      measured('<path display="none" d="M0 0H3"/><g style="display : none"><path d="M0 0H3"/></g>'),
    ).toEqual([]);
    expect([...shapesIn(`<use/><image/>${line}<svg>${line}</svg>`).leftOut]).toEqual(['use', 'image', 'svg']);
    expect(measured(`<svg>${line}</svg>`)).toEqual([]);
    expect([...shapesIn('<style>path { fill: none }</style>').leftOut]).toEqual([]);
    expect([...shapesIn('<style>path { display: none }</style>').leftOut]).toEqual(['style']);
  });
});
