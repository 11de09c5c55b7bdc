import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import type { Body } from '../../../engine/body/body.ts';
import { cupOf } from '../../../engine/body/cup.ts';
import { readBody } from '../../../engine/body/read.ts';

const folder = new URL('../../../measurements/', import.meta.url);
const files = readdirSync(folder).filter((file) => file.endsWith('.yaml'));
const text = (file: string): string => readFileSync(new URL(file, folder), 'utf8');

function shipped(file: string): Body {
  const read = readBody(parse(text(file)));
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  return read.value;
}

describe('the bodies of the theatre’s workshop', () => {
  test('are eight', () => {
    expect(files).toHaveLength(8);
  });

  test.each(files)('%s names the schema, and reads without error or warning', (file) => {
    expect(text(file)).toMatch(/^# yaml-language-server: \$schema=\.\/body\.schema\.json\n/);
    const { ok, issues } = readBody(parse(text(file)));
    expect(issues.filter(({ severity }) => severity !== 'note')).toEqual([]);
    expect(ok).toBe(true);
  });

  test('are grown women under the name of their file', () => {
    for (const file of files) {
      expect(shipped(file).wearer).toBe('adult');
      expect(`${shipped(file).name.replaceAll(' ', '-')}.yaml`).toBe(file);
    }
  });

  test('cover cups AA to H, 145 to 190 cm, and the shapes that go wrong in paper patterns', () => {
    const bodies = files.map(shipped);
    const sizes = bodies.map(({ size }) => size);
    const some = (is: (size: Body['size']) => boolean) => expect(sizes.filter(is)).not.toEqual([]);
    const letters = bodies.map((body) => cupOf(body).letter);
    for (const letter of ['AA', 'B', 'C', 'D', 'E', 'F', 'H']) expect(letters).toContain(letter);
    expect(Math.min(...sizes.map(({ stature }) => stature))).toBe(1450);
    expect(Math.max(...sizes.map(({ stature }) => stature))).toBe(1900);
    some(({ bustGirth }) => bustGirth <= 800);
    some(({ bustGirth }) => bustGirth >= 1350);
    some(({ bustGirth, hipGirth }) => bustGirth > hipGirth);
    some(({ bustGirth, waistGirth }) => waistGirth > 0.95 * bustGirth);
    some(({ backNeckPointToWaist }) => backNeckPointToWaist < 375);
    some(({ backNeckPointToWaist }) => backNeckPointToWaist > 450);
    some(({ shoulderSlope }) => shoulderSlope < (16 * Math.PI) / 180);
    some(({ shoulderSlope }) => shoulderSlope > (26 * Math.PI) / 180);
  });

  test('are written in all three units, some with four measurements only', () => {
    const written = files.map((file) => Object.keys(parse(text(file))).length);
    expect(Math.min(...written)).toBe(6);
    expect(new Set(files.map((file) => parse(text(file)).units))).toEqual(new Set(['cm', 'in', 'mm']));
  });
});
