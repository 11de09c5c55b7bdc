import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { clothJsonSchema, readCloth } from '../../../engine/cloth/cloth-file.ts';
import { cloths } from '../../../engine/cloth/cloths.ts';

const measurements = new URL('../../../measurements/', import.meta.url);
const linen = parse(readFileSync(new URL('cloths/linen.yaml', measurements), 'utf8'));

const said = (data: unknown): readonly string[] => {
  const read = readCloth(data);
  return read.ok ? [] : read.issues.map(({ code, path, message }) => `${code} ${path}: ${message}`);
};

describe('a file of a cloth', () => {
  test('has the schema that is published', () => {
    const published = JSON.parse(readFileSync(new URL('cloth.schema.json', measurements), 'utf8'));
    expect(published, 'run: npm run pages').toEqual(JSON.parse(JSON.stringify(clothJsonSchema())));
  });

  test.each(readdirSync(new URL('cloths/', measurements)))('ships and can be read: %s', (file) => {
    expect(said(parse(readFileSync(new URL(`cloths/${file}`, measurements), 'utf8')))).toEqual([]);
  });

  // The load is 100 gf/cm, a gram-force 9.80665 mN (CGPM 1901): 98.07 N/m, which 1.5 % of the stiffness holds.
  test('is taken in the units of simple testing', () => {
    const read = readCloth(linen);
    if (!read.ok) throw new Error('not read');
    const { warp, weft, shear, weight, friction } = read.value;
    expect(warp.stretch * 1000 * 0.015).toBeCloseTo(98.07, 1);
    expect(weft.stretch * 1000 * 0.02).toBeCloseTo(98.07, 1);
    // A micronewton metre is a thousandth of a newton millimetre; moment for each mm of width has the same number.
    expect(warp.bending).toBeCloseTo(25e-3, 9);
    expect(shear * 1000).toBeCloseTo(60, 9);
    expect([weight, friction]).toEqual([170, 0.3]);
    const { friction: _, ...without } = linen;
    expect(readCloth(without)).toMatchObject({ ok: true, value: { friction: 0.3 } });
  });

  test('says all that is wrong with it at once, each by its name', () => {
    const { weight: _, ...rest } = linen;
    const wrong = said({ ...rest, wieght: 170, warp: { stretch: 'little', bending: 25 }, shear: 60_000 });
    expect(wrong).toEqual([
      expect.stringContaining(
        'cloth-figure-missing weight: weight is missing. It is a number from 10 to 1000 g/m²',
      ),
      expect.stringContaining('cloth-figure-unusable warp.stretch: warp.stretch should be a number'),
      expect.stringContaining('cloth-figure-unusable shear'),
      expect.stringContaining(
        'cloth-field-unknown wieght: No cloth has a figure called “wieght”. Do you mean weight?',
      ),
    ]);
    expect(said([1])).toEqual([expect.stringContaining('no-cloth')]);
    expect(said({ ...linen, weft: 2 })).toEqual([expect.stringContaining('weft should hold the stretch')]);
    expect(said({ ...linen, source: '' })).toEqual([expect.stringContaining('source is missing')]);
  });
});

describe('the cloths that ship', () => {
  test('are called apart, lie where woven cloths lie, and say where their figures are from', () => {
    expect(new Set(cloths.map(({ name }) => name)).size).toBe(cloths.length);
    for (const { name, weight, thickness, warp, weft, shear, friction, source } of cloths) {
      const back = {
        ...{ name, weight, thickness, friction, source, shear: 1000 * shear },
        ...Object.fromEntries(
          Object.entries({ warp, weft }).map(([way, { stretch, bending }]) => [
            way,
            { stretch: 9.81 / stretch, bending: 1000 * bending },
          ]),
        ),
      };
      expect(said(back), name).toEqual([]);
      expect(source).toMatch(/from memory|\d{4}/);
    }
  });
});
