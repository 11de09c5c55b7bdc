import { ruleTable } from '../../engine/pattern/rule.ts';
import { commonPractice } from '../../engine/sources.ts';

/** The numbers of the insert draft, each with its reason and source. */
export const insertRules = ruleTable('I', {
  leastCup: [
    110,
    'mm',
    'the cup difference for which the least fullness is meant',
    'EN 13402, middle of cup AA',
  ],
  leastFullness: [
    1.45,
    'ratio',
    'bottom fullness at that cup difference',
    'about half as much again for medium cloth: J. W. Stephenson, Cutting and Draping',
  ],
  fullnessPerMm: [0.006, 'per mm', 'and so much more for each mm of cup difference', commonPractice],
  leastDrawn: [1.3, 'ratio', 'neckline fullness at that cup difference', commonPractice],
  drawnPerMm: [0.003, 'per mm', 'and so much more for each mm of cup difference', commonPractice],
  mostFullness: [2.6, 'ratio', 'no more than this is gathered without being asked for', commonPractice],
  flatEnds: [
    15,
    'mm',
    'at both ends of the under-bust seam the insert is sewn flat for this far, and gathered between',
    commonPractice,
  ],
  buttonholeFromCentre: [
    15,
    'mm',
    'each of the two buttonholes lies this far from centre front',
    commonPractice,
  ],
  buttonholeLength: [12, 'mm', 'a buttonhole that lets a doubled cord through', commonPractice],
  cordEnd: [250, 'mm', 'cord left outside each buttonhole to tie with', commonPractice],
  mostLean: [
    42,
    'degrees',
    'the sides of the insert lean in or out by no more than this, or the side fronts could not be sewn to them',
    commonPractice,
  ],
  holePatch: [30, 'mm', 'a patch of interfacing behind a buttonhole is this long and wide', commonPractice],
  holeInCasing: [2, 'mm', 'a buttonhole ends at least this far from the edges of the casing', commonPractice],
});
