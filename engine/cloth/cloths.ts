import type { WovenCloth } from './cloth.ts';
import { threadOf, untested } from './cloth-file.ts';

/*
 * Cloths by the figures of simple testing: extension under 98.1 N/m (E100, percent), bending rigidity (micronewton metres),
 * shear rigidity (N/m), weight (g/m^2), surface thickness (mm). The figures of the wool are the middle of what De Boos & Tester
 * (1994, "SiroFAST: Fabric Assurance by Simple Testing", CSIRO report WT92.02) give for light suitings, from memory; those of
 * the others are usual for plain weaves of their weight, from memory, no source.
 */

export const cloths: readonly WovenCloth[] = [
  {
    ...untested,
    name: 'cotton lawn',
    weight: 80,
    thickness: 0.25,
    warp: threadOf(1.5, 4),
    weft: threadOf(2.5, 3),
    shear: 0.05,
    source: 'usual for plain weaves of this weight, from memory, no source',
  },
  {
    ...untested,
    name: 'cotton',
    weight: 140,
    thickness: 0.4,
    warp: threadOf(1.5, 12),
    weft: threadOf(2.5, 9),
    shear: 0.08,
    source: 'usual for plain weaves of this weight, from memory, no source',
  },
  {
    ...untested,
    name: 'viscose',
    weight: 120,
    thickness: 0.3,
    warp: threadOf(1.5, 3),
    weft: threadOf(3, 2),
    shear: 0.02,
    source: 'usual for plain weaves of viscose of this weight, from memory, no source',
  },
  {
    ...untested,
    name: 'cotton twill',
    weight: 260,
    thickness: 0.6,
    warp: threadOf(1, 45),
    weft: threadOf(2, 25),
    shear: 0.12,
    source: 'usual for twills of this weight, from memory, no source',
  },
  {
    ...untested,
    name: 'wool suiting',
    weight: 180,
    thickness: 0.5,
    warp: threadOf(3, 10),
    weft: threadOf(4, 8),
    shear: 0.05,
    source:
      'De Boos & Tester 1994, CSIRO report WT92.02, middle of the range for light suitings, from memory',
  },
];
