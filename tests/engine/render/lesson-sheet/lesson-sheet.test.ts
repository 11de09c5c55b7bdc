import { describe, expect, it } from 'vitest';
import { edgeLength } from '../../../../engine/geometry/edge.ts';
import { type Point, point } from '../../../../engine/geometry/point.ts';
import type { PlacedPoint, Step } from '../../../../engine/pattern/garment.ts';
import { lessonContent } from '../../../../engine/render/lesson-sheet/content.ts';
import { lessonPages } from '../../../../engine/render/lesson-sheet/lesson-pages.ts';
import { lessonSheet } from '../../../../engine/render/lesson-sheet/lesson-sheet.ts';
import { garment as sample } from '../../garments.ts';

const line = (on: string, name: string, from: Point, to: Point) => ({
  on,
  name,
  curves: [{ kind: 'line' as const, from, to }],
});
const placed = (on: string, name: string, at: Point): PlacedPoint => ({ on, name, at });
const [corner, side] = [point(0, 400), point(150, 400)];

const step = (number: number, rest: Partial<Step>): Step => ({
  number,
  title: `Step ${number}`,
  says: ['half of 300'],
  formula: '300 / 2',
  value: 150,
  unit: 'mm',
  source: 'a book, 1911',
  from: [],
  ...rest,
});

const garment = sample([], {
  steps: [
    step(1, {
      heading: 'The back',
      draws: {
        points: [placed('back', 'centre', corner)],
        lines: [line('back', 'centre back', point(0, 0), corner)],
      },
    }),
    step(2, { heading: 'The back' }),
    step(3, {
      heading: 'The waist',
      draws: {
        points: [placed('back', 'side', side), placed('front', 'pivot', point(-20, -30))],
        lines: [line('back', 'waist', corner, side)],
      },
    }),
  ],
});
const { chapters, title } = lessonContent(garment, {});
const shown = chapters.flatMap(({ steps }) => steps);

describe('the lesson', () => {
  it('has a chapter for every heading, with its steps', () => {
    expect(title).toContain('Drawing the sample for the understudy');
    expect(chapters.map(({ heading, steps }) => [heading, steps.map(({ number }) => number)])).toEqual([
      ['The back', [1, 2]],
      ['The waist', [3]],
    ]);
  });

  it('says where each point lies that a step places', () => {
    expect(shown[2]?.places).toEqual([
      'On the back: side 150 out, 400 down.',
      'On the front: pivot 20 the other way, 30 up.',
    ]);
  });

  it('says by its ends where a straight line runs whose ends have no names, and where a curve does by places on it', () => {
    // A quarter circle of 100 mm by the usual handles: chords of it that stray by less than 0.4 mm subtend 10 degrees or less.
    const k = (4 / 3) * (Math.SQRT2 - 1) * 100;
    const quarter = {
      kind: 'cubic' as const,
      from: point(100, 0),
      handle1: point(100, k),
      handle2: point(k, 100),
      to: point(0, 100),
    };
    const told = lessonContent(
      sample([], {
        steps: [
          step(1, {
            draws: {
              points: [placed('back', 'centre', corner), placed('back', 'side', side)],
              lines: [
                line('back', 'waist', corner, side),
                line('back', 'hem', point(0, 500), side),
                { on: 'back', name: 'armhole', curves: [quarter] },
              ],
            },
          }),
        ],
      }),
      {},
    ).chapters.flatMap(({ steps }) => steps.flatMap(({ lines }) => lines));
    expect(told[0]).toBe('On the back, hem, straight, out by down: 0 by 500; 150 by 400.');
    expect(told[1]).toMatch(/^On the back, armhole, out by down: 100 by 0; .* 0 by 100\.$/);
    const places = [...(told[1] ?? '').matchAll(/(\d+(?:\.\d+)?) by (\d+(?:\.\d+)?)/g)];
    for (const [, x, y] of places) expect(Math.hypot(Number(x), Number(y))).toBeCloseTo(100, 0);
    expect(places.length).toBeGreaterThanOrEqual(90 / 10);
    expect(told).toHaveLength(2);
  });

  it('draws what a step adds heavy and named, and what stood before light', () => {
    const picture = shown[2]?.pictures[0]?.picture;
    const heavy = picture?.lines.filter(({ weight }) => weight === 'heavy') ?? [];
    const light = picture?.lines.filter(({ weight }) => weight === 'cut') ?? [];
    // The waist, and the two arms of the cross at its end.
    expect(heavy.length).toBe(3);
    expect(light.length).toBe(1);
    expect(picture?.words.map(({ text }) => text)).toEqual(['side']);
  });

  it('draws to the scale that it names, one for the whole drawing', () => {
    expect(shown.flatMap(({ pictures }) => pictures.map(({ caption }) => caption))).toEqual([
      'back, 1 : 5',
      'back, 1 : 5',
      'front, 1 : 1',
    ]);
    const waist = shown[2]?.pictures[0]?.picture.lines.find(({ weight }) => weight === 'heavy');
    expect(edgeLength({ name: 'waist', curves: waist?.curves ?? [] })).toBeCloseTo(150 / 5, 9);
  });

  it('has no drawing where a step draws nothing', () => {
    expect(shown[1]?.pictures).toEqual([]);
  });

  it('stands as HTML and as pages with the same words', () => {
    const page = lessonSheet(garment, { date: '4 May 2031' });
    const printed = lessonPages(garment, { date: '4 May 2031' }).flatMap(({ parts }) =>
      parts.flatMap(({ ink }) => ink.flatMap((each) => (each.kind === 'words' ? [each.text] : []))),
    );
    for (const words of [
      'The back',
      'Step 3',
      'half of 300 = 150 mm',
      'a book, 1911',
      'back, 1 : 5',
      'side',
    ]) {
      expect(page).toContain(words);
      expect(printed).toContain(words);
    }
    expect(page).toContain('4 May 2031');
    expect(page).not.toContain('<script');
  });
});
