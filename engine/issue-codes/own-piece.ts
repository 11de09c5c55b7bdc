/** Codes of an alteration to a piece of one's own. */
export const ownPieceCodes = {
  'edges-miscounted':
    'There are more or fewer names than edges. Give one for each, clockwise from the top left.',
  'edge-faired':
    'Traced kinks of an edge were smoothed out. If one was a corner, say --corner as it suggests.',
  'then-nothing':
    'Between two alterations stands --then, and one of them is missing. Say it, or take --then away.',
  'two-at-once': 'One alteration does one thing. Part two of them with --then.',
  'no-such-notch': 'The piece has no notch of this name there. Take one of those named.',
  'notches-apart': 'The two notches do not stand on one edge. Take two that do.',
  'along-missing': 'Slash lines run from one edge to another. Say which with --along top..hem.',
  'slash-edges-same': 'Slash lines run between two different edges. Name two.',
  'slash-leaves-piece': 'A slash line would leave the piece. Take other edges, or fewer lines.',
  'slashes-cross': 'The slash lines cross each other. Take other edges, or fewer lines.',
  'too-many-slashes': 'The piece has no room for so many slash lines there. Take as many as it says.',
  'hinge-not-slashed': 'The strips can only stay joined at an edge that is slashed. Name one of the two.',
  'hinge-edge-changed':
    'Smoothed, the edge that should stay is a little longer or shorter. Take more slash lines.',
  'edge-not-slashed': 'Fullness is added only to an edge that is slashed and opened. Name one of the two.',
  'no-fullness': 'The edge is as long already. Ask for more.',
  'fullness-impossible': 'The edge cannot be opened so far. Ask for less.',
  'spread-impossible':
    'The slash lines are too short to be opened so far. Spread by less, or take more lines.',
  'cup-missing': 'To go from cup to cup both must be known. Say --cup-from and --cup-to.',
  'cups-same': 'Both cups are the same. Say another.',
  'no-dart': 'The piece has no such dart. Draw its two legs to a point inside, or name a leg that is there.',
  'which-dart': 'The piece has several darts. Name a leg of one with --dart.',
  'share-impossible':
    'A dart can give more than nothing and no more than all of its angle. Give a share between.',
  'dart-into-itself': 'A dart cannot be turned into its own leg. Name another edge.',
  'dart-at-corner': 'The new dart would open at a corner. Name a place within the edge.',
  'level-missing': 'The piece is cut across at a level. Say where with --at 120 or --at 40%.',
  'level-misses-piece': 'The level does not run across the piece. Name one that does.',
  'level-at-corner': 'A corner lies at this level. Take one a little above or below.',
  'shortened-away': 'There is not so much length to take out here. Take out less, or at another level.',
  'mirror-not-straight': 'A half is mirrored only in a straight edge. Name one.',
  'mirror-only-edge': 'The piece has no other edge to mirror. Trace it whole.',
  'allowance-too-wide':
    'With its allowance off, nothing is left of the piece there. See which line was traced, and how wide it is.',
  'allowance-no-corner':
    'With their allowances off, two edges do not meet any more. See whether both are right.',
} as const;
