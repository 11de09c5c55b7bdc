import { describe, expect, it } from 'vitest';
import type { Evaluation } from '../../../engine/evaluate.ts';
import { drafted, edgeOf, pieceOf, shippedBodies, shippedBody } from '../drafted.ts';

const lady = shippedBody('leading-lady');
const lined = drafted('dress', lady, { sleeveLining: 'self' });
const single = drafted('dress', lady);

const errors = (of: Evaluation): readonly string[] =>
  of.report.issues.filter(({ severity }) => severity === 'error').map(({ message }) => message);

describe('a puff that lines itself', () => {
  it('is the same sleeve with its hem on a fold, cut twice', () => {
    const sleeve = pieceOf(lined, 'sleeve');
    expect(sleeve.edges.map(({ curves }) => curves)).toEqual(
      pieceOf(single, 'sleeve').edges.map(({ curves }) => curves),
    );
    expect(edgeOf(lined, 'sleeve', 'hem')).toMatchObject({ turn: 'fold', allowance: 0 });
    expect(sleeve.cut).toEqual([{ cloth: 'self', count: 2, onFold: true, pair: false }]);
  });

  it.each(['puff', 'long puff'])('is true and complete for all bodies: %s', (sleeve) => {
    for (const name of shippedBodies)
      expect(errors(drafted('dress', shippedBody(name), { sleeve, sleeveLining: 'self' })), name).toEqual([]);
  });

  it('is gathered through both layers, after these are folded and the elastic is in', () => {
    const titles = lined.garment.sewing?.map(({ title }) => title) ?? [];
    const order = [
      'Sew the sleeve seams',
      'Fold the sleeves and stitch their casings',
      'Thread the elastic',
      'Close the casings',
      'Stitch the gathering rows of the sleeves',
      'Gather the crowns and set in the sleeves',
    ];
    expect(titles.filter((title) => order.includes(title))).toEqual(order);
  });

  it('may differ on either side, each cut once on the fold', () => {
    const fitting = [{ 'more upper arm': 1, side: 'left' }];
    const dress = drafted('dress', { ...lady, fitting }, { sleeveLining: 'self' });
    expect(errors(dress)).toEqual([]);
    for (const name of ['left sleeve', 'right sleeve'])
      expect(pieceOf(dress, name).cut).toEqual([{ cloth: 'self', count: 1, onFold: true, pair: false }]);
  });
});
