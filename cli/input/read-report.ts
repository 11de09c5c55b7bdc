import * as z from 'zod';
import type { KnownDraft } from '../../engine/comparison/known-draft.ts';
import type { Issue, Result } from '../../engine/issue.ts';
import type { IssueCode } from '../../engine/issue-codes/issue-codes.ts';

const name = z.string().max(2000);
const list = <T extends z.ZodType>(item: T) => z.array(item).max(5000);
const edgeRef = z.object({ piece: name, edge: name, reversed: z.literal(true).exactOptional() });

/** What is compared of a `report.json`; one written before measurements, or shapes, stood in it has none. */
const schema = z.object({
  garment: name,
  body: name,
  styling: z.record(name, z.union([z.number(), name])),
  measurements: list(
    z.object({
      name,
      value: z.number(),
      unit: z.enum(['mm', 'degrees']),
      from: z.enum(['measured', 'reconciled', 'derived', 'estimated']),
    }),
  )
    .nullable()
    .default(null),
  fitting: list(z.object({ change: name, mm: z.number() }))
    .nullable()
    .default(null),
  seams: list(
    z.object({
      name,
      a: list(edgeRef),
      b: list(edgeRef),
      lengthA: z.number(),
      lengthB: z.number(),
      ease: z.number(),
      gatherRatio: z.number(),
    }),
  ),
  joins: list(z.object({ name, angle: z.number() })),
  girths: list(z.object({ level: name, body: z.number(), ease: z.number(), finished: z.number() })),
  shapes: list(
    z.object({
      name,
      piece: name,
      // A straight line bends by no radius, and JSON has no number without end.
      value: z
        .number()
        .nullable()
        .transform((value) => value ?? Number.POSITIVE_INFINITY),
      unit: z.enum(['mm', 'degrees', 'share', 'ratio']),
    }),
  )
    .nullable()
    .default(null),
});

/** Whether data is what `draft` writes as `report.json`, and no set of measurements. */
export const isReport = (data: unknown): boolean =>
  typeof data === 'object' && data !== null && ('seams' in data || 'girths' in data);

/**
 * A draft as its `report.json` tells of it: figures, styling and measurements, but no line of any piece.
 *
 * Issues: `report-damaged`, `report-empty` where nothing could be drafted.
 */
export function readReport(file: string, data: unknown): Result<KnownDraft> {
  const read = schema.safeParse(data);
  if (!read.success) {
    const at = read.error.issues[0]?.path.join('/') ?? '';
    return refuse(
      'report-damaged',
      file,
      `${file} is no whole report of a draft: look at “${at.slice(0, 80)}”.`,
    );
  }
  const { garment, body, styling, measurements, fitting, shapes, ...others } = read.data;
  if (body === '')
    return refuse('report-empty', file, `${file} is the report of a draft that could not be made.`);
  return {
    ok: true,
    value: {
      garment,
      body,
      figures: shapes ? { ...others, shapes } : { ...others, shapes: [], shapesPartly: true },
      ...(Object.keys(styling).length > 0 && { styling }),
      ...(measurements && fitting && { taken: { measurements, fitting } }),
    },
    issues: [],
  };
}

const refuse = (
  code: IssueCode,
  path: string,
  message: string,
): { readonly ok: false; readonly issues: readonly Issue[] } => ({
  ok: false,
  issues: [{ code, severity: 'error', path, message }],
});
