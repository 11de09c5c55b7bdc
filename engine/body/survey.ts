import survey from '../../measurements/women-survey-2012.json' with { type: 'json' };

/**
 * The survey of women that bodies are completed from: ANSUR II, 2012, 1,986 women (NATICK/TR-15/007, 2014).
 * Its waist lies at the navel and its upper arm is flexed. Soldiers aged 17 to 58: proportions, not sizes.
 */

export type SurveyDimension = keyof typeof survey.dimensions;

/** How the survey is named where an estimate states its basis. */
export const surveyName = 'survey of 1,986 women, 2012';

const places = new Map(Object.keys(survey.dimensions).map((name, place) => [name, place]));

/** Mean and standard deviation, mm. */
export const statisticsOf = (dimension: SurveyDimension): { readonly mean: number; readonly sd: number } =>
  survey.dimensions[dimension];

/** The correlation of two dimensions, from -1 to 1. */
export const correlationOf = (a: SurveyDimension, b: SurveyDimension): number =>
  survey.correlation[places.get(a) ?? -1]?.[places.get(b) ?? -1] ?? 0;
