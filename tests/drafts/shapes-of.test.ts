import { describe, expect, it } from 'vitest';
import { garments } from '../../drafts/garments.ts';
import { shapesOf } from '../../drafts/shapes-of.ts';
import { walkSheet } from '../../drafts/walk-sheet.ts';
import { evaluate } from '../../engine/evaluate.ts';
import { type Metadata, metadataText, sealed } from '../../engine/render/metadata.ts';
import { sheetSvg } from '../../engine/render/sheet.ts';
import { drafted, shippedBodies, shippedBody } from './drafted.ts';

const { garment, cutLines } = drafted('dress', shippedBody('leading-lady'), { sleeve: 'plain' });
const sheet = sheetSvg(garment, cutLines, { units: 'in' });

/** The sheet of a forger, who changes what it says of itself and seals it anew. */
function forged(change: (said: Metadata) => Partial<Metadata>): string {
  const text = /<metadata>(.*?)<\/metadata>/s.exec(sheet)?.[1] ?? '';
  const { digest: _, ...said }: Metadata = JSON.parse(text);
  return sheet.replace(text, () => metadataText(sealed({ ...said, ...change(said) })));
}

const issues = (svg: string, known = garments) => {
  const walked = walkSheet(svg, known);
  return walked.ok ? walked.value.issues : walked.issues;
};

describe('a sheet sealed anew', () => {
  it('is as it was where nothing was changed', () => {
    expect(issues(forged(() => ({})))).toEqual([]);
  });

  it.each<[string, (said: Metadata) => Partial<Metadata>]>([
    ['all', () => ({ shapes: [] })],
    ['one', ({ shapes }) => ({ shapes: shapes.filter(({ kind }) => kind !== 'cap top') })],
    ['the first', ({ shapes }) => ({ shapes: shapes.slice(1) })],
    ['all, as if without a sleeve', () => ({ shapes: [], choices: { sleeve: 'none' } })],
    [
      'all, and its choices',
      ({ choices: _, ...said }) => ({ ...said, shapes: [], choices: undefined as never }),
    ],
    ['all, for choices that there are not', () => ({ shapes: [], choices: { sleeve: 'bell' } })],
  ])('no longer claims its shapes: %s', (_, change) => {
    expect(issues(forged(change)).map(({ code }) => code)).toEqual(['shape-unclaimed']);
  });

  it('is told apart where its draft is not known: no error, and not passed over', () => {
    const found = issues(forged(() => ({ garment: 'cloak', shapes: [] })));
    expect(found.map(({ code, severity }) => [code, severity])).toEqual([['shapes-unknown', 'note']]);
  });

  it('says in which unit its lengths are told', () => {
    const walked = walkSheet(sheet);
    expect(walked.ok && walked.value.units).toBe('in');
  });
});

describe('the shapes of a garment', () => {
  const stylings = [
    {},
    { sleeve: 'none', front: 'plain', shoulder: 'whole' },
    { sleeve: 'plain', sleeveTo: 'wrist' },
    { skirtLining: 'lined', opening: 'side', inside: 'faced' },
  ];
  it.each(shippedBodies)('are those that its draft claims of like bodies: %s', (name) => {
    for (const draft of garments)
      for (const styling of stylings) {
        const own = Object.fromEntries(
          Object.entries(styling).filter(([key]) => draft.choices.some((choice) => choice.name === key)),
        );
        const made = evaluate(draft, shippedBody(name), own);
        if (!made.ok) continue;
        const must = shapesOf(garments)(made.value.garment);
        const claims = made.value.garment.shapes
          .filter(({ kind }) => kind !== 'drafted')
          .map((shape) => shape.name);
        expect(must).toEqual({ kind: 'claims', names: claims });
      }
  });

  it('are asked for of both sides where these differ', () => {
    const body = {
      ...(shippedBody('leading-lady') as object),
      fitting: [{ 'lower shoulder': 1, side: 'left' }],
    };
    const { garment: uneven, cutLines: lines } = drafted('dress', body);
    expect(uneven.shapes.some((shape) => shape.name.startsWith('left '))).toBe(true);
    expect(issues(sheetSvg(uneven, lines))).toEqual([]);
  });
});
