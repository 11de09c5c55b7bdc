import type { Thread, WovenCloth } from './cloth.ts';

/*
 * Cloths by the figures of simple testing: extension under 98.1 N/m (E100, percent), bending rigidity (micronewton metres),
 * shear rigidity (N/m), weight (g/m^2), surface thickness (mm). The figures of the wool are the middle of what De Boos & Tester
 * (1994, "SiroFAST: Fabric Assurance by Simple Testing", CSIRO report WT92.02) give for light suitings, from memory; those of
 * the cottons are usual for plain weaves of their weight, from memory, no source. Friction of cloth on a covered body is
 * about 0.3 (common practice, no source).
 */

const thread = (extension: number, rigidity: number): Thread => ({
  stretch: 0.0981 / (extension / 100),
  bending: rigidity * 1e-3,
});

const figures = { coupling: 0, pressed: 0.003, friction: 0.3 };

export const cloths: readonly WovenCloth[] = [
  {
    ...figures,
    name: 'cotton lawn',
    weight: 80,
    thickness: 0.25,
    warp: thread(1.5, 4),
    weft: thread(2.5, 3),
    shear: 0.05,
    source: 'usual for plain weaves of this weight, from memory, no source',
  },
  {
    ...figures,
    name: 'cotton',
    weight: 140,
    thickness: 0.4,
    warp: thread(1.5, 12),
    weft: thread(2.5, 9),
    shear: 0.08,
    source: 'usual for plain weaves of this weight, from memory, no source',
  },
  {
    ...figures,
    name: 'wool suiting',
    weight: 180,
    thickness: 0.5,
    warp: thread(3, 10),
    weft: thread(4, 8),
    shear: 0.05,
    source:
      'De Boos & Tester 1994, CSIRO report WT92.02, middle of the range for light suitings, from memory',
  },
];
