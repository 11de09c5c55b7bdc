import { describe, expect, it } from 'vitest';
import {
  edgeEnd,
  edgeLength,
  edgeOf as edgeOfCurves,
  edgeStart,
  endDirection,
  startDirection,
} from '../../../engine/geometry/edge.ts';
import { distance } from '../../../engine/geometry/point.ts';
import { cross, dot } from '../../../engine/geometry/vector.ts';
import { sheetSvg } from '../../../engine/render/sheet.ts';
import { drafted, edgeOf, pieceOf, placedOn, shippedBodies, shippedBody } from '../drafted.ts';

const panels = ['centre front', 'side front', 'centre back', 'side back'];
const block = drafted('trial', shippedBody('leading-lady'));

describe('the trial bodice', () => {
  it.each(shippedBodies)(
    'is true, with and without its sleeve, to the elbow and to the wrist: %s',
    (name) => {
      for (const styling of [
        {},
        { sleeve: 'plain' },
        { sleeve: 'plain', sleeveTo: 'elbow' },
        { sleeve: 'plain', sleeveTo: 'wrist' },
      ]) {
        const { report, garment } = drafted('trial', shippedBody(name), styling);
        expect(report.issues.filter(({ severity }) => severity === 'error')).toEqual([]);
        expect(garment.pieces.map((piece) => piece.name)).toEqual(
          'sleeve' in styling ? [...panels, 'sleeve'] : panels,
        );
      }
    },
  );

  // Each was drawn with a waist that came down along the princess seam, a cusp on the side front.
  it.each([
    ['cup F, a back of 34.3', 'trial', {}, [1101, 843, 1092, 343, 1550, 'F']],
    [
      'cup F, a back of 34.9',
      'trial',
      { bustEase: 124.04, underBustDrop: 63.2 },
      [957, 751, 944, 349, 1754, 'F'],
    ],
    ['cup D, a waist with room', 'trial', { waistEase: 86.68 }, [1001, 770, 1071, 366, 1828, 'D']],
    ['cup H, a waist with room', 'trial', { waistEase: 100.17 }, [1189, 877, 1144, 362, 1463, 'H']],
    // These had a grainline that left the side front where its waist rises between its ends.
    ['cup F, a waist with room, 177 cm', 'trial', { waistEase: 62.56 }, [1151, 942, 1280, 344, 1770, 'F']],
    ['cup F, a bust with room', 'trial', { bustEase: 123.09 }, [1280, 1051, 1444, 347, 1727, 'F']],
    [
      'cup G, a plain front on straps',
      'bodice',
      { front: 'plain', waistEase: 77.7, necklineDepth: 0.59, strapWidth: 29.54, armholeAllowance: 6.91 },
      [1076, 942, 1213, 351, 1715, 'G'],
    ],
  ])(
    'is true for a short back and a full bust: %s',
    (name, garment, styling, [bust, waist, hip, back, stature, cup]) => {
      const body = {
        name,
        units: 'mm',
        bustGirth: bust,
        waistGirth: waist,
        hipGirth: hip,
        backNeckPointToWaist: back,
        stature,
        cup,
      };
      const { report } = drafted(garment, body, styling);
      expect(report.issues.filter(({ severity }) => severity === 'error')).toEqual([]);
    },
  );

  it('has room to let out, 25 mm, beyond every seam', () => {
    for (const { name, edges } of block.garment.pieces)
      for (const edge of edges)
        expect(edge.allowance, `${name}, ${edge.name}`).toBe(edge.turn === 'fold' ? 0 : 25);
  });

  it.each(shippedBodies)(
    'is cut without a step where neck and shoulder meet, or anywhere (1 to 3 mm on six of eight): %s',
    (name) => {
      for (const [piece, { curves }] of drafted('trial', shippedBody(name), { sleeve: 'plain' }).cutLines) {
        const turns = curves.map((curve, i) => {
          const next = curves[(i + 1) % curves.length] ?? curve;
          const [into, outOf] = [
            endDirection(edgeOfCurves('', [curve])),
            startDirection(edgeOfCurves('', [next])),
          ];
          return Math.atan2(cross(into, outOf), dot(into, outOf));
        });
        const steps = curves.filter((curve, i) => {
          const [before = 0, after = 0] = [turns.at(i - 1), turns[i]];
          const turnsBack = before * after < 0 && Math.min(Math.abs(before), Math.abs(after)) > 0.35;
          return turnsBack && distance(curve.from, curve.to) < 8;
        });
        for (const { from, to } of steps) expect(distance(from, to), piece).toBeLessThan(0.05);
      }
    },
  );

  it('has no gathers, no insert and nothing to buy', () => {
    expect(block.garment.seams.every(({ gatherRatio, ease }) => gatherRatio === 1 && ease === 0)).toBe(true);
    expect(block.garment.notions).toEqual([]);
    expect(block.garment.sewing?.map(({ title }) => title).join()).not.toMatch(/gather/i);
  });

  it('has princess lines from the middle of the shoulder, front and back', () => {
    for (const half of ['front', 'back']) {
      const [centre, side] = ['centre', 'side'].map((panel) =>
        edgeLength(edgeOf(block, `${panel} ${half}`, 'shoulder')),
      );
      expect(centre).toBeCloseTo(block.body.size.shoulderLength / 2, 6);
      expect(side).toBeCloseTo(block.body.size.shoulderLength / 2, 6);
    }
  });

  it('goes up to the neck base', () => {
    const [neck] = pieceOf(block, 'centre back').edges;
    expect(neck && distance(edgeStart(neck), { x: 0, y: 0 })).toBeCloseTo(0, 9);
    expect(neck && distance(edgeEnd(neck), placedOn(block, 'back', 'side neck'))).toBeCloseTo(0, 9);
    const front = edgeOf(block, 'centre front', 'neckline');
    expect(distance(edgeEnd(front), placedOn(block, 'front', 'side neck'))).toBeCloseTo(0, 9);
  });
});

describe('the sewing of a trial bodice', () => {
  const steps = drafted('trial', shippedBody('leading-lady'), { sleeve: 'plain' }).garment.sewing ?? [];
  const said = steps.flatMap(({ title, how }) => [title, ...how]).join(' ');

  it('ends with trying it on, and does not begin with another trial bodice', () => {
    expect(steps[0]?.title).toBe('Cut out');
    expect(steps.at(-1)?.title).toBe('Try it on, and write down what you pin');
    expect(steps.at(-1)?.amounts?.map(({ mm }) => mm)).toEqual([25, 10]);
  });

  it('leaves all its allowances to be let out, and its seams to be opened', () => {
    expect(said).not.toMatch(/[Tt]rim (the|in steps)|[Nn]eaten|gathering lines|buttonholes/);
    for (const title of ['front princess', 'back princess', 'shoulder', 'side'])
      expect(steps.map((step) => step.title)).toContain(`Tack the ${title} seams`);
  });

  it('has its level and plumb lines traced onto the cloth', () => {
    expect(said).toContain('Trace all level and plumb lines onto the right side');
    const dress = drafted('dress', shippedBody('leading-lady')).garment.sewing ?? [];
    expect(dress.flatMap(({ how }) => how).join(' ')).not.toContain('plumb');
    expect(dress[0]?.how[0]).toContain('the garment “trial”');
  });
});

describe('what is drawn on a trial bodice', () => {
  it.each(panels)(
    'are bust, under-bust and arm-fold lines and a plumb line on the %s, each to be written on',
    (name) => {
      const { lines } = pieceOf(block, name);
      const half = name.endsWith('front') ? 'front' : 'back';
      const wanted = ['bust level', 'under-bust level', `across ${half}`, 'plumb line'];
      expect(lines.map((line) => line.name).toSorted()).toEqual(wanted.toSorted());
      for (const { text, name: line } of lines) expect(text, line).toMatch(/pinned: _+$/);
    },
  );

  it('is a cross at the bust point, as far from the centre as was measured', () => {
    const [cross] = pieceOf(block, 'centre front').marks;
    expect(cross?.name).toBe('bust point');
    expect(cross?.at.x).toBeCloseTo(block.body.size.bustPointWidth / 2, 9);
  });

  it('stays there on the sheet, where each line has its words on the line or on the label', () => {
    const sheet = sheetSvg(block.garment, block.cutLines, {});
    const count = (words: string): number => sheet.split(words).length - 1;
    for (const words of ['across front; pinned', 'across back; pinned', 'plumb line; pinned', 'pinned: ___'])
      expect(count(words), words).toBeGreaterThanOrEqual(2);
    expect(count('bust: finished girth 980 mm')).toBeGreaterThanOrEqual(panels.length);
  });
});
