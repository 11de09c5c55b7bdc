import { expect, it } from 'vitest';
import { bodyGrid } from '../plausible-bodies.ts';
import { family, type Styled, styleNames } from './family.ts';
import { evaluated } from './points.ts';

it('the family drafts true over the grid of busts, cups and statures, every body in one of its styles in turn', () => {
  const failed = bodyGrid().flatMap((body, i) => {
    // Each bust has 27 bodies, and there are eight styles: over sixteen busts every style meets every cup and stature.
    const name = styleNames[i % styleNames.length];
    if (name === undefined) return [];
    const [garment, styling]: Styled = family[name];
    const result = evaluated(garment, body, styling);
    const issues = result.ok ? result.value.report.issues : result.issues;
    return issues
      .filter(({ severity }) => severity === 'error')
      .map(({ code, message }) => `${name}, ${body.name}: ${code}: ${message}`);
  });
  expect(failed).toEqual([]);
});
