/**
 * Bodkin for other programs: garments drafted from one person's measurements, checked, and written as SVG. Lengths are
 * millimetres and angles radians unless a name says otherwise; x runs to the wearer's side, y down the body. All of it is
 * pure and runs in Node and in a browser.
 *
 * | to do | with |
 * |---|---|
 * | read and complete measurements | `readBody` |
 * | draft a garment and check it | `garments`, `evaluate` |
 * | refuse one that fails a check, with what would do | `onlyTrue` |
 * | write it | `sheetSvg`, `pieceSvgs`, `provenSheet` |
 * | show it on a screen, again and again | `screenPieces` |
 * | write it for a cutting machine | `cuttingFile`, `gradedCuttingFile`, and read back `provenCuttingFile`, `provenGradedCuttingFile` |
 * | walk what was written | `walkSheet` |
 * | read a size chart, draft its sizes, and see what the grade is | `readChart`, `draftSizes`, `gradeOf`, `nestFiles`, `nearestSizes` |
 * | say what an issue means, by its code | `explanations` |
 * | ask for measurements | `measurementNames`, `measurementWords`, `howTaken`, `howHeld`, `essentialNames` |
 * | draw the body itself, and say which measurements matter | `bodyForm`, `lineFigure`, `sensitivities`, `takeAgain` |
 * | tell lengths, and an issue's message, in inches | `lengthCell`, `withLengthsIn` |
 * | compare two drafts, drafted now or as they were written | `compareDrafts` of `draftedNow`, `sheetDraft` |
 * | read a traced piece and alter it | `readOutline`, `ownPiece`, `alter` |
 * | draft a garment of one's own | `defineDraft`, `drawGarment`, `ruleTable`, and what is below them |
 * | follow its construction, with other values for its rules | `stepWords`, `placesOf`, `lessonSheet`, `withRulesTurned` |
 * | change one that is here | `engineParts`: what these take from the engine besides |
 * | hold it to everybody | `trialCases`, `verdictOf` |
 */

export { type AlteredPiece, alter } from '../engine/alter.ts';
export type { Body, MeasurementName, Provenance } from '../engine/body/body.ts';
export { measurementNames } from '../engine/body/body.ts';
export { cupLetters } from '../engine/body/cup-letters.ts';
export type { FittingChange } from '../engine/body/fitting.ts';
export { essentialNames } from '../engine/body/found.ts';
export { howHeld, howTaken } from '../engine/body/how-taken.ts';
export { measurementWords } from '../engine/body/measurement-words.ts';
export { readBody } from '../engine/body/read.ts';
export type { Report, SeamReport, ShapeReport } from '../engine/checks/report.ts';
export { tapeFor } from '../engine/checks/tape.ts';
export { walkSeam } from '../engine/checks/walk.ts';
export { cloths } from '../engine/cloth/cloths.ts';
export { type Comparison, compareDrafts } from '../engine/comparison/compare.ts';
export { draftedNow, type KnownDraft } from '../engine/comparison/known-draft.ts';
export { sheetDraft } from '../engine/comparison/sheet-draft.ts';
export type { Sketch } from '../engine/constraints/sketch.ts';
export { endOf, SketchBuilder, scalarOf, startOf, xOf, yOf } from '../engine/constraints/sketch-builder.ts';
export type { Solution } from '../engine/constraints/solution.ts';
export { type Solver, solve } from '../engine/constraints/solve.ts';
export * from '../engine/constraints/statements.ts';
export { cuttingFile, gradedCuttingFile } from '../engine/cutting-file/cutting-file.ts';
export type { Flavour } from '../engine/cutting-file/flavour.ts';
export { DraftMistake } from '../engine/draft-mistake.ts';
export { type Evaluation, evaluate, evaluateRead } from '../engine/evaluate.ts';
export type { ExcludedRelation } from '../engine/excluded-relation.ts';
export { notchesOf } from '../engine/finishing/notches.ts';
export { bodyForm } from '../engine/form/body-form.ts';
export type { Curve, Edge } from '../engine/geometry/curve.ts';
export { edgeLength } from '../engine/geometry/edge.ts';
export { type Point, point } from '../engine/geometry/point.ts';
export type { Chart, ChartSize } from '../engine/grading/chart.ts';
export { draftSize, draftSizes } from '../engine/grading/draft-sizes.ts';
export type { Uneven } from '../engine/grading/evenness.ts';
export { type Grade, gradeOf } from '../engine/grading/grade.ts';
export { type NearSize, nearestSizes } from '../engine/grading/nearest.ts';
export type { NestLine } from '../engine/grading/nest/nest.ts';
export { nestFiles, pieceNest } from '../engine/grading/nest/nest-papers.ts';
export { bodyFilesIn, readChart } from '../engine/grading/read-chart.ts';
export type { AxisGrade } from '../engine/grading/rule-table.ts';
export type { Issue, Result } from '../engine/issue.ts';
export { explanations, type IssueCode } from '../engine/issue-codes/issue-codes.ts';
export type { Lay } from '../engine/lay/problem.ts';
export { layTasks } from '../engine/lay-plan/lay-plan.ts';
export { materialsFor } from '../engine/materials/materials.ts';
export { besidesTable, clothTable, cutTable, threadNote, type WordTable } from '../engine/materials/words.ts';
export { onlyTrue } from '../engine/only-true.ts';
export { bandTable, claim, claimAbout, type SourcedBand } from '../engine/pattern/band-table.ts';
export type { Dimension, DimensionPart } from '../engine/pattern/dimension.ts';
export type { Draft } from '../engine/pattern/draft.ts';
export type { Garment, PlacedLine, Step } from '../engine/pattern/garment.ts';
export type { Notch, Piece, PieceEdge } from '../engine/pattern/piece.ts';
export { type Rule, ruleTable, type TurnedRules, withRulesTurned } from '../engine/pattern/rule.ts';
export type { EdgeRef, Girth, Join, Seam } from '../engine/pattern/seam.ts';
export { type StepWord, stepWords } from '../engine/pattern/step-text.ts';
export type { Choice, Styling, StylingOf } from '../engine/pattern/styling.ts';
export { resolveStyling } from '../engine/pattern/styling-values.ts';
export { type TrialCase, trialCases } from '../engine/proof/trial-case.ts';
export { type Verdict, verdictOf } from '../engine/proof/verdict.ts';
export {
  type ProvenCuttingFile,
  provenCuttingFile,
  provenGradedCuttingFile,
} from '../engine/proven-cutting-file.ts';
export { pdfFaults } from '../engine/proven-pdf.ts';
export { type ProvenSheet, provenSheet } from '../engine/proven-sheet.ts';
export { readOutline, type TracingOptions } from '../engine/reading/read-outline.ts';
export { type LineFigure, lineFigure } from '../engine/render/form/line-figure.ts';
export { cutWords } from '../engine/render/label-words.ts';
export { standInRows } from '../engine/render/layout.ts';
export { lessonSheet } from '../engine/render/lesson-sheet/lesson-sheet.ts';
export { placesOf } from '../engine/render/lesson-sheet/places.ts';
export { lineTypes } from '../engine/render/line-types.ts';
export { pathData } from '../engine/render/path-data.ts';
export type { Fonts } from '../engine/render/pdf/fonts.ts';
export { pdfOf } from '../engine/render/pdf/write-pdf.ts';
export type { PrintOptions } from '../engine/render/print-options.ts';
export { type ScreenLine, type ScreenPiece, screenPieces } from '../engine/render/screen-pieces.ts';
export { sheetSvg } from '../engine/render/sheet.ts';
export { pieceSvgs } from '../engine/render/svg.ts';
export { readPaper } from '../engine/render/tiles/papers.ts';
export { sensitivities } from '../engine/sensitivity/sensitivity.ts';
export { byImportance, takeAgain } from '../engine/sensitivity/take-again.ts';
export type { Alteration } from '../engine/shaping/alteration.ts';
export { type OwnPiece, ownPiece } from '../engine/shaping/own-piece.ts';
export { commonPractice, fromMemory } from '../engine/sources.ts';
export { capital } from '../engine/text/capital.ts';
export { fixed } from '../engine/text/figure.ts';
export { decimalCell, lengthCell, lengthFigure, lengthIn } from '../engine/text/length.ts';
export { listed } from '../engine/text/listed.ts';
export { messageOf } from '../engine/text/message-of.ts';
export { nearestWord } from '../engine/text/nearest-word.ts';
export { millimetres, type Unit, unitLabel, unitNames } from '../engine/text/units.ts';
export { withLengthsIn } from '../engine/text/with-lengths-in.ts';
export { writtenLength } from '../engine/text/written-length.ts';
export { cannotKnow } from '../engine/wear/cannot-know.ts';
export { type Judged, judged } from '../engine/wear/judged.ts';
export { notWorn } from '../engine/wear/panel-levels.ts';
export { fittedFurther, proposed } from '../engine/wear/proposed.ts';
export { wornMaps } from '../engine/wear/shown/maps.ts';
export { shownWorn } from '../engine/wear/shown/shown-worn.ts';
export { defineDraft } from './define-draft.ts';
export { drawGarment } from './draw-garment.ts';
export * as engineParts from './engine-parts.ts';
export { fairLine, fairLines } from './fair-lines.ts';
export { garments } from './garments-by-name.ts';
export { grainline } from './grainline.ts';
export { keepNear } from './keep-near.ts';
export { makingChoices, waistEase } from './making-choices.ts';
export { inOrder, type Parts, together } from './parts.ts';
export * from './piece-edges.ts';
export * from './seams.ts';
export { walkSheet } from './walk-sheet.ts';
