import { describe, expect, it } from 'vitest';
import { recognisedMistakes } from '../../../engine/body/mistaken.ts';

const regular = { bustGirth: 92, waistGirth: 74, hipGirth: 99, backNeckPointToWaist: 40.5 };

const found = (numbers: Parameters<typeof recognisedMistakes>[0]) =>
  recognisedMistakes(numbers, 'cm').map(({ issue }) => `${issue.code} ${issue.path}`);

describe('mistakes with numbers', () => {
  it('are none in a regular body', () => {
    expect(found(regular)).toEqual([]);
  });

  it('are recognised where a large body has all girths of the trunk halved', () => {
    // Each of them would be possible by itself, and the waist even likely.
    expect(found({ bustGirth: 55, waistGirth: 52, hipGirth: 57, backNeckPointToWaist: 41 })).toEqual([
      'girth-halved bustGirth',
      'girth-halved waistGirth',
      'girth-halved hipGirth',
    ]);
  });

  it('are not seen in a child of the same girths, whose back is short', () => {
    expect(found({ bustGirth: 55, waistGirth: 52, hipGirth: 57, backNeckPointToWaist: 25 })).toEqual([]);
  });

  it('are told apart by the other girths: half, or inches among centimetres', () => {
    expect(found({ ...regular, bustGirth: 36 })).toEqual(['unit-mistaken bustGirth']);
    expect(found({ ...regular, bustGirth: 46 })).toEqual(['girth-halved bustGirth']);
  });

  it('explain every number of a file in another unit at once', () => {
    const [mistake, ...others] = recognisedMistakes(
      { bustGirth: 36.25, waistGirth: 29, hipGirth: 39, backNeckPointToWaist: 16 },
      'cm',
    );
    expect(others).toEqual([]);
    expect(mistake?.issue.message).toContain('units: in');
    expect(mistake?.explains).toHaveLength(4);
  });

  it('are not made of a number that no reading makes likely', () => {
    expect(found({ ...regular, bustGirth: 0 })).toEqual([]);
  });
});
