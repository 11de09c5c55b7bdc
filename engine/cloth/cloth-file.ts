import * as z from 'zod';
import type { Issue, Result } from '../issue.ts';
import { plainFigure } from '../text/figure.ts';
import { nearestWord } from '../text/nearest-word.ts';
import type { Thread, WovenCloth } from './cloth.ts';

/** A figure of a cloth in a file: its unit, between which limits a woven cloth's can lie, and what it is. */
interface ClothFigure {
  readonly unit: string;
  readonly min: number;
  readonly max: number;
  readonly says: string;
}

/** The load at which the stretch of a thread is read, N/mm: 100 grams on each centimetre of width. */
export const STRETCHING_LOAD = 0.0981;

const ofThread = {
  stretch: {
    unit: '%',
    min: 0.2,
    max: 40,
    says: 'How much longer it is under 98.1 N for each metre of its width (100 gf/cm).',
  },
  bending: {
    unit: 'µN m',
    min: 0.2,
    max: 300,
    says: 'Bending rigidity: moment for each metre of width and unit of curvature. From its weight w (g/m²) and bending length c (mm), 9.81e-6 w c³.',
  },
} as const satisfies Readonly<Record<string, ClothFigure>>;

const ofCloth = {
  weight: { unit: 'g/m²', min: 10, max: 1000, says: 'Weight for its area.' },
  thickness: { unit: 'mm', min: 0.05, max: 8, says: 'Thickness under a light load, such as 2 gf/cm².' },
  shear: {
    unit: 'N/m',
    min: 2,
    max: 1000,
    says: 'Shear rigidity: force for each metre of width and radian between warp and weft. From the stretch on the bias e (%) under 5 gf/cm, 123/e.',
  },
  friction: {
    unit: '',
    min: 0,
    max: 1.5,
    says: 'Of the cloth on the body: force along, at which it begins to slide, by force across.',
  },
} as const satisfies Readonly<Record<string, ClothFigure>>;

/**
 * What no simple test tells, the same of every cloth: threads do not crimp each other; a share of a thread's stiffness is left
 * where it is pressed together and buckles; friction on a covered body (common practice, no source).
 */
export const untested = { coupling: 0, pressed: 0.003, friction: 0.3 } as const;

const figure = ({ min, max, says, unit }: ClothFigure) =>
  z
    .number()
    .min(min)
    .max(max)
    .describe(unit ? `${says} In ${unit}.` : says);

const thread = z.strictObject({ stretch: figure(ofThread.stretch), bending: figure(ofThread.bending) });

const clothFile = z.strictObject({
  name: z.string().min(1).max(80).describe('What it is called.'),
  weight: figure(ofCloth.weight),
  thickness: figure(ofCloth.thickness),
  warp: thread.describe('Along the selvedge, which lies along the grain line of a piece.'),
  weft: thread.describe('Across, from selvedge to selvedge.'),
  shear: figure(ofCloth.shear),
  friction: figure(ofCloth.friction).optional(),
  source: z
    .string()
    .min(1)
    .max(300)
    .describe('Where its figures are from: a publication, or who tested it how.'),
});

/** The schema of a file of a cloth's figures, for an editor. */
export const clothJsonSchema = (): unknown => ({
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  title: 'A woven cloth, as “bodkin wear --cloth” reads it',
  ...z.toJSONSchema(clothFile),
});

/** The cloth of a file, as it was written; all that is wrong with it at once where it cannot be used. */
export function readCloth(data: unknown): Result<WovenCloth> {
  const parsed = clothFile.safeParse(data);
  if (!parsed.success) return { ok: false, issues: issuesOf(data, parsed.error.issues) };
  const { name, weight, thickness, warp, weft, shear, friction, source } = parsed.data;
  const value: WovenCloth = {
    name,
    weight,
    thickness,
    warp: threadOf(warp.stretch, warp.bending),
    weft: threadOf(weft.stretch, weft.bending),
    shear: shear / 1000,
    ...untested,
    ...(friction === undefined ? {} : { friction }),
    source,
  };
  return { ok: true, value, issues: [] };
}

/** A thread by its stretch (%) under `STRETCHING_LOAD` and its bending rigidity (µN m). */
export const threadOf = (stretch: number, bending: number): Thread => ({
  stretch: STRETCHING_LOAD / (stretch / 100),
  bending: bending * 1e-3,
});

const figures: Readonly<Record<string, ClothFigure>> = { ...ofCloth, ...ofThread };

const known = [...Object.keys(clothFile.shape), ...Object.keys(ofThread)];

function issuesOf(data: unknown, found: readonly z.core.$ZodIssue[]): readonly Issue[] {
  if (typeof data !== 'object' || data === null || Array.isArray(data)) return [notCloth];
  return found.flatMap((issue): readonly Issue[] => {
    if (issue.code === 'unrecognized_keys')
      return issue.keys.map((key) => unknownField([...issue.path.map(String), key].join('.'), key));
    const path = issue.path.join('.');
    const of = figures[String(issue.path.at(-1))];
    return [of ? notFigure(path, of, at(data, issue.path)) : notWords(path)];
  });
}

const at = (data: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce<unknown>(
    (value, key) =>
      typeof value === 'object' && value !== null
        ? (value as Readonly<Record<PropertyKey, unknown>>)[key]
        : undefined,
    data,
  );

const notCloth: Issue = {
  code: 'no-cloth',
  severity: 'error',
  path: '',
  message: 'These are not the figures of a cloth: write each on a line, such as “weight: 140”.',
};

function notFigure(path: string, { min, max, unit, says }: ClothFigure, value: unknown): Issue {
  const limits = `from ${plainFigure(min, 2)} to ${plainFigure(max, 2)}${unit && ` ${unit}`}`;
  const said =
    value === undefined
      ? `${path} is missing. It is a number ${limits}. ${says}`
      : `${path} should be a number ${limits}, not ${shown(value)}. ${says}`;
  return {
    code: value === undefined ? 'cloth-figure-missing' : 'cloth-figure-unusable',
    severity: 'error',
    path,
    message: said,
    limits: { min, max, unit },
  };
}

const shown = (value: unknown): string =>
  typeof value === 'number' ? String(value) : `“${String(value).slice(0, 40)}”`;

const notWords = (path: string): Issue => ({
  code: 'cloth-figure-missing',
  severity: 'error',
  path,
  message:
    path === 'source'
      ? 'source is missing: where the figures are from, in a line. Figures without one are worth little.'
      : path === 'name'
        ? 'name is missing: what the cloth is called.'
        : `${path} should hold the stretch and bending of its threads, each on a line of its own.`,
});

function unknownField(path: string, key: string): Issue {
  const near = nearestWord(key, known);
  return {
    code: 'cloth-field-unknown',
    severity: 'error',
    path,
    message: `No cloth has a figure called “${key.slice(0, 40)}”.${near ? ` Do you mean ${near}?` : ' Leave it out.'}`,
  };
}
