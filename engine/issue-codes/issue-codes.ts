import { commandCodes } from './command.ts';
import { fittingCodes } from './fitting.ts';
import { formCodes } from './form.ts';
import { gradingCodes } from './grading.ts';
import { layCodes } from './lay.ts';
import { measurementCodes } from './measurements.ts';
import { orderCodes } from './orders.ts';
import { ownDraftCodes } from './own-draft.ts';
import { ownPieceCodes } from './own-piece.ts';
import { patternCodes } from './pattern.ts';
import { sewingCodes } from './sewing.ts';
import { sheetCodes } from './sheet.ts';
import { stylingCodes } from './styling.ts';

/** Everything that an issue may be called, by what it is about: to each code what it means, and what to do. */
export const codesByTopic = {
  Measurements: measurementCodes,
  'A fitting': fittingCodes,
  'A form of the body': formCodes,
  Styling: stylingCodes,
  'The drafted pattern': patternCodes,
  'A draft of your own': ownDraftCodes,
  'The sewing order': sewingCodes,
  'Graded sizes': gradingCodes,
  'A lay on the cloth': layCodes,
  'Orders by the million': orderCodes,
  'A sheet or drawing that is read': sheetCodes,
  'A piece of your own, altered': ownPieceCodes,
  'The command line and its files': commandCodes,
} as const;

/** The codes of Bodkin's own issues. */
export type KnownCode =
  | keyof typeof measurementCodes
  | keyof typeof fittingCodes
  | keyof typeof formCodes
  | keyof typeof stylingCodes
  | keyof typeof patternCodes
  | keyof typeof ownDraftCodes
  | keyof typeof sewingCodes
  | keyof typeof gradingCodes
  | keyof typeof layCodes
  | keyof typeof orderCodes
  | keyof typeof sheetCodes
  | keyof typeof ownPieceCodes
  | keyof typeof commandCodes;

export type SewingCode = keyof typeof sewingCodes;

/** What a draft written elsewhere has to say beyond them is marked as its own, such as `own-apron-too-short`. */
export type IssueCode = KnownCode | `own-${string}`;

/** To each code what it means, and what to do. */
export const explanations: Readonly<Record<KnownCode, string>> = {
  ...measurementCodes,
  ...fittingCodes,
  ...formCodes,
  ...stylingCodes,
  ...patternCodes,
  ...ownDraftCodes,
  ...sewingCodes,
  ...gradingCodes,
  ...layCodes,
  ...orderCodes,
  ...sheetCodes,
  ...ownPieceCodes,
  ...commandCodes,
};

export const knownCodes = Object.keys(explanations) as readonly KnownCode[];
