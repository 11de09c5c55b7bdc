import { describe, expect, it } from 'vitest';
import type { Body, MeasurementName } from '../../../engine/body/body.ts';
import { outlineBounds } from '../../../engine/geometry/outline.ts';
import { distance, point } from '../../../engine/geometry/point.ts';
import { alignments } from '../../../engine/grading/anchor.ts';
import { draftSize } from '../../../engine/grading/draft-sizes.ts';
import { EVEN } from '../../../engine/grading/evenness.ts';
import { type Grade, gradeOf } from '../../../engine/grading/grade.ts';
import type { Draft } from '../../../engine/pattern/draft.ts';
import type { Garment } from '../../../engine/pattern/garment.ts';
import { chartOf, draftOf, gradedBy, shippedChart } from './charts.ts';

const row = (size: string, bust: number, waist = bust - 18) => ({
  size,
  bustGirth: bust,
  underBustGirth: bust - 17,
  waistGirth: waist,
  hipGirth: bust + 6,
  backNeckPointToWaist: 40.5,
  neckBaseGirth: 37,
  upperArmGirth: 29,
  shoulderLength: 13,
  stature: 167,
  acrossBackWidth: 35,
  scyeDepth: 19,
});
const run = [84, 88, 92, 96, 100].map((bust, i) => row(`${36 + 2 * i}`, bust));
const trial = draftOf('trial');
const skirt = draftOf('skirt');

/** A draft whose pieces are changed in the size with this bust, mm. */
const changedAt = (bust: number, change: (garment: Garment) => Garment): Draft => ({
  ...skirt,
  draw: (body, styling, solver) => {
    const drawn = skirt.draw(body, styling, solver);
    return drawn.ok && body.size.bustGirth === bust ? { ...drawn, value: change(drawn.value) } : drawn;
  },
});

const inPiece =
  (name: string, change: (piece: Garment['pieces'][number]) => Garment['pieces'][number]) =>
  (garment: Garment): Garment => ({
    ...garment,
    pieces: garment.pieces.map((piece) => (piece.name === name ? change(piece) : piece)),
  });

const codesOf = ({ issues }: Grade) => issues.map(({ code }) => code);

describe('a grade', () => {
  const grade = gradedBy(trial, chartOf({ units: 'cm', sizes: run }));
  const [axis] = grade.axes;

  it('has every size, and every one true', () => {
    expect(grade.ok).toBe(true);
    expect(grade.sizes.map(({ of, made }) => [of.name, made.report.ok])).toEqual(
      ['36', '38', '40', '42', '44'].map((name) => [name, true]),
    );
  });

  it('tells each edge’s length and each point’s place as its size’s own draft has them', () => {
    const side = axis?.pieces.find(({ piece }) => piece === 'side front');
    const edge = side?.edges.find((one) => one.edge === 'side');
    expect(edge?.lengths).toHaveLength(5);
    expect(edge?.steps[0]).toBeCloseTo((edge?.lengths[1] ?? 0) - (edge?.lengths[0] ?? 0), 12);
    const corner = side?.points.find(({ point: name }) => name === 'side to waist');
    expect(corner?.steps[1]?.x).toBeCloseTo((corner?.places[2]?.x ?? 0) - (corner?.places[1]?.x ?? 0), 12);
    expect(
      side?.points.some(({ kind, point: name }) => kind === 'notch' && name.endsWith(': bust level')),
    ).toBe(true);
  });

  it('lays all sizes on the place that is asked for, upright on their grain', () => {
    for (const align of [...alignments, 'side to waist']) {
      const { sizes } = gradedBy(trial, chartOf({ units: 'cm', sizes: run.slice(0, 2) }), {}, align);
      for (const { pieces } of sizes)
        for (const { finished } of pieces.values()) {
          const { grain, edges, lines } = finished.piece;
          expect(grain.to.x).toBeCloseTo(grain.from.x, 6);
          const { left, right, top, bottom } = outlineBounds(edges);
          expect(left <= 1e-6 && right >= -1e-6 && top <= 1e-6 && bottom >= -1e-6).toBe(true);
          const ends = [...edges, ...lines].flatMap(({ curves }) =>
            curves.flatMap(({ from, to }) => [from, to]),
          );
          expect(Math.min(...ends.map((end) => distance(end, point(0, 0))))).toBeLessThan(1e-6);
        }
    }
  });

  it('is refused for a place that no piece has, with the nearest one', () => {
    const chart = chartOf({ units: 'cm', sizes: run });
    const made = grade.sizes.map((size) => size.made);
    const refused = gradeOf(trial, chart, made, 'side to waste');
    expect(refused.ok ? '' : refused.issues[0]?.message).toContain('“side to waist”');
  });

  it('says which size cannot be drafted', () => {
    const [size] = chartOf({ units: 'cm', sizes: [row('40', 920)] }).rows;
    const made = size && draftSize(trial, size, {});
    expect(made?.ok).toBe(false);
    expect(made?.issues[0]?.path).toMatch(/^size 40: /);
  });
});

describe('a grade is even', () => {
  it('where the chart is, within the stated bound', () => {
    const { axes } = gradedBy(skirt, chartOf({ units: 'cm', sizes: run }, skirt));
    expect(axes[0]?.uneven).toEqual([]);
    expect(axes[0]?.greatest).toBeLessThan(EVEN);
    expect(axes[0]?.looked).toBeGreaterThan(100);
  });

  it('where its steps change only as much as the chart’s', () => {
    const sizes = [84, 88, 92, 98, 104].map((bust, i) => row(`${36 + 2 * i}`, bust));
    const { axes } = gradedBy(skirt, chartOf({ units: 'cm', sizes }, skirt));
    expect(axes[0]?.uneven).toEqual([]);
  });

  it('no longer where one size is drawn otherwise, and the piece and the size are named', () => {
    const wider = changedAt(
      920,
      inPiece('skirt centre front', (piece) => ({
        ...piece,
        notches: piece.notches.map((notch) =>
          notch.edge === 'front princess' ? { ...notch, at: notch.at + 5 } : notch,
        ),
      })),
    );
    const grade = gradedBy(wider, chartOf({ units: 'cm', sizes: run }, skirt));
    const [uneven] = grade.issues.filter(({ code }) => code === 'uneven-grade');
    expect(uneven).toMatchObject({ severity: 'warning', limits: { max: EVEN, unit: 'mm' } });
    expect(uneven?.path).toContain('skirt centre front/front princess: hip level');
    const names = new Set(grade.axes[0]?.uneven.map(({ name }) => name));
    expect(names).toContain('40');
    expect(grade.axes[0]?.uneven[0]?.cause).toEqual({ kind: 'found' });
  });

  it('no longer where lines turn from one answer to another between two sizes, which are named', () => {
    const wider = (body: Body): Body => ({
      ...body,
      size: { ...body.size, hipGirth: body.size.hipGirth + 30 },
    });
    const turning: Draft = {
      ...skirt,
      draw: (body, styling, solver) => {
        const drawn = skirt.draw(body, styling, solver);
        if (!drawn.ok || body.size.bustGirth < 930) return drawn;
        const other = skirt.draw(wider(body), styling, solver);
        return other.ok ? { ...drawn, value: { ...drawn.value, pieces: other.value.pieces } } : other;
      },
    };
    const { axes } = gradedBy(turning, chartOf({ units: 'cm', sizes: run }, skirt));
    const uneven = axes[0]?.uneven ?? [];
    expect(uneven.length).toBeGreaterThan(0);
    // A length that grows steadily, 20 mm from size to size at most, grows by 0.2 mm in a hundredth of the way.
    for (const { cause } of uneven) {
      expect(cause).toMatchObject({ kind: 'branch', between: ['40', '42'] });
      expect(cause.kind === 'branch' ? cause.mm : 0).toBeGreaterThan(0.6);
    }
  });

  it('no longer where a rule’s limit is met, and its step of the construction is named', () => {
    // The waist rises to the side by 0.05 of hip less waist, at most 20 mm: 14, 17, 20 and 20.
    const sizes = [28, 34, 40, 46].map((hips, i) => ({
      ...row(`${40 + 2 * i}`, 92, 70),
      hipGirth: 70 + hips,
    }));
    const grade = gradedBy(skirt, chartOf({ units: 'cm', sizes }, skirt));
    const uneven = grade.axes[0]?.uneven ?? [];
    expect(uneven.length).toBeGreaterThan(0);
    for (const { cause, name } of uneven) {
      expect(name).toBe('44');
      expect(cause).toMatchObject({ kind: 'construction', step: 'Waist rises to the side' });
    }
    expect(grade.issues[0]?.message).toContain('the step of “Waist rises to the side” in the construction');
  });

  it('on a piece that is gathered, by as much more as it is fuller than what it is sewn to', () => {
    const moved = (by: number): Draft =>
      changedAt(920, (garment) => ({
        ...inPiece('skirt centre front', (piece) => ({
          ...piece,
          notches: piece.notches.map((notch) =>
            notch.edge === 'front princess' ? { ...notch, at: notch.at + by } : notch,
          ),
        }))(garment),
      }));
    const gathered = (by: number): Draft => ({
      ...moved(by),
      draw: (body, styling, solver) => {
        const drawn = moved(by).draw(body, styling, solver);
        const seams = (garment: Garment) =>
          garment.seams.map((seam) =>
            seam.a.some(({ piece }) => piece === 'skirt centre front') ? { ...seam, gatherRatio: 3 } : seam,
          );
        return drawn.ok ? { ...drawn, value: { ...drawn.value, seams: seams(drawn.value) } } : drawn;
      },
    });
    const chart = chartOf({ units: 'cm', sizes: run }, skirt);
    const unevenWith = (draft: Draft) => gradedBy(draft, chart).axes[0]?.uneven.length;
    // The step out of a size changes by twice what one size is off.
    expect(unevenWith(moved(1.2))).toBeGreaterThan(0);
    expect(unevenWith(gathered(1.2))).toBe(0);
    expect(unevenWith(gathered(2))).toBeGreaterThan(0);
  });

  it('no longer where lines that are found together come to a limit, which is named', () => {
    // Ever fuller breasts over one large bust: the waist of the side front comes to the bound of how far it may stray.
    const sizes = [112, 109, 106, 103, 100, 97, 94].map((underBustGirth) => ({
      ...row(`${underBustGirth}`, 130, 125),
      underBustGirth,
    }));
    const { axes, issues } = gradedBy(trial, chartOf({ units: 'cm', sizes }, trial));
    const bound = 'bounds of side front waist off its level';
    const limits = (axes[0]?.uneven ?? []).flatMap(({ cause }) => (cause.kind === 'limit' ? [cause] : []));
    expect(limits.length).toBeGreaterThan(0);
    for (const cause of limits) expect(cause.limits).toContain(bound);
    expect(issues.some(({ message }) => message.includes('“side front waist off its level” come'))).toBe(
      true,
    );
  });

  it('no longer where the styling changes, which is named', () => {
    const sizes = run.map((one, i) => ({ ...one, skirtLength: i < 3 ? 600 : 650 }));
    const grade = gradedBy(skirt, chartOf({ units: 'cm', sizes }, skirt));
    expect(grade.axes[0]?.uneven.length).toBeGreaterThan(0);
    for (const { cause } of grade.axes[0]?.uneven ?? [])
      expect(cause).toEqual({ kind: 'styling', choice: 'skirtLength' });
  });

  it('no longer where estimates bend, and even again once those that are named are given', () => {
    // What is not in the chart of these classes bends among the largest, whose hips follow their busts otherwise.
    const chart = chartOf(shippedChart('en-13402-3-women.yaml'), trial);
    const uneven = ({ axes }: Grade) =>
      (axes[0]?.uneven ?? []).filter(({ name, cause }) => name === '122' && cause.kind !== 'construction');
    const grade = gradedBy(trial, chart);
    const named = new Set(
      uneven(grade).flatMap(({ cause }) =>
        cause.kind === 'estimate' ? [cause.measurement, ...cause.others] : [],
      ),
    );
    expect(uneven(grade).every(({ cause }) => cause.kind === 'estimate')).toBe(true);
    expect(grade.issues.some(({ message }) => message.includes('the chart does not give the'))).toBe(true);
    const at = chart.rows.findIndex(({ name }) => name === '122');
    const mean = (name: MeasurementName): number => {
      const [a = 0, b = 0] = [-1, 1].map((by) => grade.sizes[at + by]?.made.body.size[name]);
      // Centimetres, and degrees.
      return name === 'shoulderSlope' ? ((a + b) / 2) * (180 / Math.PI) : (a + b) / 20;
    };
    const given = Object.fromEntries(Array.from(named, (name) => [name, mean(name)]));
    const rows = chart.rows.map((row, i) =>
      i === at ? { ...row, body: { ...row.body, ...given, sure: [...named] } } : row,
    );
    expect(uneven(gradedBy(trial, { ...chart, rows })).length).toBeLessThan(uneven(grade).length / 3);
  });

  it('no longer where an estimate bends, which is named only for a piece that it shapes', () => {
    // The upper arm shapes the sleeve of a dress, and nothing of its skirt.
    const dress = draftOf('dress');
    const { axes } = gradedBy(dress, chartOf(shippedChart('en-13402-3-women.yaml'), dress));
    const of = (part: RegExp) =>
      axes.flatMap(({ uneven }) =>
        uneven.flatMap(({ piece, cause }) => (part.test(piece) && cause.kind === 'estimate' ? [cause] : [])),
      );
    expect(of(/^skirt/).length).toBeGreaterThan(0);
    for (const { measurement } of of(/^skirt/)) expect(measurement).toBe('waistHeight');
    for (const { measurement } of of(/^skirt|strap|front|back/))
      expect(measurement).not.toBe('upperArmGirth');
  });
});

describe('the stock of the workshop', () => {
  const stock = (garment: string, styling: Readonly<Record<string, unknown>> = {}): Grade => {
    const draft = draftOf(garment);
    return gradedBy(draft, chartOf(shippedChart('workshop-stock.yaml'), draft), styling);
  };
  const unevenIn = ({ axes }: Grade) => axes.flatMap((axis) => axis.uneven);
  const backCorner = 'Back neckline corner from the centre back';

  it.each([
    ['dress', {}, 5],
    ['trial', {}, 1],
    ['skirt', {}, 0],
    // In the smallest size with the fullest breast the underarm of the back comes so near that the strap moves in.
    ['bodice', {}, 28],
    ['bodice', { front: 'plain' }, 28],
    ['bodice', { front: 'plain', neckline: 'round' }, 28],
    ['bodice', { front: 'plain', neckline: 'sweetheart' }, 28],
    ['bodice', { shoulder: 'whole', front: 'plain' }, 12],
    ['bodice', { shoulder: 'whole', front: 'plain', neckline: 'round' }, 12],
    ['bodice', { shoulder: 'whole', front: 'plain', neckline: 'pointed' }, 12],
    ['bodice', { shoulder: 'whole', front: 'plain', neckline: 'sweetheart' }, 12],
  ] as const)(
    'is graded true and mostly even in the %s %o, and where it is not the cause is known',
    (name, styling, most) => {
      const grade = stock(name, styling);
      expect(grade.ok).toBe(true);
      const uneven = unevenIn(grade);
      expect(uneven.length).toBeLessThanOrEqual(most);
      expect(uneven.filter(({ cause }) => cause.kind === 'found')).toEqual([]);
      if (name !== 'bodice' || !('front' in styling) || 'shoulder' in styling) return;
      for (const { cause } of uneven) expect(cause).toMatchObject({ step: backCorner });
    },
  );

  it('ends the neckline of a bodice on straps as far above the underarm in every size and cup', () => {
    for (const { of, made } of stock('bodice').sizes) {
      const value = (title: string): number =>
        made.garment.steps.find((step) => step.title === title)?.value ?? 0;
      const above =
        value('Front neckline above the bust level') - value('Underarm above the bust level, dart open');
      expect(above, of.name).toBeCloseTo(25, 6);
    }
  });

  it('is uneven where a neckline is asked for that only some of the cups can have, and that step is named', () => {
    const uneven = unevenIn(stock('bodice', { necklineDepth: 0.6 }));
    const named = uneven.filter(
      ({ cause }) => cause.kind === 'construction' && cause.step === 'Front neckline above the bust level',
    );
    expect(named.length).toBeGreaterThan(300);
    // A step of the front is no cause of what bends in the back.
    for (const { cause } of uneven.filter(({ piece }) => /^(centre|side) back/.test(piece)))
      expect(cause).toMatchObject({ step: backCorner });
  });

  it('has one answer for an armhole that the princess seam begins at, though there are two it could have', () => {
    const uneven = unevenIn(stock('bodice', { shoulder: 'whole', front: 'plain', princess: 'armhole' }));
    expect(uneven.filter(({ cause }) => cause.kind === 'branch' || cause.kind === 'found')).toEqual([]);
    // From the one to the other its upper part grows by 4.8 mm at once.
    expect(Math.max(...uneven.map(({ before, after }) => Math.abs(after - before)))).toBeLessThan(3);
  });

  it('tells a far corner that moves on an arc, as the dart opens by as much with each cup', () => {
    const draft = draftOf('bodice');
    const wide = { ...(shippedChart('workshop-stock.yaml') as object), cups: ['A', 'C', 'E'] };
    const arcs = unevenIn(gradedBy(draft, chartOf(wide, draft), { shoulder: 'whole' })).filter(
      ({ cause, what }) => cause.kind === 'turn' && what === 'neckline side to shoulder',
    );
    expect(arcs.length).toBeGreaterThan(0);
    for (const { cause, along, after, before } of arcs) {
      expect(along).toBe('cups');
      expect(cause).toMatchObject({ step: 'Bust dart angle' });
      // A corner that far from the bust point moves on its arc, with each turn, out of line by that turn's square.
      const turn = cause.kind === 'turn' ? cause.by : 0;
      expect(Math.abs(after - before) / turn ** 2).toBeLessThan(450);
      expect(Math.abs(after - before) / turn ** 2).toBeGreaterThan(100);
    }
  });
});

describe('the sleeve of the stock', () => {
  it('grows evenly at its hem from size to size and cup to cup, where two cubics lie equally near its armhole', () => {
    const dress = draftOf('dress');
    const { axes } = gradedBy(dress, chartOf(shippedChart('workshop-stock.yaml')));
    const bent = axes.flatMap(({ uneven }) => uneven.filter(({ piece }) => piece === 'sleeve'));
    expect(bent).toEqual([]);
  });
});

describe('sizes are alike', () => {
  const chart = chartOf({ units: 'cm', sizes: run }, skirt);

  it('unless a piece is missing in one', () => {
    const lost = changedAt(920, (garment) => ({ ...garment, pieces: garment.pieces.slice(1) }));
    const grade = gradedBy(lost, chart);
    expect(codesOf(grade).filter((code) => code === 'piece-not-in-all-sizes')).toHaveLength(2);
    expect(grade.ok).toBe(false);
  });

  it('unless an edge changes its kind', () => {
    const open = changedAt(
      920,
      inPiece('skirt side back', (piece) => ({
        ...piece,
        edges: piece.edges.map((edge) =>
          edge.name === 'hem' ? { ...edge, turn: 'finished' as const } : edge,
        ),
      })),
    );
    const issue = gradedBy(open, chart).issues.find(({ code }) => code === 'edge-changes-kind');
    expect(issue?.message).toContain('turned up, curved in size 38, and finished, curved in size 40');
  });

  it('unless an edge is called otherwise', () => {
    const renamed = changedAt(
      920,
      inPiece('skirt side back', (piece) => ({
        ...piece,
        edges: piece.edges.map((edge) => (edge.name === 'hem' ? { ...edge, name: 'bottom' } : edge)),
      })),
    );
    expect(codesOf(gradedBy(renamed, chart))).toContain('edge-not-in-all-sizes');
  });

  it('unless notches change their order, or come and go', () => {
    const second = { name: 'extra', edge: 'side', mark: 'level' } as const;
    const withExtra = (at: (bust: number) => number | undefined): Draft => ({
      ...skirt,
      draw: (body, styling, solver) => {
        const drawn = skirt.draw(body, styling, solver);
        const place = at(body.size.bustGirth);
        if (!drawn.ok || place === undefined) return drawn;
        const change = inPiece('skirt side front', (piece) => ({
          ...piece,
          notches: [...piece.notches, { ...second, at: place }],
        }));
        return { ...drawn, value: change(drawn.value) };
      },
    });
    const swapped = gradedBy(
      withExtra((bust) => (bust < 950 ? 100 : 400)),
      chart,
    );
    expect(codesOf(swapped)).toContain('notches-change-order');
    const lost = gradedBy(
      withExtra((bust) => (bust < 950 ? 100 : undefined)),
      chart,
    );
    expect(codesOf(lost)).toContain('notch-not-in-all-sizes');
  });
});
