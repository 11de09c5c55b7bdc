import { describe, expect, test } from 'vitest';
import { dress } from '../../drafts/dress.ts';
import { garments } from '../../drafts/garments.ts';
import { skirt } from '../../drafts/skirt/skirt.ts';
import { type Body, measurementNames } from '../../engine/body/body.ts';
import { readBody } from '../../engine/body/read.ts';
import { withSize } from '../../engine/body/with-size.ts';
import type { Draft } from '../../engine/pattern/draft.ts';
import type { Styling } from '../../engine/pattern/styling.ts';
import { resolveStyling } from '../../engine/pattern/styling-values.ts';
import { placesOf } from '../../engine/sensitivity/places.ts';
import { perMm, type Sensitivity, sensitivities } from '../../engine/sensitivity/sensitivity.ts';
import { byImportance, takeAgain } from '../../engine/sensitivity/take-again.ts';
import { shippedBody } from './drafted.ts';

type Words = Readonly<Record<string, string>>;

const draft: Draft = dress as Draft;

function stylingOf(of: Draft, chosen: Words = {}): Styling {
  const styling = resolveStyling(of.choices, chosen);
  if (!styling.ok) throw new Error('no styling');
  return styling.value;
}

function bodyOf(name: string): Body {
  const read = readBody(shippedBody(name));
  if (!read.ok) throw new Error('not read');
  return read.value;
}

const names = ['leading-lady', 'prompter', 'wardrobe-mistress'] as const;

const found = new Map(names.map((name) => [name, sensitivitiesOf(draft, bodyOf(name), stylingOf(draft))]));

const rankedOf = (name: (typeof names)[number]) => byImportance(bodyOf(name), found.get(name) ?? []);

function sensitivitiesOf(of: Draft, body: Body, styling: Styling): readonly Sensitivity[] {
  const answer = sensitivities(of, body, styling);
  if (!answer.ok) throw new Error(answer.issues.map(({ message }) => message).join('\n'));
  return answer.value;
}

/** Lengths of all places of a garment, drafted and solved from the beginning. */
function drafted(of: Draft, body: Body, styling: Styling): ReadonlyMap<string, number> {
  const drawn = of.draw(body, styling);
  if (!drawn.ok) throw new Error(drawn.issues.map(({ message }) => message).join('\n'));
  return new Map(placesOf(drawn.value).map(({ kind, name, on, mm }) => [`${kind} ${name} ${on}`, mm]));
}

/** Holds what was found to two whole drafts, a little less and a little more of every measurement, to 1 %. */
function holdToDrafts(of: Draft, body: Body, styling: Styling, all: readonly Sensitivity[]): void {
  const by = 0.1;
  expect(all).toHaveLength(measurementNames.length);
  for (const { measurement, slopes } of all) {
    const [less, more] = [-by, by].map((mm) =>
      drafted(
        of,
        withSize(body, measurement, body.size[measurement] + mm * perMm(body, measurement)),
        styling,
      ),
    );
    expect(slopes.length).toBe(more?.size);
    for (const { kind, name: place, on, perMm: slope } of slopes) {
      const key = `${kind} ${place} ${on}`;
      const difference = ((more?.get(key) ?? Number.NaN) - (less?.get(key) ?? Number.NaN)) / (2 * by);
      // Below a hundredth of a millimetre for 5 mm, a percentage says nothing.
      const allowed = 0.01 * Math.abs(difference) + 0.002;
      expect(Math.abs(slope - difference), `${measurement}: ${key}`).toBeLessThan(allowed);
    }
  }
}

const plain = { shoulder: 'whole', front: 'plain', neckline: 'round', sleeve: 'plain' };

test.each([
  ['dress', plain, 'leading-lady'],
  ['bodice', { front: 'plain', centreFront: 'parted', neckline: 'sweetheart' }, 'prompter'],
  ['bodice', { shoulder: 'whole', front: 'plain', princess: 'armhole' }, 'wardrobe-mistress'],
  ['trial', { sleeve: 'plain', sleeveTo: 'wrist' }, 'understudy'],
] as const)('the %s %j of the %s moves as two whole drafts say, to 1 %', (garment, chosen, name) => {
  const other = garments.find((one) => one.name === garment);
  if (!other) throw new Error(`no ${garment}`);
  const styling = stylingOf(other, chosen);
  holdToDrafts(other, bodyOf(name), styling, sensitivitiesOf(other, bodyOf(name), styling));
});

describe.each(names)('the dress of %s', (name) => {
  const body = bodyOf(name);
  const all = found.get(name) ?? [];

  test('moves with every measurement as two whole drafts say, to 1 %', () => {
    holdToDrafts(draft, body, stylingOf(draft), all);
  });

  test('grows at each girth by what the body grows there', () => {
    const girth = (measurement: string, level: string): number =>
      all
        .find((one) => one.measurement === measurement)
        ?.slopes.find(({ kind, name: place }) => kind === 'girth' && place === level)?.perMm ?? Number.NaN;
    expect(girth('bustGirth', 'bust')).toBeCloseTo(1, 5);
    expect(girth('underBustGirth', 'under-bust')).toBeCloseTo(1, 5);
    expect(girth('waistGirth', 'waist')).toBeCloseTo(1, 5);
    expect(girth('hipGirth', 'hip')).toBeCloseTo(1, 5);
    expect(girth('hipGirth', 'hem')).toBeCloseTo(Number(stylingOf(draft).skirtFullness), 5);
    expect(girth('bustGirth', 'waist')).toBeCloseTo(0, 5);
  });
});

test('for a body of few measurements, estimates come first and what the dress does not use comes last', () => {
  const ranked = rankedOf('prompter');
  expect(ranked).toHaveLength(measurementNames.length);
  expect(takeAgain(ranked).map(({ from }) => from)).toEqual(['estimated', 'estimated', 'estimated']);
  const place = (measurement: string): number => ranked.findIndex((one) => one.measurement === measurement);
  expect(place('waistHeight')).toBeLessThan(place('neckBaseGirth'));
  expect(place('bustGirth')).toBeLessThan(place('wristGirth'));
});

test('for a body that was measured throughout, measured ones are named', () => {
  const again = takeAgain(rankedOf('leading-lady'));
  expect(again.map(({ from, likelyError }) => [from, likelyError])).toEqual(Array(3).fill(['measured', 5]));
});

test.each(['bodice', 'skirt', 'trial'])('the %s answers to no measurement that it does not use', (name) => {
  const other = garments.find((garment) => garment.name === name);
  if (!other) throw new Error(`no ${name}`);
  for (const woman of names) {
    const all = sensitivitiesOf(other, bodyOf(woman), stylingOf(other));
    const unused = all.filter(({ measurement }) => !other.shapedBy.includes(measurement));
    expect(unused).not.toEqual([]);
    for (const { measurement, slopes } of unused)
      for (const { perMm: slope } of slopes) expect(Math.abs(slope), measurement).toBeLessThan(1e-5);
  }
});

test('the skirt alone hangs longer by what its wearer is taller at the waist', () => {
  const all = sensitivitiesOf(skirt as Draft, bodyOf('understudy'), stylingOf(skirt as Draft));
  const tall = all.find(({ measurement }) => measurement === 'waistHeight');
  const side = tall?.slopes.find(({ kind, name }) => kind === 'seam' && name === 'skirt, side');
  expect(side?.perMm).toBeCloseTo(1, 6);
});
