import { describe, expect, it } from 'vitest';
import { Contact, GIVING_WAY } from '../../../engine/cloth/contact.ts';
import type { Obstacle } from '../../../engine/cloth/obstacle.ts';

/** A level floor whose height is told too large from afar, as between the nodes of a grid. */
const floor: Obstacle = (_x, y, _z, out) => {
  out[0] = y > 0 ? 1.25 * y + Math.min(3, y) : y;
  out[1] = 0;
  out[2] = 1;
  out[3] = 0;
};

// A search for rest once stopped at an energy that no step could reach: a point asked about from afar was taken to be clear where it was not.
describe('cloth that comes near to a body', () => {
  it.each([15, 30, 80])('is met there, from however far away it was asked about: %i mm', (from) => {
    const contact = new Contact(floor, Float64Array.of(100), 0.5, 0);
    const pressed = (100 * GIVING_WAY * 1.5 ** 2) / 2;
    expect(contact.energy(Float64Array.of(0, from, 0))).toBe(0);
    expect(contact.energy(Float64Array.of(0, -1, 0))).toBeCloseTo(pressed, 12);
  });
});
