import type { Body, MeasurementName } from './body.ts';

/** The same body with another number for one measurement; what was estimated from that stays as it was. */
export const withSize = (body: Body, name: MeasurementName, value: number): Body => ({
  ...body,
  size: { ...body.size, [name]: value },
});
