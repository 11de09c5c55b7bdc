/*
 * What the drafts take from the engine beyond the public surface. A draft of one's own needs none of it; a changed copy of one
 * of these, kept in a file of its own, does (cli/own-draft/draft-files.ts).
 */

export {
  angleOverBust,
  frontHang,
  greatestBustDart,
  leastBustDart,
  underarmAboveBust,
} from '../engine/body/bust.ts';
export { drawstringIssue } from '../engine/body/child.ts';
export { cupOf } from '../engine/body/cup.ts';
export {
  changeWords,
  leastAllowance,
  onSide,
  sharedBySides,
  sideOf,
  trialAllowance,
} from '../engine/body/fitting.ts';
export { gridOf, middleBody } from '../engine/body/grid.ts';
export { neckNumbers } from '../engine/body/neck.ts';
export { sides } from '../engine/body/side.ts';
export { withSize } from '../engine/body/with-size.ts';
export { chosenFrom } from '../engine/chosen-from.ts';
export { REFUSAL_STEPS, smallestConflict } from '../engine/constraints/conflict.ts';
export { changedDemands } from '../engine/constraints/demands.ts';
export { missesAt } from '../engine/constraints/misses-at.ts';
export { onlyWhether } from '../engine/constraints/only-whether.ts';
export { isDraftMistake, perhapsMeant } from '../engine/draft-mistake.ts';
export { inTolerances, limitsOf } from '../engine/excluded-relation.ts';
export { bothSides } from '../engine/excluded-words.ts';
export { flatMapped } from '../engine/flat-mapped.ts';
export { arc } from '../engine/geometry/arc.ts';
export {
  edgeEnd,
  edgeOf,
  edgeStart,
  endDirection,
  joinedEdges,
  lengthUpTo,
  pointAlong,
  reversedEdge,
  splitEdgeAt,
  startDirection,
} from '../engine/geometry/edge.ts';
export { withEndsMoved } from '../engine/geometry/ends-moved.ts';
export { directionAt, headingAt, pointAt } from '../engine/geometry/evaluate.ts';
export { fitOneCubic, flatSamples } from '../engine/geometry/fit-one-cubic.ts';
export { edgeCrossings, levelAt, outlineCrossings } from '../engine/geometry/intersect.ts';
export { parallelCurve } from '../engine/geometry/parallel-curve.ts';
export { between, distance, moved, turnedAbout, vectorBetween } from '../engine/geometry/point.ts';
export { reversed } from '../engine/geometry/split.ts';
export { COINCIDENCE, PARALLEL, RELATION_ANGLE } from '../engine/geometry/tolerance.ts';
export {
  mirroredIn,
  movedBy,
  transformedCurve,
  transformedEdge,
  turnedBy,
} from '../engine/geometry/transform.ts';
export {
  angleOf,
  cross,
  dot,
  heading,
  outward,
  plus,
  scaled,
  unit,
  vector,
} from '../engine/geometry/vector.ts';
export { draftingTable } from '../engine/pattern/drafting-table.ts';
export { seamFinishes } from '../engine/pattern/finishes.ts';
export { mirrorImage } from '../engine/pattern/mirror-image.ts';
export { isWrittenUnit, quantity } from '../engine/pattern/quantity.ts';
export { piecesOfJoin } from '../engine/pattern/seam.ts';
export { piecesOf, renamed } from '../engine/pattern/shape-parts.ts';
export { stepText } from '../engine/pattern/step-text.ts';
export { stepsWhenAsked } from '../engine/pattern/steps-when-asked.ts';
export { resolveStyling } from '../engine/pattern/styling-values.ts';
export { pieceWrittenOut, seamWrittenOut } from '../engine/pattern/written-out.ts';
export { smallestThatHelps } from '../engine/smallest-that-helps.ts';
export { degrees, figure } from '../engine/text/figure.ts';
export { listed } from '../engine/text/listed.ts';
export { usually } from './usual.ts';
