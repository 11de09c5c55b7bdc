import { describe, expect, test } from 'vitest';
import { measurementNames } from '../../../engine/body/body.ts';
import { readBody } from '../../../engine/body/read.ts';
import { millimetres, type Unit, unitNames } from '../../../engine/text/units.ts';
import { plausibleBodies } from '../../plausible-bodies.ts';

type Numbers = Readonly<Record<string, number>>;

/** Women as the survey has them, with the four measurements that are always needed, mm. */
const women: readonly Numbers[] = plausibleBodies(200).map((data) => {
  const { bustGirth, waistGirth, hipGirth, backNeckPointToWaist } = data;
  const four = Object.entries({ bustGirth, waistGirth, hipGirth, backNeckPointToWaist });
  const scale = millimetres[data.units as Unit];
  return Object.fromEntries(four.map(([name, number]) => [name, Number(number) * scale]));
});

/** Measured in one unit, and written down as if it were another. */
const writtenIn = (mm: Numbers, measured: Unit, named: Unit): object => ({
  units: named,
  ...Object.fromEntries(Object.entries(mm).map(([name, size]) => [name, size / millimetres[measured]])),
});

const errors = (data: object): readonly string[] =>
  readBody(data)
    .issues.filter(({ severity }) => severity === 'error')
    .map(({ code, path }) => `${code} ${path}`);

describe('a mistake with the numbers of two hundred women', () => {
  test('is never seen where there is none', () => {
    for (const woman of women)
      for (const unit of unitNames) expect(errors(writtenIn(woman, unit, unit))).toEqual([]);
  });

  const mixedUp = unitNames.flatMap((measured) =>
    unitNames.filter((named) => named !== measured).map((named) => [measured, named] as const),
  );

  test.each(mixedUp)('is named for every woman when all is in %s and the file says %s', (measured, named) => {
    for (const woman of women)
      expect(errors(writtenIn(woman, measured, named))).toEqual(['unit-mistaken units']);
  });

  test.each(['bustGirth', 'waistGirth', 'hipGirth'])(
    'is named, or warned of, when the %s is half',
    (name) => {
      let named = 0;
      for (const woman of women) {
        const { issues } = readBody({ units: 'mm', ...woman, [name]: (woman[name] ?? 0) / 2 });
        const isTold = (message: string): boolean => message.includes('if half a girth was written');
        if (issues.some(({ code, path }) => code === 'girth-halved' && path === name)) named++;
        else if (issues.some(({ code, message }) => code === 'digits-exchanged' && isTold(message))) named++;
        else expect(issues.filter(({ severity }) => severity === 'warning')).not.toEqual([]);
      }
      expect(named / women.length).toBeGreaterThan(0.95);
    },
  );

  test('is named for every woman when all her girths are half', () => {
    for (const { backNeckPointToWaist, ...girths } of women) {
      const halves = Object.fromEntries(Object.entries(girths).map(([name, girth]) => [name, girth / 2]));
      expect(errors({ units: 'mm', backNeckPointToWaist, ...halves })).toEqual(
        Object.keys(girths).map((name) => `girth-halved ${name}`),
      );
    }
  });

  test('in one length is named with what it comes to in the other unit', () => {
    for (const woman of women) {
      const mixed = { units: 'mm', ...woman, backNeckPointToWaist: (woman.backNeckPointToWaist ?? 0) / 25.4 };
      expect(errors(mixed)).toEqual(['unit-mistaken backNeckPointToWaist']);
      expect(readBody(mixed).issues[0]?.message).toContain('as inches');
    }
  });

  test('of one number leaves the names of the others alone', () => {
    for (const name of measurementNames) {
      const data = {
        units: 'cm',
        bustGirth: 92,
        waistGirth: 74,
        hipGirth: 98,
        backNeckPointToWaist: 41,
        [name]: 1e6,
      };
      for (const { path } of readBody(data).issues.filter(({ severity }) => severity === 'error'))
        expect(path).toBe(name);
    }
  });
});
