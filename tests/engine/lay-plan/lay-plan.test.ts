import { describe, expect, test } from 'vitest';
import { cuttingLines } from '../../../engine/finishing/cut-lines.ts';
import { contains } from '../../../engine/geometry/inside.ts';
import { nearestOnEdge } from '../../../engine/geometry/nearest.ts';
import { signedArea } from '../../../engine/geometry/outline.ts';
import { point } from '../../../engine/geometry/point.ts';
import { polygonOf } from '../../../engine/geometry/polygon.ts';
import { PARALLEL } from '../../../engine/geometry/tolerance.ts';
import { scaledFrom, transformedEdge } from '../../../engine/geometry/transform.ts';
import { doubledArea } from '../../../engine/lay/problem.ts';
import { type Cloth, lengthNeeded, stripWidth } from '../../../engine/lay-plan/cloth.ts';
import { layPage, laySvg } from '../../../engine/lay-plan/lay-drawing.ts';
import { type LayTask, layPlan, layTasks, piecesAsked } from '../../../engine/lay-plan/lay-plan.ts';
import { clear, flatness, outwardPolygon } from '../../../engine/lay-plan/outward.ts';
import { provePlan } from '../../../engine/lay-plan/prove-plan.ts';
import type { CutCount } from '../../../engine/pattern/piece.ts';
import { textWidth } from '../../../engine/render/text-size.ts';
import { drafted, shippedBody } from '../../drafts/drafted.ts';
import { laid } from '../lay/shapes.ts';

const cloth: Cloth = { width: 1400, folded: true, nap: false, selvedge: 10, gap: 0, shrink: 0, stripe: 0 };
const bodice = drafted('bodice', shippedBody('leading-lady')).garment;
const lines = cuttingLines(bodice, PARALLEL);

function tasksOn(given: Partial<Cloth>, garment = bodice): readonly LayTask[] {
  const tasks = layTasks(garment, lines, { ...cloth, ...given });
  if (!tasks.ok) throw new Error(tasks.issues.map(({ message }) => message).join('\n'));
  return tasks.value;
}

const selfOn = (given: Partial<Cloth>): LayTask => {
  const task = tasksOn(given).find(({ clothName }) => clothName === 'self');
  if (!task) throw new Error('no cloth');
  return task;
};

const kindsOf = (task: LayTask, name: string) =>
  task.pieces
    .filter(({ piece }) => piece === name)
    .map(({ count, gives, onFold, turnedOver, ways }) => ({
      count,
      gives,
      onFold,
      turnedOver,
      ways: ways.length,
    }));

describe('what is laid of a garment', () => {
  test('there is a task for each cloth that its pieces name', () => {
    expect(tasksOn({}).map(({ clothName }) => clothName)).toEqual(['self', 'lining']);
  });

  test('on folded cloth a pair is laid once, either side up, and a piece on the fold once, as a half', () => {
    const task = selfOn({});
    expect(kindsOf(task, 'side back')).toEqual([
      { count: 1, gives: 2, onFold: false, turnedOver: false, ways: 4 },
    ]);
    expect(kindsOf(task, 'centre front')).toEqual([
      { count: 1, gives: 1, onFold: true, turnedOver: false, ways: 2 },
    ]);
  });

  test('on open cloth a pair is laid as drawn and turned over, and a piece on the fold whole', () => {
    const task = selfOn({ folded: false });
    expect(kindsOf(task, 'side back')).toEqual([
      { count: 1, gives: 1, onFold: false, turnedOver: false, ways: 2 },
      { count: 1, gives: 1, onFold: false, turnedOver: true, ways: 2 },
    ]);
    expect(kindsOf(task, 'centre front')).toEqual([
      { count: 1, gives: 1, onFold: false, turnedOver: false, ways: 2 },
    ]);
  });

  test('a hollow piece that no line goes round at half the gap is refused once, with what would do', () => {
    const made = drafted('dress', shippedBody('front-of-house'));
    const refused = layTasks(made.garment, cuttingLines(made.garment, PARALLEL), {
      ...cloth,
      width: 3000,
      gap: 100,
    });
    expect(refused.ok).toBe(false);
    expect(refused.issues).toMatchObject([
      {
        code: 'piece-not-laid',
        path: 'front strap',
        message: expect.stringContaining('Ask for a smaller gap.'),
      },
    ]);
  });

  test('a whole has twice the area of its half', () => {
    const area = (task: LayTask) => {
      const [piece] = task.pieces.filter((one) => one.piece === 'centre front');
      return piece ? signedArea([piece.line]) : 0;
    };
    expect(area(selfOn({ folded: false }))).toBeCloseTo(2 * area(selfOn({})), 3);
  });

  test('with nap nothing lies upside down', () => {
    for (const task of [selfOn({ nap: true }), selfOn({ nap: true, folded: false })])
      expect(
        task.pieces.flatMap(({ ways }) => ways.map(({ turn }) => turn)).every((turn) => turn === 0),
      ).toBe(true);
  });

  test('a piece whose printed side is to face down is turned over', () => {
    const cut: CutCount = { cloth: 'self', count: 1, onFold: false, pair: false, printedSide: 'down' };
    const pieces = bodice.pieces.map((piece) =>
      piece.name === 'side back' ? { ...piece, cut: [cut] } : piece,
    );
    const [task] = tasksOn({ folded: false }, { ...bodice, pieces });
    expect(task && kindsOf(task, 'side back')).toEqual([
      { count: 1, gives: 1, onFold: false, turnedOver: true, ways: 2 },
    ]);
  });

  test('a single piece is cut of the upper layer of folded cloth, whose wrong side is up', () => {
    const cut = { cloth: 'self', count: 1, onFold: false, pair: false } as const;
    const single = (printedSide?: 'down') => ({
      ...bodice,
      pieces: bodice.pieces.map((piece) =>
        piece.name === 'side back'
          ? { ...piece, cut: [{ ...cut, ...(printedSide && { printedSide }) }] }
          : piece,
      ),
    });
    const overOf = (garment: typeof bodice): boolean | undefined => {
      const [task] = tasksOn({}, garment);
      return task && kindsOf(task, 'side back')[0]?.turnedOver;
    };
    expect(overOf(single())).toBe(true);
    expect(overOf(single('down'))).toBe(false);
  });

  test('a piece broader than the cloth is refused in words', () => {
    const tasks = layTasks(bodice, lines, { ...cloth, width: 300 });
    expect(tasks.ok).toBe(false);
    expect(tasks.issues[0]?.code).toBe('shape-too-broad');
  });
});

describe('the polygon round a cutting line', () => {
  test.each([0, 3])('lies outside it, at least half the gap of %d mm away and little more', (gap) => {
    for (const line of lines.values()) {
      const polygon = outwardPolygon(line, gap) ?? [];
      const points = polygon.flatMap((p, i) => {
        const q = polygon[(i + 1) % polygon.length] ?? p;
        return Array.from({ length: 8 }, (_, k) => ({
          x: p.x + ((q.x - p.x) * k) / 8,
          y: p.y + ((q.y - p.y) * k) / 8,
        }));
      });
      const away = points.map((p) => nearestOnEdge(line, p).distance);
      expect(Math.min(...away)).toBeGreaterThanOrEqual(gap / 2);
      expect(Math.max(...away)).toBeLessThan(gap / 2 + 2 * flatness + clear);
      expect(Math.abs(doubledArea(polygon)) / 2).toBeGreaterThan(signedArea([line]));
      expect(polygon.length).toBeLessThan(polygonOf([line], 0.05).length);
    }
  });
});

describe('a written plan', () => {
  const task = selfOn({ gap: 2 });
  const plan = layPlan(task, laid(task.problem, 60), bodice);
  const svg = laySvg(plan, '0.7 m');
  const asked = piecesAsked(bodice, 'self');

  test('is proven from its paths alone: no overlaps, everything there', () => {
    expect(provePlan(svg, task.pieces, asked)).toEqual([]);
    expect(asked.get('side back')).toBe(2);
  });

  test('is refused where a piece that is cut on the fold lies beside it', () => {
    const beside = (copy: (typeof plan.copies)[number]) =>
      copy.of.onFold ? { ...copy, line: transformedEdge(copy.line, ({ x, y }) => ({ x, y: y + 5 })) } : copy;
    const other = laySvg({ ...plan, copies: plan.copies.map(beside) }, '0.7 m');
    expect(provePlan(other, task.pieces, asked).map(({ code }) => code)).toContain('lay-off-fold');
  });

  test.each([
    ['lay-count', (text: string) => text.replace(/<path class="outline" data-piece="side back"[^>]*\/>/, '')],
    [
      'lay-overlap',
      (text: string) => text.replace(/(<path class="outline" data-piece="side back"[^>]*\/>)/, '$1$1'),
    ],
    ['lay-outside', (text: string) => text.replace(/data-length="[^"]*"/, 'data-length="100"')],
    [
      'lay-not-the-piece',
      (text: string) => text.replace(/data-piece="side back"/g, 'data-piece="side front"'),
    ],
    ['plan-unreadable', (text: string) => text.replace(/class="lay"/, 'class="other"')],
  ] as const)('that was spoilt is told: %s', (code, spoil) => {
    expect(provePlan(spoil(svg), task.pieces, asked).map((issue) => issue.code)).toContain(code);
  });

  test('has no word that runs over the line of its piece; what has no room stands in the key', () => {
    const small = selfOn({});
    const drawing = laySvg(layPlan(small, laid(small.problem, 60), bodice), '0.7 m');
    expect(drawing).toMatch(/>7</);
    expect(drawing).toContain('>7 back strap, both layers<');
    expect(drawing).not.toContain('>7 back strap<');
    expect(drawing).toContain('>5 side back<');
  });

  test('tells apart by a letter what one number stands for: the sizes of a piece, the two of a pair', () => {
    const open = selfOn({ folded: false });
    const pair = laySvg(layPlan(open, laid(open.problem, 60), bodice), '0.7 m');
    expect(pair.match(/>7[a-z]?</g)?.toSorted()).toEqual(['>7a<', '>7b<']);
    expect(pair.match(/>7[a-z]? back strap[^<]*/g)).toEqual([
      '>7a back strap',
      '>7b back strap, turned over',
    ]);
    const small = selfOn({});
    const whole = layPlan(small, laid(small.problem, 60), bodice);
    const copies = whole.copies.flatMap((copy) =>
      copy.of.piece === 'back strap'
        ? ['40', '42', '42'].map((size) => ({ ...copy, of: { ...copy.of, piece: `back strap, ${size}` } }))
        : [copy],
    );
    const sizes = laySvg({ ...whole, copies }, '0.7 m');
    expect(sizes.match(/>7[a-z]?</g)).toEqual(['>7a<', '>7b<', '>7b<']);
    expect(sizes.match(/>7[a-z]? back strap[^<]*/g)).toEqual([
      '>7a back strap, 40, both layers',
      '>7b back strap, 42, both layers',
    ]);
  });

  test('has the number of the smallest piece inside its line', () => {
    const small = selfOn({});
    const whole = layPlan(small, laid(small.problem, 60), bodice);
    // A doll's back straps: a fifth as large, where they lie.
    const copies = whole.copies.map((copy) => {
      if (copy.of.piece !== 'back strap') return copy;
      const shrunk = scaledFrom(copy.grain.from, 0.2);
      const grain = { from: copy.grain.from, to: shrunk(copy.grain.to) };
      return { ...copy, line: transformedEdge(copy.line, shrunk), grain };
    });
    const ink = layPage({ ...whole, copies }, '0.7 m').parts.flatMap((part) => part.ink);
    const lines = ink.flatMap((one) =>
      one.kind === 'chain' && one.class === 'outline' && one.names?.piece === 'back strap'
        ? [one.curves]
        : [],
    );
    const numbers = ink.flatMap((one) => (one.kind === 'words' && one.text === '7' ? [one] : []));
    expect(lines.length).toBeGreaterThan(0);
    expect(numbers).toHaveLength(lines.length);
    for (const { at, size, turnedAbout } of numbers) {
      // Turned a quarter to read upwards.
      const put = (x: number, y: number) =>
        turnedAbout
          ? point(turnedAbout.x + (y - turnedAbout.y), turnedAbout.y - (x - turnedAbout.x))
          : point(x, y);
      const half = textWidth('7', size) / 2;
      const corners = [-half, half].flatMap((x) => [0, -0.7 * size].map((y) => put(at.x + x, at.y + y)));
      const round = lines.find((curves) => contains([{ name: '', curves }], corners[0] ?? at)) ?? [];
      for (const corner of corners) expect(contains([{ name: '', curves: round }], corner)).toBe(true);
    }
  });

  test('says its lengths in the reader’s unit', () => {
    expect(laySvg(plan, '1 yd', 'in')).toMatch(/55 1\/8 in wide, .* no lay is shorter than [\d /]+ in\./);
  });

  test('uses the share of the cloth that its pieces cover', () => {
    const area = bodice.pieces.reduce((sum, piece) => {
      const line = lines.get(piece.name);
      const own = piece.cut.filter((cut) => cut.cloth === 'self');
      const times = own.reduce((total, { count, onFold }) => total + count * (onFold ? 2 : 1), 0);
      return sum + (line ? signedArea([line]) * times : 0);
    }, 0);
    expect(plan.used).toBeCloseTo(area / (1400 * plan.length), 6);
  });
});

describe('cloth', () => {
  test('folded cloth is half as wide, less one selvedge; open cloth loses two', () => {
    expect(stripWidth(cloth)).toBe(690);
    expect(stripWidth({ ...cloth, folded: false })).toBe(1380);
    expect(stripWidth({ ...cloth, shrink: 0.05 })).toBe(655);
  });

  test('what shrinks is bought longer, and of stripes a repeat more, to begin with one', () => {
    expect(lengthNeeded({ ...cloth, shrink: 0.05 }, 950)).toBeCloseTo(1000, 9);
    expect(lengthNeeded({ ...cloth, stripe: 60 }, 1150)).toBe(1210);
    expect(lengthNeeded({ ...cloth, stripe: 60, shrink: 0.05 }, 950)).toBeCloseTo(1000 + 60, 9);
  });
});
