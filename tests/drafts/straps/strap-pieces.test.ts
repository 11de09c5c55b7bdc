import { describe, expect, it } from 'vitest';
import { edgeLength, edgeStart } from '../../../engine/geometry/edge.ts';
import { distance } from '../../../engine/geometry/point.ts';
import { pieceSvgs } from '../../../engine/render/svg.ts';
import { drafted, edgeOf, pieceOf, shippedBodies, shippedBody } from '../drafted.ts';

const dresses = shippedBodies.map((name) => [name, drafted('dress', shippedBody(name))] as const);

describe('the straps', () => {
  it.each(dresses)('are as wide as chosen where their two parts meet at the shoulder: %s', (_, dress) => {
    for (const part of ['front', 'back'])
      expect(edgeLength(edgeOf(dress, `${part} strap`, 'shoulder'))).toBeCloseTo(45, 6);
  });

  it.each(dresses)('end as wide as the panel that each is cut off from: %s', (_, dress) => {
    for (const part of ['front', 'back'])
      expect(edgeLength(edgeOf(dress, `${part} strap`, `${part} end`))).toBeCloseTo(
        edgeLength(edgeOf(dress, `side ${part}`, 'strap')),
        6,
      );
  });

  it.each(dresses)('have room on both parts for the whole label, beside the grainline: %s', (_, dress) => {
    for (const [file, svg] of pieceSvgs(dress.garment, dress.cutLines, { date: '4 May' }))
      if (file.includes('strap')) {
        expect(svg, file).toMatch(/>cut \d/);
        expect(svg, file).toMatch(/allowance/);
        expect(svg, file).toContain(`for ${dress.garment.body}, 4 May`);
      }
  });

  // A front so short and a neckline so deep that the strap curves past the straight way between its ends.
  it('have their grainline inside, however they are curved', () => {
    const dress = drafted('dress', {
      name: 'curved strap',
      units: 'mm',
      bustGirth: 834,
      waistGirth: 653,
      hipGirth: 901,
      backNeckPointToWaist: 339,
      neckShoulderPointToBustPoint: 267,
      neckShoulderPointToWaist: 359,
      acrossFrontWidth: 291,
      cup: 'AA',
    });
    expect(dress.report.issues.filter(({ severity }) => severity === 'error')).toEqual([]);
    const { grain } = pieceOf(dress, 'front strap');
    const shoulder = edgeStart(edgeOf(dress, 'front strap', 'shoulder'));
    expect(distance(grain.from, grain.to)).toBeGreaterThan(distance(shoulder, grain.to) / 2);
  });
});
