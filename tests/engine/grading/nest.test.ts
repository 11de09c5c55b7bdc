import { describe, expect, it } from 'vitest';
import { nearestOnEdge } from '../../../engine/geometry/nearest.ts';
import { signedArea } from '../../../engine/geometry/outline.ts';
import { distance, point, vectorBetween } from '../../../engine/geometry/point.ts';
import { cross, dot, heading } from '../../../engine/geometry/vector.ts';
import { nestFiles } from '../../../engine/grading/nest/nest-papers.ts';
import { mostLines, nestStyle, sizeLine } from '../../../engine/grading/nest/size-lines.ts';
import { namePlaces } from '../../../engine/grading/nest/size-names.ts';
import { readPath } from '../../../engine/reading/read-path.ts';
import { textSizes } from '../../../engine/render/line-types.ts';
import { textWidth } from '../../../engine/render/text-size.ts';
import { chartOf, draftOf, gradedBy, shippedChart } from './charts.ts';

const dress = draftOf('dress');
const grade = gradedBy(dress, chartOf(shippedChart('workshop-stock.yaml'), dress));
const files = nestFiles(grade);

describe('the line of each size', () => {
  it('has dashes and a weight of its own, so that black ink tells it from every other', () => {
    const inks = Array.from({ length: mostLines }, (_, i) => sizeLine(i));
    expect(new Set(inks.map(({ dashes, width }) => `${dashes.join(' ')}/${width}`)).size).toBe(mostLines);
  });

  it('has another colour than its neighbours, and never yellow', () => {
    for (let i = 1; i < mostLines; i++) expect(sizeLine(i).colour).not.toBe(sizeLine(i - 1).colour);
    expect(nestStyle(mostLines).toLowerCase()).not.toContain('#f0e442');
  });
});

describe('nests', () => {
  it('are drawn for every piece, along the sizes and along the cups, and on a sheet of each', () => {
    expect(files.size).toBe(2 * (16 + 1));
    expect([...files.keys()]).toContain('nest-2-side-front.svg');
    expect([...files.keys()]).toContain('nest-cups-2-side-front.svg');
  });

  it('have one closed outline a size, unfilled, and its name on it', () => {
    const svg = files.get('nest-2-side-front.svg') ?? '';
    for (const [place, size] of grade.chart.sizes.entries()) {
      expect(svg).toMatch(new RegExp(`<path class="size-${place}" data-size="${size}" d="M[^"]*Z"`));
      expect(svg).toMatch(new RegExp(`<text class="size-name name-${place}"[^>]*>${size}</text>`));
    }
    expect(svg).toContain('path,rect{fill:none');
    expect(svg).toContain('laid on: waist, waist to princess lower');
    expect(svg).toContain('sizes, cup C');
  });

  it('write names where neighbours are apart, none on another, none upside down', () => {
    const pieces = grade.sizes
      .filter(({ of }) => of.cup === 'C')
      .flatMap(({ pieces: all }) => all.get('side front')?.finished.piece ?? []);
    const places = namePlaces(pieces, grade.chart.sizes).map(([first]) => first);
    for (const [i, here] of places.entries()) {
      expect(Math.abs(here?.turn ?? 9)).toBeLessThanOrEqual(Math.PI / 2 + 1e-9);
      for (const other of places.slice(i + 1))
        expect(here && other && distance(here.at, other.at)).toBeGreaterThan(4);
    }
  });

  it.each(['stitching', 'cutting'] as const)(
    'lead out to names that have no room on their lines: each from its own line, clear of all lines and of each other (%s)',
    (line) => {
      const svg = nestFiles(grade, { line }).get('nest-7-back-strap.svg') ?? '';
      const outlines = grade.chart.sizes.map((size) => {
        const read = readPath(new RegExp(`data-size="${size}" d="(M[^"]*Z)"`).exec(svg)?.[1] ?? '');
        if (!read.ok) throw new Error('unread');
        return { name: size, curves: read.curves };
      });
      const leaders = grade.chart.sizes.map((size, place) => {
        const read = readPath(
          new RegExp(`class="leader-${place}" data-size="${size}" d="([^"]*)"`).exec(svg)?.[1] ?? '',
        );
        const [leader] = read.ok ? read.curves : [];
        if (!leader) throw new Error('unread');
        return leader;
      });
      const names = grade.chart.sizes.map((size, place) => {
        const found = new RegExp(
          `name-${place}"[^>]*transform="rotate\\((\\S+) (\\S+) (\\S+)\\)"[^>]*>${size}<`,
        ).exec(svg);
        const [turn = 0, x = 0, y = 0] = (found ?? []).slice(1).map(Number);
        return { turn, at: point(x, y) };
      });
      for (const [i, { from, to }] of leaders.entries()) {
        const own = outlines[i];
        expect(own && nearestOnEdge(own, from).distance).toBeLessThan(0.1);
        for (const other of outlines) expect(nearestOnEdge(other, to).distance).toBeGreaterThan(1);
      }
      const height = textSizes.small;
      const width = textWidth('34', height);
      for (const [i, { at, turn }] of names.entries())
        for (const other of names.slice(i + 1)) {
          expect(other.turn).toBe(turn);
          const along = heading((turn * Math.PI) / 180);
          const apart = vectorBetween(at, other.at);
          const isClear = Math.abs(dot(apart, along)) >= width || Math.abs(cross(apart, along)) >= height;
          expect(isClear).toBe(true);
        }
    },
  );

  it('of a size beside the run are drawn with the others', () => {
    const row = { bustGirth: 92, waistGirth: 74, hipGirth: 99, backNeckPointToWaist: 40 };
    const sizes = [
      { size: '40', ...row },
      { size: '42', ...row, bustGirth: 96, waistGirth: 78, hipGirth: 103 },
      { size: '40/42', from: { waistGirth: '40', hipGirth: '42' } },
    ];
    const skirt = draftOf('skirt');
    const svg = nestFiles(gradedBy(skirt, chartOf({ units: 'cm', sizes }, skirt))).get('nest.svg') ?? '';
    expect(svg).toContain('data-size="40/42"');
  });

  it('show on the cutting line what a cutter cuts: the outline round the allowances, its notches and its name', () => {
    const cutting = nestFiles(grade, { line: 'cutting' }).get('nest-2-side-front.svg') ?? '';
    for (const { of, pieces } of grade.sizes.filter(({ of: { cup } }) => cup === 'C')) {
      const [, path = ''] = new RegExp(`data-size="${of.size}" d="(M[^"]*Z)"`).exec(cutting) ?? [];
      const laid = pieces.get('side front')?.finished;
      const cut = laid && signedArea([{ name: 'cut', curves: laid.cut }]);
      const drawn = readPath(path);
      if (!drawn.ok) throw new Error('unread');
      expect(signedArea([{ name: 'drawn', curves: drawn.curves }])).toBeCloseTo(cut ?? 0, -1);
      expect(cutting).toMatch(new RegExp(`<text [^>]*>${of.size}</text>`));
    }
    expect(cutting.split('data-notch=').length).toBeGreaterThan(40);
  });

  it('show only the sizes that are chosen, one beside the other on one set', () => {
    const only = grade.chart.rows.filter(({ name }) => ['40 C', '42 E'].includes(name));
    const chosen = nestFiles(grade, { line: 'stitching', only });
    expect(chosen.size).toBe(16 + 1);
    const svg = chosen.get('nest-2-side-front.svg') ?? '';
    expect([...svg.matchAll(/data-size="([^"]*)" d="M[^"]*Z"/g)].map(([, size]) => size)).toEqual([
      '40 C',
      '42 E',
    ]);
    expect(svg).toContain('dress, workshop stock: sizes 40 C, 42 E');
  });

  it('of the side front of the dress look as they were looked at', async () => {
    await expect(files.get('nest-2-side-front.svg')).toMatchFileSnapshot(
      '../../snapshots/nest-dress-side-front.svg',
    );
  });
});
