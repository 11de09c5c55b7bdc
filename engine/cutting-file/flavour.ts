/**
 * How a cutting file draws curves: `polylines` of DXF R12, which every program and machine reads, or `splines` of DXF
 * R2000, exact.
 */
export type Flavour = 'polylines' | 'splines';

/** The version of the format, as its header says it. */
export type Version = 'AC1009' | 'AC1015';

export const versionOf: Readonly<Record<Flavour, Version>> = { polylines: 'AC1009', splines: 'AC1015' };
