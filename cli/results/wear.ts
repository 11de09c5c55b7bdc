import * as z from 'zod';
import { issues } from './issue.ts';
import type { Printed } from './printed.ts';

/** What `bodkin wear` prints of a garment on its body: mm unless it says otherwise; the wearer's left where there are two. */
export const wornResult = z.strictObject({
  ok: z.boolean(),
  garment: z.string(),
  body: z.string(),
  draftedFor: z.string().describe('Whose measurements the garment was drafted from.'),
  files: z.array(z.string()),
  cloth: z.strictObject({ name: z.string(), weight: z.number().describe('g/m^2'), source: z.string() }),
  mesh: z.strictObject({
    spacing: z.number(),
    points: z.number(),
    triangles: z.number(),
  }),
  rest: z.strictObject({
    reached: z
      .boolean()
      .describe(
        'Every point is in balance; else small folds were still shifting, and no figure that is told.',
      ),
    stopped: z.boolean().describe('Ctrl-C ended the hanging; what is told is the best so far.'),
    steps: z.number(),
    residual: z.number().describe('The greatest force left at a point, N.'),
    net: z.number().describe('The root of the sum of squares of all forces left, N.'),
  }),
  ease: z.array(
    z.strictObject({
      level: z.string(),
      worn: z.number().describe('A tape round the cloth, less a tape round the body at the same height.'),
      drafted: z.number(),
    }),
  ),
  waistLevel: z.array(
    z.strictObject({
      at: z.string(),
      above: z.number().describe('Of the waist seam, above the body’s waist.'),
    }),
  ),
  bustPoint: z
    .strictObject({ across: z.number().describe('To the side.'), up: z.number() })
    .describe('The garment’s bust point from the body’s.')
    .optional(),
  side: z
    .strictObject({
      atWaist: z.number().describe('The side seam forward of the body’s side.'),
      lean: z.number().describe('Forward from the waist up, degrees.'),
    })
    .optional(),
  hem: z
    .strictObject({ lowest: z.number(), highest: z.number(), mean: z.number() })
    .describe('Height of the hem above the floor.')
    .optional(),
  arms: z
    .strictObject({
      to: z.number().describe('Degrees that both arms were raised from where they hang.'),
      lift: z
        .array(z.strictObject({ at: z.string(), by: z.number() }))
        .describe('How much higher the waist seam then lay.'),
      free: z
        .number()
        .describe(
          'Degrees that they rise before it lies 10 mm higher anywhere; as far as they were raised, where it never did.',
        ),
    })
    .optional(),
  strain: z.array(
    z.strictObject({
      grain: z.enum(['weft', 'warp']),
      most: z.number().describe('At the tightest hundredth of the cloth.'),
      over: z.number().describe('Share of the cloth that is stretched by more than 1 %.'),
    }),
  ),
  pressure: z.number().describe('The greatest of the cloth on the body, kPa.'),
  gaps: z.array(
    z
      .strictObject({
        edge: z.string(),
        most: z.number(),
        mean: z.number(),
        longer: z.number().describe('The edge, than the body beneath it: what could be pinned out of it.'),
      })
      .describe('Off the body.'),
  ),
  judged: z
    .array(
      z.strictObject({
        finding: z.string(),
        unit: z.enum(['mm', '%']),
        worn: z.number(),
        should: z
          .number()
          .describe(
            'As it is worn by whom it was drafted for; where that is the wearer, as it should be on anybody.',
          ),
        band: z.number().describe('Nobody minds so much on either side.'),
        within: z.number().describe('How far off the figure itself may be, on either side.'),
        restsOn: z.enum(['measurements', 'assumed posture']),
        verdict: z
          .enum(['well', 'perhaps', 'off'])
          .describe(
            'off: outside the band whatever the figure’s own error; perhaps: outside, and might not be.',
          ),
        alter: z
          .string()
          .nullable()
          .describe('What a fitter would do; null where nothing, or no word for it.'),
        by: z.number().nullable(),
      }),
    )
    .describe('Each figure beside what it should be.'),
  fitting: z
    .array(z.strictObject({ alter: z.string(), by: z.number() }))
    .describe('All that is to be altered, what was found before with it; as --write-fitting writes it.'),
  cannotKnow: z.array(z.string()),
  issues,
});

/** What `bodkin wear --bodies` prints on each line; without the figures where nothing could be put on. */
export const wornLine = z.strictObject({
  id: z
    .union([z.string(), z.number()])
    .describe('The body’s own id, or its name, or the number of its line.'),
  ok: z.boolean(),
  ...wornResult
    .pick({
      mesh: true,
      rest: true,
      ease: true,
      waistLevel: true,
      bustPoint: true,
      side: true,
      hem: true,
      arms: true,
      strain: true,
      pressure: true,
      gaps: true,
      judged: true,
      fitting: true,
    })
    .partial().shape,
  issues,
  milliseconds: z.number(),
});

export type WornLineResult = Printed<typeof wornLine>;

export type WornResult = Printed<typeof wornResult>;
