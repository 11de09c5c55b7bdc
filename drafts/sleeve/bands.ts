import { bandTable } from '../../engine/pattern/band-table.ts';
import { commonPractice, fromMemory } from '../../engine/sources.ts';

/** Between which limits a cutter expects what she looks at in a sleeve. */
export const sleeveBands = bandTable({
  capHeight: ['plain cap height, of armhole girth', 0.28, 0.36, 'share', fromMemory],
  width: ['fitted sleeve wider than the arm', 40, 70, 'mm', fromMemory],
  puffWidth: ['puffed sleeve, of fitted width', 1.3, 2, 'ratio', fromMemory],
  raised: ['cap raised', 25, 70, 'mm', fromMemory],
  elastic: ['arm girth less hem elastic', 0, 25, 'mm', fromMemory],
  capOnArmhole: ['cap on armhole', undefined, 5, 'mm', commonPractice, 'bound'],
  capBend: ['cap, tightest bend', 25, undefined, 'mm', commonPractice, 'bound'],
  capTop: ['cap top and sleeve grain in front of the shoulder notch', -10, 10, 'mm', commonPractice],
});
