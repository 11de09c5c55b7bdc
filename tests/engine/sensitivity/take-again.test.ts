import { describe, expect, it } from 'vitest';
import { type Body, measurementNames } from '../../../engine/body/body.ts';
import { readBody } from '../../../engine/body/read.ts';
import type { Sensitivity, Slope } from '../../../engine/sensitivity/sensitivity.ts';
import { byImportance, takeAgain } from '../../../engine/sensitivity/take-again.ts';
import { measurements } from '../bib.ts';

/** Girths, under-bust and back were measured; all else was estimated. */
function someBody(): Body {
  const read = readBody(measurements);
  if (!read.ok) throw new Error('not read');
  return read.value;
}

const body = someBody();

const spreadOf = (name: keyof Body['known']): number => {
  const known = body.known[name];
  return known.from === 'estimated' ? known.spread : Number.NaN;
};

const seam = (name: string, perMm: number): Slope => ({ kind: 'seam', name, on: '', perMm });

const withSlopes = (slopes: Partial<Record<string, readonly Slope[]>>): readonly Sensitivity[] =>
  measurementNames.map((measurement) => ({ measurement, slopes: slopes[measurement] ?? [] }));

describe('the order in which measurements are worth taking again', () => {
  it('puts estimated ones first, however much a measured one moves', () => {
    const ranked = byImportance(
      body,
      withSlopes({ bustGirth: [seam('side', 3)], scyeDepth: [seam('side', 0.5)] }),
    );
    expect(ranked.slice(0, 2).map(({ measurement }) => measurement)).toEqual(['scyeDepth', 'bustGirth']);
  });

  it('is that of effect times spread among estimated ones', () => {
    const byWaistHeight = 0.9 * (spreadOf('scyeDepth') / spreadOf('waistHeight'));
    const ranked = byImportance(
      body,
      withSlopes({ scyeDepth: [seam('side', 1)], waistHeight: [seam('skirt', byWaistHeight)] }),
    );
    expect(ranked.slice(0, 2).map(({ measurement }) => measurement)).toEqual(['scyeDepth', 'waistHeight']);
  });

  it('takes all that moves together, but the place that moves most for what is off', () => {
    const ranked = byImportance(
      body,
      withSlopes({ waistGirth: [seam('a', 0.8), seam('b', -0.9), seam('c', 0.8)], hipGirth: [seam('a', 1)] }),
    );
    expect(ranked[0]).toMatchObject({
      measurement: 'waistGirth',
      from: 'measured',
      likelyError: 5,
      most: { place: { name: 'b' }, likelyOff: 4.5 },
    });
  });

  it('leaves out edges as cut, and puts what makes no difference last, estimated or not', () => {
    const ranked = byImportance(
      body,
      withSlopes({
        scyeDepth: [{ kind: 'edge', name: 'side', on: 'side back', perMm: 9 }],
        hipGirth: [seam('a', 0.5)],
      }),
    );
    expect(ranked[0]?.measurement).toBe('hipGirth');
    expect(takeAgain(ranked).map(({ measurement }) => measurement)).toEqual(['hipGirth']);
    expect(ranked).toHaveLength(measurementNames.length);
  });

  it('counts a shoulder slope by how far its spread lowers the shoulder point', () => {
    const [first] = byImportance(body, withSlopes({ shoulderSlope: [seam('strap', 1)] }));
    expect(first?.likelyError).toBeCloseTo(spreadOf('shoulderSlope') * body.size.shoulderLength, 9);
  });

  it('offers three at the most', () => {
    const all = withSlopes(Object.fromEntries(measurementNames.map((name) => [name, [seam('a', 1)]])));
    expect(takeAgain(byImportance(body, all))).toHaveLength(3);
  });
});
