import { describe, expect, test } from 'vitest';
import type { Curve } from '../../engine/geometry/curve.ts';
import { edgeLength, pointAlong } from '../../engine/geometry/edge.ts';
import { nearestOnEdge } from '../../engine/geometry/nearest.ts';
import { type Point, point } from '../../engine/geometry/point.ts';
import type { Garment } from '../../engine/pattern/garment.ts';
import type { Piece } from '../../engine/pattern/piece.ts';
import { type Reason, reasonsOf } from '../../engine/pattern/reasons.ts';
import { lessonContent } from '../../engine/render/lesson-sheet/content.ts';
import { drafted, shippedBodies, shippedBody } from './drafted.ts';

const plain = { shoulder: 'whole', front: 'plain', neckline: 'round', sleeve: 'plain' };
const fitting = [{ 'shorten strap': 1 }, { 'wedge from neckline': 0.5 }, { 'round back': 1 }];
const made: readonly (readonly [string, string, object])[] = [
  ...shippedBodies.flatMap(
    (body) =>
      [
        [body, 'dress', {}],
        [body, 'dress', plain],
        [body, 'skirt', { skirtLining: 'lined' }],
      ] as const,
  ),
  ...['leading-lady', 'wardrobe-mistress', 'understudy'].flatMap(
    (body) =>
      [
        [body, 'trial', { sleeve: 'plain' }],
        [body, 'bodice', {}],
        [body, 'bodice', { shoulder: 'whole', princess: 'neckline' }],
        [body, 'bodice', { shoulder: 'whole', front: 'plain', princess: 'armhole' }],
        [
          body,
          'dress',
          { ...plain, centreFront: 'parted', neckline: 'sweetheart', sleeve: 'long puff', inside: 'faced' },
        ],
      ] as const,
  ),
];

/** A pencil line is about as wide, mm. */
const PENCIL = 0.5;

/** All lines that the steps draw on one drawing. */
const linesOn = ({ steps }: Garment, on: string): readonly Curve[] =>
  steps.flatMap(({ draws }) =>
    (draws?.lines ?? []).filter((line) => line.on === on).flatMap((l) => l.curves),
  );

const away = (curves: readonly Curve[], at: Point): number => nearestOnEdge({ curves }, at).distance;

/** The drawing that a piece is cut from: one of its own, or that of its half of the bodice. */
const drawingOf = (garment: Garment, { name }: Piece): string =>
  linesOn(garment, name).length > 0 ? name : name.includes('back') ? 'back' : 'front';

describe.each(made)('the lesson for %s, %s %o', (body, garment, styling) => {
  const drawn = drafted(garment, shippedBody(body), styling).garment;

  test('places every point on a line that it draws', () => {
    const placed = drawn.steps.flatMap(({ draws }) => draws?.points ?? []);
    expect(placed.length).toBeGreaterThan(20);
    const off = placed.filter(({ on, at }) => away(linesOn(drawn, on), at) > PENCIL);
    expect(off.map(({ on, name }) => `${on}: ${name}`)).toEqual([]);
  });

  test('draws every edge of every piece that is drafted, where it was drafted', () => {
    const off = drawn.pieces
      .filter(({ name }) => !name.endsWith('lining'))
      .flatMap((piece) => {
        const lines = linesOn(drawn, drawingOf(drawn, piece));
        // The insert is drawn as its right half.
        const half = (p: Point): Point => (piece.name === 'insert' ? point(Math.abs(p.x), p.y) : p);
        return piece.edges
          .filter((edge) =>
            [0, 0.1, 0.25, 0.4, 0.5, 0.6, 0.75, 0.9, 1].some(
              (share) => away(lines, half(pointAlong(edge, share * edgeLength(edge)).point)) > PENCIL,
            ),
          )
          .map((edge) => `${piece.name}: ${edge.name}`);
      });
    expect(off).toEqual([]);
  });
});

/** What a place in a row says as it is printed: `131.1 by 17.9`, `20 the other way by 30 up`. */
const PLACE = /(\d+(?:\.\d+)?)( the other way)? by (\d+(?:\.\d+)?)( up)?/g;

/** All that can be drawn by the words of a lesson alone, with a ruler: strokes from place to place, by drawing. */
function ruled(garment: Garment): ReadonlyMap<string, readonly Curve[]> {
  const strokes = new Map<string, Curve[]>();
  const said = lessonContent(garment, {}).chapters.flatMap(({ steps }) =>
    steps.flatMap(({ lines }) => lines),
  );
  for (const words of said) {
    const on = /^On the (.+?), /.exec(words)?.[1] ?? '';
    const places = [...words.matchAll(PLACE)].map(([, x, across, y, along]) =>
      point(across ? -Number(x) : Number(x), along ? -Number(y) : Number(y)),
    );
    const between = places.slice(1).map((to, i): Curve => ({ kind: 'line', from: places[i] ?? to, to }));
    strokes.set(on, [...(strokes.get(on) ?? []), ...between]);
  }
  return strokes;
}

describe.each(made)('the words of the lesson for %s, %s %o', (body, garment, styling) => {
  const drawn = drafted(garment, shippedBody(body), styling).garment;
  const byRuler = ruled(drawn);

  test('lead a pencil along every curve that is drawn, within its width', () => {
    const off = drawn.steps
      .flatMap(({ draws }) => draws?.lines ?? [])
      .filter(({ curves }) => curves.some(({ kind }) => kind === 'cubic'))
      .filter(({ on, curves }) =>
        [0, 0.1, 0.25, 0.4, 0.5, 0.6, 0.75, 0.9, 1].some(
          (share) =>
            away(
              byRuler.get(on) ?? [],
              pointAlong({ name: '', curves }, share * edgeLength({ name: '', curves })).point,
            ) > PENCIL,
        ),
      );
    expect(off.map(({ on, name }) => `${on}: ${name}`)).toEqual([]);
  });

  test('lead it nowhere else', () => {
    const off = [...byRuler].flatMap(([on, strokes]) =>
      strokes.filter((stroke) =>
        [0, 0.5, 1].some((t) => {
          const at = point(
            stroke.from.x + t * (stroke.to.x - stroke.from.x),
            stroke.from.y + t * (stroke.to.y - stroke.from.y),
          );
          return away(linesOn(drawn, on), at) > PENCIL;
        }),
      ),
    );
    expect(off).toEqual([]);
    expect([...byRuler.values()].flat().length).toBeGreaterThan(30);
  });
});

describe('every number of a draft', () => {
  const leaves = ({ ground, step, from }: Reason): readonly string[] =>
    step || ground.origin.kind === 'step' ? from.flatMap(leaves) : [ground.origin.kind];

  test.each([
    ['bodice', {}],
    ['dress', {}],
    ['dress', plain],
    ['dress', { opening: 'side', sleeve: 'none', skirtLining: 'lined', hemSweep: 2600 }],
    ['skirt', {}],
    ['trial', {}],
  ])('rests on the tape, a choice, a rule or the fitting: %s %o', (garment, styling) => {
    for (const found of [[], fitting]) {
      const { steps } = drafted(garment, { ...shippedBody('leading-lady'), fitting: found }, styling).garment;
      const inTheAir = steps.filter(
        (step) => step.value !== undefined && leaves(reasonsOf(step, steps)).length === 0,
      );
      expect(inTheAir.map(({ title }) => title)).toEqual([]);
    }
  });
});
