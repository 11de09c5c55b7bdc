import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { measurementNames } from '../../../engine/body/body.ts';
import { bodyJsonSchema } from '../../../engine/body/body-file.ts';

const file = new URL('../../../measurements/body.schema.json', import.meta.url);
const published: unknown = JSON.parse(readFileSync(file, 'utf8'));

describe('the published schema of a body’s file', () => {
  test('is the reader’s own', () => {
    expect(published, 'run: npm run pages').toEqual(JSON.parse(JSON.stringify(bodyJsonSchema())));
  });

  test('knows every measurement and says how it is taken', () => {
    for (const name of measurementNames)
      expect(published).toHaveProperty(['properties', name, 'description'], expect.stringMatching(/\w+\.$/));
  });

  test('asks for the units and four measurements, and allows no unknown field', () => {
    expect(published).toMatchObject({
      required: ['units', 'bustGirth', 'waistGirth', 'hipGirth', 'backNeckPointToWaist'],
      additionalProperties: false,
    });
  });
});
